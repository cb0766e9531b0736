import { createHash } from 'node:crypto';
import { gzipSync } from 'node:zlib';
import type { Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { joinPage, pagePolicy, scriptText, styleText } from '../../shared/packs/index.ts';
import { packWords } from '../../shared/words/en/pack.ts';
import { catalogues } from '../../shared/words/index.ts';
import { bundlePlayer, bundleStyles } from './bundle-player.ts';
import { lessonView } from './lesson-view.ts';

/** What a pack is held to, compressed. */
export const MOST_KILOBYTES = 150;

/** A lesson in one file. */
export interface MadePack {
  readonly html: string;
  /** Compressed, in whole kilobytes of 1000 bytes, rounded up. */
  readonly kilobytes: number;
  /** It carries the site's type faces. */
  readonly hasFonts: boolean;
}

const hashed = (text: string): string => createHash('sha256').update(text).digest('base64');
const KEY_DIGITS = 8;

/**
 * A lesson as one HTML file. The type faces go in where the file stays within `MOST_KILOBYTES`.
 *
 * @param id The lesson's name. Files share what a device keeps, so answers are kept under it and a mark of the plan.
 * @param home The folder of the product: its player and styles.
 */
export async function makePack(id: string, plan: Plan, library: Library, home: string): Promise<MadePack> {
  const mark = createHash('sha256').update(JSON.stringify(plan)).digest('hex').slice(0, KEY_DIGITS);
  const lesson = lessonView(`pack-${id}-${mark}`, plan, library);
  const script = await bundlePlayer(home);
  const join = async (hasFonts: boolean): Promise<MadePack> => {
    const css = await bundleStyles(home, hasFonts);
    const policy = pagePolicy({
      script: hashed(scriptText(script)),
      style: hashed(styleText(css)),
      hasFonts,
    });
    const html = joinPage({
      lang: plan.language,
      title: `${plan.title} · ${catalogues.en.site.productName}`,
      policy,
      css,
      script,
      lesson,
      withoutScript: packWords.withoutScript,
    });
    return { html, kilobytes: Math.ceil(gzipSync(html).length / 1000), hasFonts };
  };
  const full = await join(true);
  return full.kilobytes <= MOST_KILOBYTES ? full : join(false);
}
