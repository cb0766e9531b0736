import { describe, expect, test } from 'vitest';
import { compileOrder } from '../../../shared/activities/order/compile.ts';
import { orderBlock } from '../../../shared/activities/order/schema.ts';
import { guessPlay, recordPlay, score, type ActivityOf } from '../../../shared/activities/index.ts';
import { stream } from '../../../shared/chance/index.ts';
import { compileLesson } from '../../../shared/compile/index.ts';
import { readLibrary } from '../../../src/loaders/read-library.ts';

const { library } = await readLibrary('content');

const lesson = (steps: string, bands = '14-16'): string =>
  `---\ntitle: Test\nsite: wendle-marsh\nbands: [${bands}]\nminutes: 30\n---\n\`\`\`order\ntitle: Test\nminutes: 20\nsteps:\n${steps}\n\`\`\`\n`;

const compile = (steps: string, bands?: string) =>
  compileLesson('test.md', lesson(steps, bands), library, 'seed');

function activityOf(steps: string): ActivityOf<'order'> {
  const { plan, problems } = compile(steps);
  expect(problems).toEqual([]);
  const activity = plan?.activities[0];
  if (activity?.kind !== 'order') throw new Error('no order');
  return activity;
}

/** The eight steps of the making data: blade, haft, and what joins them. */
const EIGHT = [
  '- { id: find, name: Find }',
  '- { id: rough, name: Rough out, must-follow: [find] }',
  '- { id: grind, name: Grind, must-follow: [rough] }',
  '- { id: polish, name: Polish, must-follow: [grind] }',
  '- { id: wood, name: Cut wood }',
  '- { id: socket, name: Cut socket, must-follow: [wood, rough] }',
  '- { id: fit, name: Fit, must-follow: [socket, polish] }',
  '- { id: bind, name: Bind, must-follow: [fit] }',
].join('\n');

const laid = (activity: ActivityOf<'order'>, ...ids: readonly (string | string[])[]) =>
  score(activity, { activity: activity.id, laid: [...ids] });

describe('eight steps to an axe', () => {
  const activity = activityOf(EIGHT);

  // By hand: the pair wood, socket falls among the four of the blade in 6!/(4! 2!) = 15 ways; in 3 the socket comes before the roughing.
  test('12 orders are right, as counted by hand', () => expect(activity.validOrders).toBe(12));

  test('a right order that is not the one written scores 1', () => {
    expect(laid(activity, 'wood', 'find', 'rough', 'socket', 'grind', 'polish', 'fit', 'bind').score).toBe(1);
    expect(laid(activity, 'find', 'rough', 'grind', 'polish', 'wood', 'socket', 'fit', 'bind').score).toBe(1);
  });

  test('backwards scores the least', () => {
    expect(laid(activity, 'bind', 'fit', 'socket', 'wood', 'polish', 'grind', 'rough', 'find').score).toBe(
      -1,
    );
  });

  test('all cards at one place, or none laid, score 0: nothing gained over guessing', () => {
    expect(
      laid(
        activity,
        activity.steps.map(({ id }) => id),
      ).score,
    ).toBe(0);
    expect(laid(activity).score).toBe(0);
  });

  test('the working names the pair that is broken and the card to move', () => {
    const { working } = laid(activity, 'find', 'grind', 'rough', 'polish', 'wood', 'socket', 'fit', 'bind');
    expect(working['brokenPairs']).toEqual([['rough', 'grind']]);
    expect(working['toMove']).toHaveLength(1);
  });

  test('the wood and the blade may change places, and both are needed for the socket', () => {
    const wood = activity.free.filter(({ step }) => step === 'wood');
    expect(wood[0]).toEqual({
      step: 'wood',
      others: ['find', 'rough'],
      bothAfter: [],
      bothBefore: ['socket'],
    });
    expect(activity.steps.find(({ id }) => id === 'wood')).toMatchObject({ earliest: 1, latest: 5 });
  });

  test('every free pair is told once', () => {
    // 28 pairs of eight, 22 of them ordered.
    expect(activity.free.reduce((total, { others }) => total + others.length, 0)).toBe(6);
  });

  test('skill orders the scores: each swap away from right costs something', () => {
    const mean = (swaps: number): number => {
      let total = 0;
      for (let pupil = 0; pupil < 400; pupil += 1) {
        const chance = stream(`pupil/${swaps}/${pupil}`);
        const line: string[] = recordPlay(activity).laid.map(String);
        for (let swap = 0; swap < swaps; swap += 1) {
          const [a, b] = [chance.next() % line.length, chance.next() % line.length];
          [line[a], line[b]] = [line[b] ?? '', line[a] ?? ''];
        }
        total += laid(activity, ...line).score ?? 0;
      }
      return total / 400;
    };
    const scores = [0, 1, 2, 4, 8].map(mean);
    expect(scores[0]).toBe(1);
    for (const [index, value] of scores.entries())
      if (index > 0) expect(value).toBeLessThan(scores[index - 1] ?? 0);
  });
});

