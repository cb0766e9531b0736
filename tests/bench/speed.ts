import { isScored, recordPlay, score } from '../../shared/activities/index.ts';
import { changeBlock, outline } from '../../shared/bench/index.ts';
import { checkLesson, compileLesson } from '../../shared/compile/index.ts';
import { readLibrary } from '../../src/loaders/read-library.ts';

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

/** The median of several runs, in ms: one slow run on a busy machine says nothing. */
function medianMs(run: () => void, runs: number): number {
  for (let warm = 0; warm < 20; warm += 1) run();
  const times = Array.from({ length: runs }, () => {
    const start = performance.now();
    run();
    return performance.now() - start;
  });
  return times.toSorted((a, b) => a - b)[Math.floor(runs / 2)] ?? Number.NaN;
}

const figures = [
  {
    name: 'check a lesson of forty activities',
    target: 16,
    ms: medianMs(() => checkLesson('forty.md', forty, library, 'bench'), 60),
  },
  {
    name: 'read the parts of a lesson of forty activities again, for its form',
    target: 16,
    ms: medianMs(() => outline(`${forty} `, parts), 60),
  },
  {
    name: 'write one change of a form into a lesson of forty activities',
    target: 50,
    ms: medianMs(() => changeBlock(forty, 40, { do: 'set', path: ['minutes'], value: 5 }), 60),
  },
  { name: 'score one play', target: 1, ms: medianMs(() => score(activity, play), 500) },
];
for (const { name, target, ms } of figures) {
  console.log(
    `${ms.toFixed(3).padStart(9)} ms  ${name} (target: ${target} ms)${ms > target ? '  over' : ''}`,
  );
}
process.exitCode = figures.every(({ ms, target }) => ms <= target) ? 0 : 1;
