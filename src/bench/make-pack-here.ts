import { packPage } from '../packs/pack-page.ts';
import { MOST_KILOBYTES } from '../packs/pack-size.ts';
import type { PackPart } from './protocol.ts';

/** Where the parts of a pack are served. */
export interface PackFiles {
  readonly player: string;
  readonly styles: string;
  readonly plainStyles: string;
}

/** A pack made in the browser: the same bytes as on the command line. */
export interface PackMade {
  readonly html: string;
  readonly kilobytes: number;
  readonly hasFonts: boolean;
}

async function textOf(url: string): Promise<string> {
  const response = await fetch(url);
  if (!response.ok) throw new Error(`${url}: ${response.status}`);
  return response.text();
}

async function kilobytesOf(html: string): Promise<number> {
  const stream = new Blob([html]).stream().pipeThrough(new CompressionStream('gzip'));
  const bytes = await new Response(stream).arrayBuffer();
  return Math.ceil(bytes.byteLength / 1000);
}

/**
 * Makes a lesson's pack. The type faces go in where the file stays within `MOST_KILOBYTES`, as on the command line.
 *
 * @throws Error where a part cannot be had, TypeError where the page is not secure.
 */
export async function makePackHere(files: PackFiles, part: PackPart): Promise<PackMade> {
  const script = await textOf(files.player);
  const join = async (hasFonts: boolean): Promise<PackMade> => {
    const css = await textOf(hasFonts ? files.styles : files.plainStyles);
    const html = await packPage({ ...part, script, css, hasFonts });
    return { html, kilobytes: await kilobytesOf(html), hasFonts };
  };
  const full = await join(true);
  return full.kilobytes <= MOST_KILOBYTES ? full : join(false);
}