test('the twelve steps of the demo lesson have 945 right orders, as counted by another program', async () => {
  const { readFile } = await import('node:fs/promises');
  const text = await readFile('content/lessons/order-of-an-axe.md', 'utf8');
  const [activity] = compileLesson('a.md', text, library, 'x').plan?.activities ?? [];
  expect(activity?.kind === 'order' ? activity.validOrders : null).toBe(945);
});

test('guesses average 0', () => {
  const activity = activityOf(EIGHT);
  const scores = Array.from(
    { length: 4000 },
    (_, guess) => score(activity, guessPlay(activity, stream(`guess/${guess}`))).score ?? 9,
  );
  expect(Math.abs(scores.reduce((total, value) => total + value, 0) / scores.length)).toBeLessThan(0.02);
});

test('the cards are never dealt in a right order, and their letters follow the deal', () => {
  const activity = activityOf(EIGHT);
  expect(laid(activity, ...activity.steps.map(({ id }) => id)).score).toBeLessThan(1);
  expect(activity.steps.map(({ letter }) => letter).join('')).toBe('ABCDEFGH');
});

describe('what can be wrong', () => {
  const faults = (steps: string, bands?: string) =>
    compile(steps, bands).problems.map(({ code, grade, from, received }) => ({
      code,
      grade,
      line: from.line,
      received,
    }));

  test('a ring of steps is named, at the step it begins with', () => {
    const ring =
      '- { id: a, name: A, must-follow: [c] }\n- { id: b, name: B, must-follow: [a] }\n- { id: c, name: C, must-follow: [b] }';
    expect(faults(ring)).toEqual([
      { code: 'steps-circular', grade: 'error', line: 11, received: 'a ring: a, then b, then c, then a' },
    ]);
  });

  test('a step that is not there, with the nearest that is', () => {
    const { problems } = compile(
      '- { id: find, name: A }\n- { id: grind, name: B, must-follow: [fnd] }\n- { id: fit, name: C }',
    );
    expect(problems.map(({ code, mend, edit }) => ({ code, mend, text: edit?.text }))).toEqual([
      { code: 'word-unknown', mend: 'write "find"', text: 'find' },
    ]);
  });

  test('the same id, the same words, no order at all', () => {
    expect(
      faults('- { id: a, name: A }\n- { id: a, name: B }\n- { id: c, name: a, must-follow: [a] }').map(
        ({ code }) => code,
      ),
    ).toEqual(['id-repeated', 'steps-alike']);
    expect(
      faults('- { id: a, name: A }\n- { id: b, name: B }\n- { id: c, name: C }').map(({ code }) => code),
    ).toEqual(['steps-unordered']);
  });

  test('more cards than the youngest can hold in mind is a caution', () => {
    expect(faults(EIGHT, '5-7').map(({ code, grade }) => `${grade} ${code}`)).toContain(
      'caution steps-too-many',
    );
  });
});

test('a block that does not name its find or source refuses neither', () => {
  const block = orderBlock.parse({
    title: 'x',
    minutes: 20,
    of: 'P7-1',
    source: 'nobody',
    steps: [
      { id: 'a', name: 'A' },
      { id: 'b', name: 'B', 'must-follow': ['a'] },
      { id: 'c', name: 'C' },
    ],
  });
  const [site] = library.sites;
  if (site === undefined) throw new Error('no site');
  const { activity, faults } = compileOrder('order-1', block, {
    library,
    site,
    bands: ['14-16'],
    setting: 'classroom',
    chance: stream('x'),
  });
  expect(activity).toBeNull();
  expect(faults.map(({ code }) => code)).toEqual(['find-unknown', 'source-unknown']);
});
