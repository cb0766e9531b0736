import { createHash } from 'node:crypto';
import { folioCss, type FolioPart } from '../components/folio-css.ts';

/** The feet as a style, with the hash by which the page's policy lets it through. */
export function folioStyle(
  lesson: string,
  parts: readonly FolioPart[],
): { readonly css: string; readonly hash: `sha256-${string}` } {
  const css = folioCss(lesson, parts);
  return { css, hash: `sha256-${createHash('sha256').update(css).digest('base64')}` };
}
