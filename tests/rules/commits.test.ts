import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { home } from '../demo.ts';

const { status, stdout } = spawnSync('git', ['log', '--no-merges', '--format=%s'], {
  cwd: home,
  encoding: 'utf8',
});
const subjects = status === 0 ? stdout.split('\n').filter((subject) => subject !== '') : [];

/** Written before this rule was, and part of a history that others have. */
const BEFORE_THE_RULE: ReadonlySet<string> = new Set([
  'Read a lesson, compile a sort, score it, from the command line',
  'Time plain Astro on bare pages and on pages as heavy as ours',
]);

/** Words that end like a report of what was done, and are commands all the same. */
const COMMANDS = /^(?:Bring|Embed|Feed|Need|Ring|Seed|Shed|Speed|Spring|String|Swing)\b/;

function subjectFaults(subject: string): readonly string[] {
  return [
    ...(subject.length >= 60 ? ['60 characters or more'] : []),
    ...(/^[A-Z]/.test(subject) ? [] : ['no capital first']),
    ...(subject.endsWith('.') ? ['a full stop'] : []),
    ...(/^\w+(?:\([^)]*\))?!?:|^\[|#\d|\b[A-Z]{2,}-\d/.test(subject) ? ['a tag or a ticket'] : []),
    ...(/\p{Extended_Pictographic}/u.test(subject) ? ['an emoji'] : []),
    ...(/\b(?:wip|address review|fix tests|misc)\b/i.test(subject) ? ['no subject at all'] : []),
    ...(/^\w+(?:ed|ing)\b/.test(subject) && !COMMANDS.test(subject) ? ['not a command'] : []),
  ];
}

test.skipIf(subjects.length === 0)('commits say in under sixty characters what they do', () => {
  const held = subjects.filter((subject) => !BEFORE_THE_RULE.has(subject));
  expect(held.flatMap((subject) => subjectFaults(subject).map((fault) => `${subject}: ${fault}`))).toEqual(
    [],
  );
});

test.each([
  { subject: 'Score order by precedence pairs', faults: [] },
  { subject: 'Added a tray', faults: ['not a command'] },
  { subject: 'Adding a tray', faults: ['not a command'] },
  { subject: 'feat: add a tray', faults: ['no capital first', 'a tag or a ticket'] },
  { subject: 'Add a tray (#12)', faults: ['a tag or a ticket'] },
  { subject: 'Add a tray 🎉', faults: ['an emoji'] },
  { subject: 'Add a tray.', faults: ['a full stop'] },
  { subject: `Add ${'a tray and '.repeat(6)}more`, faults: ['60 characters or more'] },
])('$subject: $faults', ({ subject, faults }) => {
  expect(subjectFaults(subject)).toEqual(faults);
});
