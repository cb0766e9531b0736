import { execFileSync } from 'node:child_process';

/** A line of a printed page, in points from the top left. */
interface PdfLine {
  readonly text: string;
  readonly top: number;
  readonly bottom: number;
}

/** A printed page as poppler's pdftotext reads it: its size in points, and its lines. */
export interface PdfPage {
  readonly width: number;
  readonly height: number;
  readonly lines: readonly PdfLine[];
}

const plain = (text: string): string =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&apos;', "'")
    .replaceAll('&amp;', '&');

/** The pages of a PDF with the places of their lines. */
export function pdfPages(file: string): readonly PdfPage[] {
  const xml = execFileSync('pdftotext', ['-bbox-layout', file, '-'], {
    encoding: 'utf8',
    maxBuffer: 64_000_000,
  });
  return [...xml.matchAll(/<page width="([\d.]+)" height="([\d.]+)">([\s\S]*?)<\/page>/g)].map(
    ([, width, height, inside = '']) => ({
      width: Number(width),
      height: Number(height),
      lines: [...inside.matchAll(/<line [^>]*yMin="([\d.]+)"[^>]*yMax="([\d.]+)">([\s\S]*?)<\/line>/g)].map(
        ([, top, bottom, words = '']) => ({
          text: [...words.matchAll(/<word [^>]*>([^<]*)<\/word>/g)]
            .map(([, word = '']) => plain(word))
            .join(' '),
          top: Number(top),
          bottom: Number(bottom),
        }),
      ),
    }),
  );
}

/** The lowest 15 mm of a page hold its running foot. */
export const isFoot = ({ height }: Pick<PdfPage, 'height'>, { top }: PdfLine): boolean =>
  top > height - (15 / 25.4) * 72;

/** The running foot of a page. */
export const footOf = (page: PdfPage): string =>
  page.lines
    .filter((line) => isFoot(page, line))
    .map(({ text }) => text)
    .join(' ');
