import { readFile } from 'node:fs/promises';
import { compileLesson, type Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { readLibrary } from '../loaders/read-library.ts';

/** How the command says to the build which papers it wants. */
export const ASKED = 'PITLORE_PAPERS';

/** The papers that are asked for. */
export interface AskedPapers {
  readonly id: string;
  /** The lesson file, wherever it lies. */
  readonly file: string;
  readonly content: string;
  readonly isLarge: boolean;
  readonly hasBacks: boolean;
}

/** What the command asked for, compiled. @throws Error where nobody asked, or the lesson does not compile. */
export async function askedPapers(): Promise<
  Omit<AskedPapers, 'file' | 'content'> & { readonly plan: Plan; readonly library: Library }
> {
  const said = process.env[ASKED];
  if (said === undefined) throw new Error(`${ASKED} is not set: this build is for the verb "papers"`);
  // Written by `build-papers.ts`, never by hand.
  const { file, content, ...asked } = JSON.parse(said) as AskedPapers;
  const { library } = await readLibrary(content, 'content');
  const { plan } = compileLesson(file, await readFile(file, 'utf8'), library, asked.id);
  if (plan === null) throw new Error(`${file} does not compile`);
  return { ...asked, plan, library };
}
