import { gzipSync } from 'node:zlib';
import type { Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { bundlePlayer, bundleStyles } from './bundle-player.ts';
import { lessonView } from './lesson-view.ts';
import { packKey } from './pack-key.ts';
import { packPage } from './pack-page.ts';
import { MOST_KILOBYTES } from './pack-size.ts';

/** A lesson in one file. */
export interface MadePack {
  readonly html: string;
  /** Compressed, in whole kilobytes of 1000 bytes, rounded up. */
  readonly kilobytes: number;
  /** It carries the site's type faces. */
  readonly hasFonts: boolean;
}

/**
 * A lesson as one HTML file. The type faces go in where the file stays within `MOST_KILOBYTES`.
 *
 * @param id The lesson's name.
 * @param home The folder of the product: its player and styles.
 */
export async function makePack(id: string, plan: Plan, library: Library, home: string): Promise<MadePack> {
  const lesson = lessonView(await packKey(id, plan), plan, library);
  const script = await bundlePlayer(home);
  const { title, language } = plan;
  const join = async (hasFonts: boolean): Promise<MadePack> => {
    const css = await bundleStyles(home, hasFonts);
    const html = await packPage({ title, language, lesson, script, css, hasFonts });
    return { html, kilobytes: Math.ceil(gzipSync(html).length / 1000), hasFonts };
  };
  const full = await join(true);
  return full.kilobytes <= MOST_KILOBYTES ? full : join(false);
}
