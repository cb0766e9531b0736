/** What a pack is held to, compressed, in kilobytes of 1000 bytes. */
export const MOST_KILOBYTES = 150;
