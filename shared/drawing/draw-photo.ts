import type { Drawing, FindToDraw, Photo } from './drawing.ts';
import { inked } from './mark.ts';
import { scaleBar } from './scale-bar.ts';

/** The share of a photograph's longer side that a find fills where nobody has said. ASM. */
const FILLS = 0.8;
/** A letter of the credit is about this wide for its height. ASM, for a plain type. */
const LETTER_WIDTH = 0.52;

const TOLD: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

const plain = (words: string): string => words.replace(/[&<>"']/g, (letter) => TOLD[letter] ?? '');

const round = (value: number): number => Math.round(value * 100) / 100;

/**
 * A photograph as a drawing in mm, its credit beneath it; with a scale bar where it is known how far the find's length reaches.
 *
 * @example drawPhoto(photo, { lengthMm: 50 }).viewBox // 500 picture points of length in 1,000: a picture of 100 mm
 */
export function drawPhoto(photo: Photo, { lengthMm }: Pick<FindToDraw, 'lengthMm'>): Drawing {
  const longerPx = Math.max(photo.widthPx, photo.heightPx);
  const mmPerPx = lengthMm / (photo.lengthPx ?? longerPx * FILLS);
  const [widthMm, heightMm] = [photo.widthPx * mmPerPx, photo.heightPx * mmPerPx];
  const sizeMm = longerPx * mmPerPx;
  let inner = `<image href="${plain(photo.address)}" width="${round(widthMm)}" height="${round(heightMm)}"/>`;
  let footMm = heightMm;
  if (photo.lengthPx !== undefined) {
    const bar = scaleBar(0, heightMm + sizeMm * 0.05, widthMm, sizeMm);
    inner += bar.markup;
    footMm = bar.footMm;
  }
  const letterMm = Math.min(sizeMm * 0.05, widthMm / (Math.max(1, photo.credit.length) * LETTER_WIDTH));
  const lineMm = footMm + letterMm * 1.3;
  inner += `<text class="ink-text" fill="currentColor" stroke="none" font-size="${round(letterMm)}" x="0" y="${round(lineMm)}">${plain(photo.credit)}</text>`;
  return {
    markup: inked(inner),
    viewBox: { x: 0, y: 0, width: round(widthMm), height: round(lineMm + letterMm * 0.4) },
  };
}
