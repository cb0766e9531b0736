import type { Band } from '../library/bands.ts';
import type { AgeStep, Curricula, Stage } from './curricula.ts';

/** True where the ages of a stage and of a band have a year in common; both end before their last age. */
function overlaps({ from, to }: Pick<Stage, 'from' | 'to'>, band: Band): boolean {
  const [first = 0, end = 0] = band.split('-').map(Number);
  return from < end && to > first;
}

/**
 * Whether each step of age holds a stage of a framework: as the rules say, or, for a framework the rules do not name (a
 * lead's own), by the ages its file gives the stage.
 */
function holding(
  { steps, frameworks }: Curricula,
  framework: string,
  stage: string,
): (step: AgeStep) => boolean {
  if (steps.some(({ stages }) => stages[framework] !== undefined))
    return ({ stages }) => (stages[framework] ?? []).includes(stage);
  const own = frameworks.find(({ id }) => id === framework)?.stages.find(({ id }) => id === stage);
  return ({ band }) => own !== undefined && overlaps(own, band);
}

/** The steps of age at which a lesson meets a stage of a framework, the youngest first: those of its bands that hold it. */
export function stepsFor(
  curricula: Curricula,
  bands: readonly Band[],
  framework: string,
  stage: string,
): readonly AgeStep[] {
  const holds = holding(curricula, framework, stage);
  return curricula.steps.filter((step) => bands.includes(step.band) && holds(step));
}

/** The bands in which a stage of a framework is met at all. */
export const bandsOf = (curricula: Curricula, framework: string, stage: string): readonly Band[] => [
  ...new Set(curricula.steps.filter(holding(curricula, framework, stage)).map(({ band }) => band)),
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
