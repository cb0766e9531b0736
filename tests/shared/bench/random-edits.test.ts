import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  addPart,
  changeBlock,
  changeData,
  changeHead,
  changeProse,
  movePart,
  outline,
  removePart,
  type Change,
  type Outline,
} from '../../../shared/bench/index.ts';
import { starterLesson } from '../../../shared/words/en/command.ts';
import { demoLessons } from '../../demo.ts';

const EDITS = 2000;

const commented = `---
# a note of the lead's own
title: Made or not? # short
nobody-knows: [this, key]   # kept all the same
bands: [7-9]

# how long we have
minutes: 30
site: wendle-marsh
visit:
  # where
  setting: classroom
  stations:
    # the first
    - kind: table-activity   # at the back
      children: 12
    # the second
    - { kind: table-activity, children: 8 }
---
Look.

  \`\`\`sort
  # which finds
  title: "Who made this?"
  finds:
    pit: P3 # all of it
    # but not this
    leave-out:
      - P3-128
  by: made-by
  trays:
    # made
    - carved
    - { name: not made, holds: [natural, burnt], hint: 'it grew so' }   # grew
    - name: ground
      holds: [ground]
  minutes: 10
  # the end
  \`\`\`

Talk.
`;

const texts = [
  ...demoLessons.map(({ text }) => text),
  starterLesson('A start'),
  commented,
  commented.replaceAll('\n', '\r\n'),
  `\uFEFF${commented}`,
];

const dataOf = (read: Outline, target: number | null): unknown => {
  if (target === null) return read.head?.data;
  const part = read.parts[target];
  return part?.part === 'block' ? part.data : undefined;
};

/** Every place in some data, the lists apart. */
function placesIn(
  data: unknown,
  path: readonly (string | number)[] = [],
): readonly (readonly (string | number)[])[] {
  if (typeof data !== 'object' || data === null) return [path];
  const inner = Object.entries(data).flatMap(([key, value]) =>
    placesIn(value, [...path, Array.isArray(data) ? Number(key) : key]),
  );
  return path.length === 0 ? inner : [path, ...inner];
}

const valueAt = (data: unknown, path: readonly (string | number)[]): unknown =>
  path.reduce<unknown>((value, step) => (value as Record<string | number, unknown>)[step], data);

const word = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 30 }),
  fc.constantFrom(
    'a, b',
    'x: y',
    '# no note',
    '```',
    '---',
    '- one',
    '{ a }',
    "it's",
    '"so"',
    'yes',
    '12',
    'null',
    ' lead',
    'a #b',
    'line\nline',
    '',
    '~',
    '@x',
    '%',
    '&a',
    '*a',
    '!t',
    '[',
    '|',
    '>',
  ),
);
const value = fc.oneof(
  word,
  fc.integer({ min: 0, max: 200 }),
  fc.boolean(),
  fc.array(word, { maxLength: 4 }),
  fc.record({ name: word, holds: fc.array(word, { minLength: 1, maxLength: 3 }) }),
);

