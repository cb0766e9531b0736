import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { home } from '../demo.ts';
import { newFolder, runPitlore } from './run-pitlore.ts';

const LESSON = 'content/lessons/who-made-this.md';

/** A demo lesson with some of its words changed, in a folder of its own. */
function changed(from: string, to: string): string {
  const text = readFileSync(join(home, LESSON), 'utf8');
  expect(text).toContain(from);
  const file = join(newFolder(), 'changed.md');
  writeFileSync(file, text.replace(from, to));
  return file;
}

interface Row {
  readonly outcome: string;
  readonly status: string | null;
  readonly earned: boolean;
  readonly claimed: boolean;
  readonly evidence: string | null;
  readonly why: string | null;
  readonly where: readonly { readonly by: string }[];
}

test('each claim of a demo lesson is earned, with its status, its evidence and who saw to it', () => {
  const { code, out, err } = runPitlore(['claims', LESSON, '--json']);
  expect({ code, err }).toEqual({ code: 0, err: '' });
  const rows: readonly Row[] = JSON.parse(out);
  expect(rows.map(({ outcome }) => outcome)).toEqual([
    'en-hi-ks2-sources',
    'MNU 1-20b',
    'D2.His.9.3-5',
    'wal-hum-wm1-ps2-sort',
    'D2.His.16.3-5',
  ]);
  for (const { earned, claimed, evidence, why } of rows)
    expect({ earned, claimed, why, isShown: evidence !== null }).toEqual({
      earned: true,
      claimed: true,
      why: null,
      isShown: true,
    });
  expect(rows.map(({ status }) => status)).toEqual(['RF', 'FM', 'RF', 'RF', 'RF']);
  expect(rows.map(({ where }) => where[0]?.by)).toEqual(['plan', 'plan', 'plan', 'plan', 'lead']);
});

test('in words: what is earned, why, and by whose word', () => {
  const { code, out } = runPitlore(['claims', LESSON]);
  expect(code).toBe(0);
  expect(out).toContain('earned  MNU 1-20b  practised\n');
  expect(out).toContain('(FM)');
  expect(out).toContain('by the lead’s word');
  expect(out).not.toContain('could be claimed');
});

test('--offered adds what the lesson could claim and does not, and nothing it has claimed', () => {
  const { code, out } = runPitlore(['claims', LESSON, '--offered', '--json']);
  expect(code).toBe(0);
  const rows: readonly Row[] = JSON.parse(out);
  const own = rows.filter(({ claimed }) => claimed).map(({ outcome }) => outcome);
  const offered = rows.filter(({ claimed }) => !claimed);
  expect(offered.length).toBeGreaterThan(0);
  expect(offered.filter(({ outcome }) => own.includes(outcome))).toEqual([]);
  expect(runPitlore(['claims', LESSON, '--offered']).out).toContain('could be claimed  ');
});

test('an outcome of another stage is not earned, and the verb says why', () => {
  const { code, out } = runPitlore(['claims', changed('en-hi-ks2-sources', 'en-hi-ks3-source-rigour')]);
  expect(code).toBe(1);
  expect(out).toContain('NOT EARNED  en-hi-ks3-source-rigour');
  expect(out).toContain('which no band of this lesson is in');
});

test('an outcome nobody knows is not earned', () => {
  const { code, out } = runPitlore(['claims', changed('en-hi-ks2-sources', 'en-hi-ks2-sauces'), '--json']);
  expect(code).toBe(1);
  expect(JSON.parse(out)[0]).toMatchObject({
    outcome: 'en-hi-ks2-sauces',
    framework: null,
    earned: false,
    why: 'no framework here has this outcome',
  });
});

test('what else is wrong goes to the other stream', () => {
  const { code, err } = runPitlore(['claims', changed('site: wendle-marsh', 'site: wendle-mash')]);
  expect(code).toBe(1);
  expect(err).toContain('changed.md:');
  expect(err).toContain('"wendle-mash"');
});

test.each([[['claims']], [['claims', 'not-here.md']], [['claims', LESSON, '--loud']]])(
  '%j is not understood',
  (argv) => {
    const { code, out, err } = runPitlore(argv);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toContain('claims');
  },
);
