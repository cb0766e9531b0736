import { compileLesson, type CompiledLesson } from '../../../../shared/compile/index.ts';
import type { ActivityOf } from '../../../../shared/activities/index.ts';
import type { Library } from '../../../../shared/library/index.ts';
import { readLibrary } from '../../../../src/loaders/read-library.ts';

export const { library } = await readLibrary('content');

/** A lesson that is one estimate, compiled. */
export function compiled(
  block: string,
  bands = '[9-11]',
  seed = 'seed',
  from: Library = library,
): CompiledLesson {
  const text = `---\ntitle: A lesson\nsite: wendle-marsh\nbands: ${bands}\nminutes: 30\n---\n\n\`\`\`estimate\ntitle: An estimate\nminutes: 10\n${block}\n\`\`\`\n`;
  return compileLesson('lesson.md', text, from, seed);
}

/** Its estimate. @throws Error when it did not compile. */
export function estimated(block: string, bands = '[9-11]', seed = 'seed'): ActivityOf<'estimate'> {
  const { plan, problems } = compiled(block, bands, seed);
  const activity = plan?.activities[0];
  if (activity?.kind !== 'estimate') throw new Error(JSON.stringify(problems));
  return activity;
}

/** Codes with the line and what was received. */
export const told = ({ problems }: CompiledLesson): readonly string[] =>
  problems.map(({ code, grade, from, received }) => `${from.line} ${grade} ${code}: ${received}`);
