import { bench, describe } from 'vitest';
import { recordPlay, score } from '../../shared/activities/index.ts';
import { compileLesson } from '../../shared/compile/index.ts';
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
if (activity === undefined) throw new Error('the lesson of this bench does not compile');
const play = recordPlay(activity);

// Targets: 16 ms to check a lesson of forty activities as one types; 1 ms to score a play.
describe('speed', () => {
  bench('check a lesson of forty activities', () => {
    compileLesson('forty.md', forty, library, 'bench');
  });
  bench('score one play', () => {
    score(activity, play);
  });
});
