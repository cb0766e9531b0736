import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { checkLesson } from '../../shared/compile/index.ts';
import { LONGEST_LESSON, type Problem } from '../../shared/lesson/index.ts';
import { readFindsTable, readSite } from '../../shared/library/index.ts';
import { readMakingFigures } from '../../shared/library/read-making-figures.ts';
import { readStepsFile } from '../../shared/library/read-steps.ts';
import { demoLibrary, home } from '../demo.ts';

/** A file with one fault; its name begins with the code of that fault. */
export interface BrokenFile {
  readonly name: string;
  readonly code: string;
  readonly text: string;
}

const folder = join(home, 'tests/content/broken');
const figures = readFileSync(join(home, 'content/figures/making-hours.yaml'), 'utf8');

/** Two faults need more text than a small file has; it is put in here. */
function filled(name: string, text: string): string {
  if (name === 'file-too-long.md') return text + 'more of the same\n'.repeat(Math.ceil(LONGEST_LESSON / 17));
  if (name === 'source-unknown.figures.yaml') return figures.replace('sources: [forum2014', 'sources: [forum2041');
  return text;
}

export const brokenFiles: readonly BrokenFile[] = readdirSync(folder)
  .toSorted()
  .map((name) => ({
    name,
    code: name.replace(/\..*$/, ''),
    text: filled(name, readFileSync(join(folder, name), 'utf8')),
  }));

/** The problems of a file, read by what it is. */
export function problemsOf(name: string, text: string): readonly Problem[] {
  if (name.endsWith('.csv')) return readFindsTable(name, text, demoLibrary.vocabulary, 'ASM').problems;
  if (name.endsWith('.site.yaml')) return readSite(name, text, [], demoLibrary.vocabulary).problems;
  if (name.endsWith('.steps.yaml')) return readStepsFile(name, text).problems;
  if (name.endsWith('.figures.yaml')) return readMakingFigures(name, text).problems;
  // A library whose figures cannot be read.
  const library = name === 'figures-missing.md' ? { ...demoLibrary, making: null } : demoLibrary;
  return checkLesson(name, text, library, 'broken').problems;
}
