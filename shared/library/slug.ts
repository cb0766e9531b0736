/**
 * A word as an id: small letters, digits and hyphens. What a lead writes and what a file keeps meet here.
 *
 * @example slug('Not made') // 'not-made'
 */
export const slug = (text: string): string =>
  text
    .trim()
    .toLowerCase()
    .replace(/['’]/g, '')
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '');
