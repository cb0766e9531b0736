/**
 * The weights of line a drawing is made of. Each becomes a class, `ink-…`, whose look a page may set; the
 * attributes written beside it make the bare drawing right too. Widths are in CSS px and do not scale.
 */
export const INKS = {
  outline: 'fill="#fff" stroke-width="1.8"',
  line: 'stroke-width="1.4"',
  ridge: 'stroke-width="1"',
  retouch: 'stroke-width=".8"',
  ripple: 'fill="currentColor" stroke-width=".55"',
  scratch: 'stroke-width=".7"',
  stipple: 'stroke-width="1.2"',
  hatch: 'stroke-width=".7"',
  fill: 'fill="currentColor" stroke="none"',
  chip: 'fill="#fff" stroke-width=".8"',
  stone: 'fill="#fff" stroke-width=".7"',
  gap: 'stroke="#fff" stroke-width=".9"',
  open: 'fill="#fff" stroke-width=".8"',
  unknown: 'fill="#fff" stroke-width="1.4" stroke-dasharray="4 3"',
  dash: 'stroke-width=".9" stroke-dasharray="4 3"',
  burnt: 'fill="currentColor" stroke="none"',
  bar: 'stroke-width="1.4"',
} as const;

export type Ink = keyof typeof INKS;

/** Something drawn: with which ink, which path, and which part of the thing it shows. */
export interface Mark {
  readonly ink: Ink;
  readonly path: string;
  readonly part?: string;
}

/** Marks as markup; neighbours of one ink and part share a path. */
export function markup(marks: readonly Mark[]): string {
  let text = '';
  let open: Mark | null = null;
  let path = '';
  const close = (): void => {
    if (open !== null && path !== '') text += element(open, path);
  };
  for (const mark of marks) {
    if (mark.path === '') continue;
    if (open !== null && open.ink === mark.ink && open.part === mark.part) path += mark.path;
    else {
      close();
      [open, path] = [mark, mark.path];
    }
  }
  close();
  return text;
}

function element(mark: Mark, path: string): string {
  const part = mark.part === undefined ? '' : ` data-part="${mark.part}"`;
  const still = INKS[mark.ink].endsWith('stroke="none"') ? '' : ' vector-effect="non-scaling-stroke"';
  return `<path class="ink-${mark.ink}"${part} ${INKS[mark.ink]}${still} d="${path}"/>`;
}

/** Words in a drawing, in mm. */
export function inkText(
  words: string,
  x: number,
  y: number,
  sizeMm: number,
  anchor: 'start' | 'middle' | 'end',
): string {
  const write = (value: number): number => Math.round(value * 100) / 100;
  const where = anchor === 'start' ? '' : ` text-anchor="${anchor}"`;
  return `<text class="ink-text" fill="currentColor" stroke="none" font-size="${write(sizeMm)}" x="${write(x)}" y="${write(y)}"${where}>${words}</text>`;
}

/** Wraps marks that inherit the pen's common habits. */
export const inked = (inner: string): string =>
  `<g class="ink" fill="none" stroke="currentColor" stroke-linecap="round" stroke-linejoin="round">${inner}</g>`;
