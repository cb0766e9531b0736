import type { SortActivity } from '../../../../shared/activities/scorers.ts';
import { compileLesson, type CompiledLesson } from '../../../../shared/compile/index.ts';
import type { Library } from '../../../../shared/library/index.ts';
import { demoLibrary } from '../../../demo.ts';

const HEAD = '---\ntitle: Six pits\nsite: wendle-marsh\nbands: [14-16]\nminutes: 60\n---\n';

/** A lesson of one sort, for the oldest band, so that no limit of a band is met by chance. */
export const lessonOf = (block: string, head: string = HEAD): string =>
  `${head}\`\`\`sort\n${block}\n\`\`\`\n`;

export const compiled = (block: string, library: Library = demoLibrary, seed = '1'): CompiledLesson =>
  compileLesson('six-pits.md', lessonOf(block), library, seed);

/** Problems as `code line:column`; the block begins on line 8. */
export const told = (block: string, library: Library = demoLibrary): readonly string[] =>
  compiled(block, library).problems.map(
    ({ code, grade, from }) => `${code} ${from.line}:${from.column}${grade === 'caution' ? ' caution' : ''}`,
  );

/** The sort that a block makes. @throws Error when it makes none. */
export function sortOf(block: string, seed = '1'): SortActivity {
  const { plan, problems } = compiled(block, demoLibrary, seed);
  const activity = plan?.activities[0];
  if (activity?.kind !== 'sort')
    throw new Error(problems.map(({ code, received }) => `${code}: ${received}`).join('; '));
  return activity;
}
