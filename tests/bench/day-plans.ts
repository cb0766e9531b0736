import { readFileSync } from 'node:fs';
import { planDay, type Day, type Progress } from '../../shared/day/index.ts';
import { readDay } from '../../shared/library/index.ts';
import { highsSolver } from '../../src/command/highs-solver.ts';
import { dayCases } from './day-cases.ts';

// How good a plan is after ten seconds, and how near it is shown to be to the best.
const SECONDS = Number(process.argv[2] ?? 10);
const demo = (id: string): { name: string; day: Day } => {
  const { value } = readDay(id, readFileSync(`content/days/${id}.yaml`, 'utf8'));
  if (value === null) throw new Error(id);
  return { name: id, day: value };
};

for (const { name, day } of [...dayCases, demo('class-morning'), demo('open-day')]) {
  const solve = await highsSolver(SECONDS);
  const begin = performance.now();
  let last: Progress | null = null;
  const reached: string[] = [];
  const outcome = planDay(day, solve, {
    tell: (progress) => {
      if (last?.aim !== progress.aim)
        reached.push(`${progress.aim} from ${((performance.now() - begin) / 1000).toFixed(1)} s`);
      last = progress;
    },
  });
  const seconds = ((performance.now() - begin) / 1000).toFixed(1);
  const told =
    'plan' in outcome
      ? `${outcome.status} idle ${outcome.minutes.idleMinutes}/${outcome.bound.idleMinutes} uneven ${outcome.minutes.unevenMinutes}/${outcome.bound.unevenMinutes} walking ${outcome.minutes.walkingMinutes}/${outcome.bound.walkingMinutes}`
      : outcome.status;
  console.log(`${name}: ${told} in ${seconds} s (${reached.join(', ')})`);
}
