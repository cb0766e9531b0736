/**
 * The SHA-256 of a text, in Node and in a browser alike.
 *
 * @throws TypeError in a browser where the page is not secure: it has no `crypto.subtle` there.
 */
export const digest = async (text: string): Promise<Uint8Array> =>
  new Uint8Array(await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text)));
