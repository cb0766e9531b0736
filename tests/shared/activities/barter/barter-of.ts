import type {
  BarterActivity,
  ClassActivity,
  GatheringActivity,
} from '../../../../shared/activities/scorers.ts';
import { compileLesson, type CompiledLesson } from '../../../../shared/compile/index.ts';
import { demoLibrary } from '../../../demo.ts';

/** A lesson of one barter block, for a band. */
export const compiled = (block: string, band = '11-14', seed = '1'): CompiledLesson =>
  compileLesson(
    'fire.md',
    `---\ntitle: Fire\nsite: wendle-marsh\nbands: [${band}]\nminutes: 60\n---\n\`\`\`barter\ntitle: Round the fire\n${block}\nminutes: 10\n\`\`\`\n`,
    demoLibrary,
    seed,
  );

/** Problems as `code line:column received`. */
export const told = (block: string, band?: string): readonly string[] =>
  compiled(block, band).problems.map(({ code, from }) => `${code} ${from.line}:${from.column}`);

function barterOf(block: string, band?: string, seed?: string): BarterActivity {
  const { plan, problems } = compiled(block, band, seed);
  const activity = plan?.activities[0];
  if (activity?.kind !== 'barter')
    throw new Error(problems.map(({ code, received }) => `${code}: ${received}`).join('; '));
  return activity;
}

export function gatheringOf(block: string, band?: string, seed?: string): GatheringActivity {
  const activity = barterOf(block, band, seed);
  if (activity.play !== 'gathering') throw new Error('a class');
  return activity;
}

export function classOf(block: string, band?: string, seed?: string): ClassActivity {
  const activity = barterOf(block, band, seed);
  if (activity.play !== 'class') throw new Error('a gathering');
  return activity;
}
