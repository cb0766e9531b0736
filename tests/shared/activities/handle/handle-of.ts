import { stringify } from 'yaml';
import type { ActivityOf } from '../../../../shared/activities/index.ts';
import { compileLesson, type CompiledLesson } from '../../../../shared/compile/index.ts';
import { demoLibrary } from '../../../demo.ts';

/** What a test writes in a handle block, beside its title. */
export interface WrittenTable {
  readonly pieces: readonly object[];
  readonly [key: string]: unknown;
}

/** A lesson of one handling session. */
export const tableLesson = (
  bands: readonly string[],
  block: WrittenTable,
  head: Readonly<Record<string, unknown>> = {},
): string => `---
${stringify({ title: 'A table', site: 'wendle-marsh', bands, minutes: 60, ...head }, { aliasDuplicateObjects: false })}---
\`\`\`handle
${stringify({ title: 'In the hand', minutes: 10, ...block }, { aliasDuplicateObjects: false, lineWidth: 0 })}\`\`\`
`;

/** A lesson of one handling session, compiled. */
export const compiledTable = (
  bands: readonly string[],
  block: WrittenTable,
  head: Readonly<Record<string, unknown>> = {},
): CompiledLesson => compileLesson('table.md', tableLesson(bands, block, head), demoLibrary, 'a');

/** The session of a lesson that compiles. */
export function tableActivity(bands: readonly string[], block: WrittenTable): ActivityOf<'handle'> {
  const { plan, problems } = compiledTable(bands, block);
  const [activity] = plan?.activities ?? [];
  if (activity?.kind !== 'handle') throw new Error(JSON.stringify(problems));
  return activity;
}