/** Comments that stand on lines of their own, in order. */
const ownComments = (text: string): readonly string[] =>
  text.split(/\r\n|\n/).flatMap((line) => /^\s*(#(?!#).*?)\s*$/.exec(line)?.[1] ?? []);

/** Comments wherever they stand: one beside a key may come to stand under it where its list is laid anew. */
const everyComment = (text: string): readonly string[] =>
  text.split(/\r\n|\n/).flatMap((line) => /(?:^|\s)(#(?!#).*?)\s*$/.exec(line)?.[1] ?? []);

/** True where the few are in the many, in the same order. */
function areWithin(few: readonly string[], many: readonly string[]): boolean {
  let next = 0;
  for (const each of many) if (each === few[next]) next += 1;
  return next === few.length;
}

const keysKept = (before: unknown, after: unknown): boolean =>
  areWithin(
    Object.keys(before as object).filter((key) => Object.hasOwn(after as object, key)),
    Object.keys(after as object),
  );

test(`${EDITS} random edits by form: the text says what was meant, and keeps comments, order and all else`, () => {
  let made = 0;
  fc.assert(
    fc.property(
      fc.constantFrom(...texts),
      fc.nat(),
      fc.nat(),
      fc.constantFrom('set', 'add', 'remove', 'insert', 'move'),
      value,
      fc.nat(8),
      fc.nat(8),
      (text, chooseTarget, choosePlace, act, put, one, two) => {
        const before = outline(text);
        const targets = [
          null,
          ...before.parts.flatMap((part, index) => (part.part === 'block' ? [index] : [])),
        ];
        const target = targets[chooseTarget % targets.length] ?? null;
        const data = dataOf(before, target);
        const places = placesIn(data);
        const lists = places.filter((path) => Array.isArray(valueAt(data, path)));
        const place = places[choosePlace % places.length] ?? [];
        const list = lists[choosePlace % Math.max(1, lists.length)];
        const items = list === undefined ? [] : (valueAt(data, list) as readonly unknown[]);
        const change: Change =
          act === 'remove'
            ? { do: 'remove', path: place }
            : act === 'add'
              ? { do: 'set', path: ['added-key'], value: put }
              : act === 'set' || list === undefined
                ? { do: 'set', path: place, value: put }
                : act === 'insert'
                  ? { do: 'insert', path: list, at: one % (items.length + 1), value: put }
                  : { do: 'move', path: list, from: one % items.length, to: two % items.length };
        fc.pre(act !== 'move' || items.length > 0);
        const changed = target === null ? changeHead(text, change) : changeBlock(text, target, change);
        if (changed === null) throw new Error(`not written: ${JSON.stringify(change)}`);
        made += 1;
        const after = outline(changed);
        const wanted = changeData(data, change);
        expect(dataOf(after, target)).toEqual(wanted);
        expect(keysKept(data, dataOf(after, target))).toBe(true);
        // All else is the same, sign by sign.
        const others = (read: Outline, whole: string): readonly unknown[] => [
          target === null ? null : read.head?.yaml,
          ...read.parts.map((part, index) => (index === target ? null : whole.slice(part.from, part.to))),
        ];
        expect(others(after, changed)).toEqual(others(before, text));
        expect(changed.startsWith('\uFEFF')).toBe(text.startsWith('\uFEFF'));
        expect(/(?<!\r)\n/.test(changed)).toBe(/(?<!\r)\n/.test(text));
        // Inside a value that is replaced or taken out, its own comments go with it; where a list is laid anew they move along.
        const isWhole = typeof valueAt(data, place) !== 'object';
        const isSimple =
          act === 'add' || ((act === 'set' || act === 'remove') && isWhole && change.path === place);
        if (isSimple) expect(areWithin(ownComments(text), ownComments(changed))).toBe(true);
        else if (act === 'insert' || act === 'move')
          expect(everyComment(text).filter((comment) => !changed.includes(comment))).toEqual([]);
      },
    ),
    { numRuns: EDITS, seed: 20_261_129 },
  );
  expect(made).toBeGreaterThan(EDITS / 2);
});

test('a form that changes a value and changes it back leaves the text as it was', () => {
  let count = 0;
  for (const text of texts) {
    const read = outline(text);
    const targets = [null, ...read.parts.flatMap((part, index) => (part.part === 'block' ? [index] : []))];
    for (const target of targets) {
      const data = dataOf(read, target);
      for (const path of placesIn(data)) {
        const was = valueAt(data, path);
        if (typeof was !== 'string' && typeof was !== 'number') continue;
        const set = (given: string | null, to: unknown): string | null =>
          given === null
            ? null
            : target === null
              ? changeHead(given, { do: 'set', path, value: to })
              : changeBlock(given, target, { do: 'set', path, value: to });
        const back = set(set(text, 'something else'), was);
        // Quotes that were not needed may go; nothing else may.
        expect(back?.replaceAll(/["']/g, '')).toBe(text.replaceAll(/["']/g, ''));
        count += 1;
      }
    }
  }
  expect(count).toBeGreaterThan(200);
});

test('a part moved down changes places with the next, and moved up again the text is as it was', () => {
  let merged = 0;
  for (const text of texts) {
    const { parts } = outline(text);
    const wordsOf = (read: Outline, whole: string): string =>
      read.parts.map(({ from, to }) => whole.slice(from, to).trim()).join('\n\n');
    for (const [index] of parts.slice(1).entries()) {
      const moved = movePart(text, index, 1) ?? '';
      const order = parts.toSpliced(index, 1).toSpliced(index + 1, 0, ...parts.slice(index, index + 1));
      expect(wordsOf(outline(moved), moved).replaceAll(/\s+/g, ' ')).toBe(
        order
          .map(({ from, to }) => text.slice(from, to).trim())
          .join(' ')
          .replaceAll(/\s+/g, ' '),
      );
      // Words that come to stand beside words become one part.
      if (outline(moved).parts.length < parts.length) merged += 1;
      else expect(movePart(moved, index + 1, -1)).toBe(text);
    }
  }
  expect(merged).toBeGreaterThan(0);
});

test('parts taken out and put in', () => {
  const text = '---\ntitle: A\n---\nOne.\n\n```sort\nminutes: 1\n```\n\nTwo.\n';
  expect(removePart(text, 1)).toBe('---\ntitle: A\n---\nOne.\n\nTwo.\n');
  expect(removePart(text, 0)).toBe('---\ntitle: A\n---\n```sort\nminutes: 1\n```\n\nTwo.\n');
  expect(removePart(text, 2)).toBe('---\ntitle: A\n---\nOne.\n\n```sort\nminutes: 1\n```\n');
  expect(addPart(text, 9, 'Three.')).toBe(`${text}\nThree.\n`);
  expect(addPart(text, 1, '```order\na: 1\n```')).toBe(
    text.replace('```sort', '```order\na: 1\n```\n\n```sort'),
  );
  expect(addPart('---\ntitle: A\n---\n', 0, 'One.')).toBe('---\ntitle: A\n---\nOne.\n');
  // A block that was never closed is closed before anything follows it.
  expect(addPart('---\ntitle: A\n---\n```sort\nminutes: 1\n', 1, 'One.')).toBe(
    '---\ntitle: A\n---\n```sort\nminutes: 1\n```\n\nOne.\n',
  );
  expect(changeProse(text, 2, 'Three.\nFour.')).toBe(text.replace('Two.', 'Three.\nFour.'));
  expect(changeProse(text, 1, 'x')).toBeNull();
});

test('read again with what was read before, a text says the same', () => {
  for (const text of texts)
    for (const other of texts) expect(outline(text, outline(other))).toEqual(outline(text));
});
