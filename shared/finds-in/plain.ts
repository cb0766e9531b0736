import { slug } from '../library/slug.ts';

/**
 * A word as lists are compared: no accents, no capitals, parts joined by hyphens.
 *
 * @example plain('Länge (mm)') // 'lange-mm'
 */
export const plain = (text: string): string =>
  slug(text.normalize('NFKD').replace(/\p{M}/gu, '').replace(/ß/g, 'ss').replace(/œ/g, 'oe'));
