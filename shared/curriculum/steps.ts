import type { Band } from '../library/bands.ts';
import type { AgeStep, Curricula } from './curricula.ts';

/** True where a step of age holds a stage of a framework. */
const holds = ({ stages }: AgeStep, framework: string, stage: string): boolean =>
  (stages[framework] ?? []).includes(stage);

/** The steps of age at which a lesson meets a stage of a framework, the youngest first: those of its bands that hold it. */
export const stepsFor = (
  { steps }: Curricula,
  bands: readonly Band[],
  framework: string,
  stage: string,
): readonly AgeStep[] => steps.filter((step) => bands.includes(step.band) && holds(step, framework, stage));

/** The bands in which a stage of a framework is met at all. */
export const bandsOf = ({ steps }: Curricula, framework: string, stage: string): readonly Band[] => [
  ...new Set(steps.filter((step) => holds(step, framework, stage)).map(({ band }) => band)),
];

/** The ideas of number a stage may be asked for, with what its framework brings forward or leaves for later. */
export function mayUse(step: AgeStep, framework: string, stage: string): ReadonlySet<string> {
  const ideas = new Set(step.mayUse);
  for (const change of step.but) {
    if (change.framework !== framework || change.stage !== stage) continue;
    for (const idea of change.add) ideas.add(idea);
    for (const idea of change.without) ideas.delete(idea);
  }
  return ideas;
}
