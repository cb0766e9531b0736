import type { Browser } from './chromium-pipe.ts';

/** Sizes of paper, in inches: ISO 216 A4 and the American letter. */
export const PAPER_SIZES = {
  a4: { paperWidth: 210 / 25.4, paperHeight: 297 / 25.4 },
  letter: { paperWidth: 8.5, paperHeight: 11 },
} as const;
export type PaperSize = keyof typeof PAPER_SIZES;

/** A printed document. */
export interface Printed {
  readonly pdf: Buffer;
  readonly pages: number;
}

/** Pages of a PDF as Chromium writes it, its page objects in the open. */
const pagesOf = (pdf: Buffer): number =>
  [...pdf.toString('latin1').matchAll(/\/Type\s*\/Page(?![A-Za-z])/g)].length;

/** Prints a page of a file on this machine, once its type faces are there. Tagged, with an outline. */
export async function printPage(browser: Browser, url: string, size: PaperSize): Promise<Printed> {
  const { targetId } = await browser.send('Target.createTarget', { url: 'about:blank' });
  const { sessionId } = await browser.send('Target.attachToTarget', { targetId, flatten: true });
  const session = String(sessionId);
  await browser.send('Page.enable', {}, session);
  const loaded = browser.once('Page.loadEventFired', session);
  await browser.send('Page.navigate', { url }, session);
  await loaded;
  await browser.send(
    'Runtime.evaluate',
    { expression: 'document.fonts.ready.then(() => true)', awaitPromise: true },
    session,
  );
  const { data } = await browser.send(
    'Page.printToPDF',
    {
      ...PAPER_SIZES[size],
      preferCSSPageSize: true,
      printBackground: true,
      generateTaggedPDF: true,
      generateDocumentOutline: true,
    },
    session,
  );
  await browser.send('Target.closeTarget', { targetId });
  const pdf = Buffer.from(String(data), 'base64');
  return { pdf, pages: pagesOf(pdf) };
}
