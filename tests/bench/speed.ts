import { isScored, recordPlay, score } from '../../shared/activities/index.ts';
import { changeBlock, outline } from '../../shared/bench/index.ts';
import { checkLesson, compileLesson } from '../../shared/compile/index.ts';
import { rememberYaml } from '../../shared/lesson/index.ts';
import { readLibrary } from '../../src/loaders/read-library.ts';
import { processorMs } from '../processor-ms.ts';

const { library } = await readLibrary('content');

const block = (number: number): string => `
\`\`\`sort
id: sort-${number}
title: How was each thing made?
finds: { pit: P7, leave-out: [P7-167, P7-169, P7-170, P7-172] }
by: made-by
trays: [flaked, ground, { name: heat, holds: [fired, machine] }, { name: not made, holds: [natural, burnt] }]
minutes: 4
\`\`\`

A sentence between two activities.
`;
const head = '---\ntitle: Forty sorts\nsite: wendle-marsh\nbands: [9-11]\nminutes: 180\n---\n';
const forty = head + Array.from({ length: 40 }, (_, index) => block(index)).join('');
const { plan } = compileLesson('one.md', head + block(1), library, 'bench');
const activity = plan?.activities[0];
if (activity === undefined || !isScored(activity))
  throw new Error('the lesson of this bench does not compile');
const play = recordPlay(activity);

const parts = outline(forty);
const readRun = rememberYaml();
let letters = 0;
/** The lesson with one more letter typed in the midst of it. */
const typedAt = (): string => {
  letters += 1;
  return forty.replace('id: sort-20\n', `id: sort-20-${letters}\n`);
};

/** The mean of several runs, in ms of processor: on a busy machine the clock would count what others do. */
function meanMs(run: () => void, runs: number): number {
  for (let warm = 0; warm < 20; warm += 1) run();
  const total = processorMs(() => {
    for (let done = 0; done < runs; done += 1) run();
  });
  return total / runs;
}

const figures = [
  {
    name: 'check a lesson of forty activities as one types, a letter more each time',
    target: 16,
    ms: meanMs(() => checkLesson('forty.md', typedAt(), library, 'bench', readRun), 100),
  },
  {
    name: 'check a lesson of forty activities for the first time',
    target: 50,
    ms: meanMs(() => checkLesson('forty.md', forty, library, 'bench'), 60),
  },
  {
    name: 'read the parts of a lesson of forty activities again, for its form',
    target: 16,
    ms: meanMs(() => outline(`${forty} `, parts), 60),
  },
  {
    name: 'write one change of a form into a lesson of forty activities',
    target: 50,
    ms: meanMs(() => changeBlock(forty, 40, { do: 'set', path: ['minutes'], value: 5 }), 60),
  },
  { name: 'score one play', target: 1, ms: meanMs(() => score(activity, play), 2000) },
];
for (const { name, target, ms } of figures) {
  console.log(
    `${ms.toFixed(3).padStart(9)} ms  ${name} (target: ${target} ms)${ms > target ? '  over' : ''}`,
  );
}
process.exitCode = figures.every(({ ms, target }) => ms <= target) ? 0 : 1;
