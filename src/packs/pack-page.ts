import { joinPage, pagePolicy, scriptText, styleText } from '../../shared/packs/index.ts';
import { packWords } from '../../shared/words/en/pack.ts';
import { catalogues } from '../../shared/words/index.ts';
import { folioCss } from '../components/folio-css.ts';
import type { LessonView } from '../player/lesson-view.ts';
import { digest } from './digest.ts';

/** What a pack is put together from. */
export interface PackParts {
  readonly title: string;
  readonly language: string;
  /** Null for a page that waits to be told its lesson. */
  readonly lesson: LessonView | null;
  readonly script: string;
  readonly css: string;
  readonly hasFonts: boolean;
}

/** The SHA-256 of a text in base64, as a policy names it. */
async function hashed(text: string): Promise<string> {
  const bytes = await digest(text);
  return btoa(String.fromCodePoint(...bytes));
}

/** What a page's policy must let through to hold a pack's page in a frame of its own. */
export const packHashes = async ({
  script,
  css,
}: Pick<PackParts, 'script' | 'css'>): Promise<{ readonly script: string; readonly style: string }> => ({
  script: await hashed(scriptText(script)),
  style: await hashed(styleText(css)),
});

/** The running feet of a pack's papers as style: each prints with its own, its lesson and its name. */
export const packFeet = (title: string, { papers }: LessonView): string =>
  papers.papers.map((paper) => folioCss(title, [paper])).join('');

/** A lesson as one page; the same bytes on the command line and in a browser. */
export async function packPage(parts: PackParts): Promise<string> {
  const { title, language, lesson, script, hasFonts } = parts;
  const css = parts.css + (lesson === null ? '' : packFeet(title, lesson));
  const policy = pagePolicy({ ...(await packHashes({ script, css })), hasFonts });
  return joinPage({
    lang: language,
    title: `${title} · ${catalogues.en.site.productName}`,
    policy,
    css,
    script,
    lesson,
    withoutScript: packWords.withoutScript,
  });
}
