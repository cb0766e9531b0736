import { describe, expect, test } from 'vitest';
import { pick, stream, uniformBelow } from '../../../shared/chance/index.ts';
import { checkLesson } from '../../../shared/compile/index.ts';
import { readYaml, rememberYaml } from '../../../shared/lesson/index.ts';
import { demoLessons, demoLibrary } from '../../demo.ts';

describe('a reader that remembers', () => {
  test('gives what it gave for the same text, and reads what is new', () => {
    const read = rememberYaml();
    const first = read('minutes: 8', 100);
    expect(read('minutes: 9', 100).data).toEqual({ minutes: 9 });
    expect(read('minutes: 8', 100)).toBe(first);
  });

  test('reads a text again where another number of marks is allowed', () => {
    const read = rememberYaml();
    expect(read('a: [1, 2, 3]').faults).toEqual([]);
    expect(read('a: [1, 2, 3]', 2).faults.map(({ code }) => code)).toEqual(['yaml-unreadable']);
    expect(read('a: [1, 2, 3]').data).toEqual({ a: [1, 2, 3] });
  });

  test('forgets what it read longest ago', () => {
    const read = rememberYaml();
    const kept = read('kept: 1');
    const lost = read('lost: 1');
    for (let number = 0; number < 199; number += 1) read(`more: ${number}`);
    expect(read('kept: 1')).not.toBe(kept);
    const again = read('kept: 1');
    for (let number = 0; number < 150; number += 1) read(`yet more: ${number}`);
    expect(read('kept: 1')).toBe(again);
    expect(read('lost: 1')).not.toBe(lost);
    expect(read('lost: 1').data).toEqual(readYaml('lost: 1').data);
  });
});

test.each(demoLessons)('$id, typed at, is checked with a memory as without', ({ id, file, text }) => {
  const read = rememberYaml();
  const chance = stream(`typing/${id}`);
  let typed = text;
  for (let edit = 0; edit < 40; edit += 1) {
    const at = uniformBelow(chance, typed.length);
    const sign = pick(chance, ['e', '7', ' ', '\n', ':', '[', '']);
    typed = typed.slice(0, at) + sign + typed.slice(sign === '' ? at + 3 : at);
    const fresh = checkLesson(file, typed, demoLibrary, id);
    const remembered = checkLesson(file, typed, demoLibrary, id, read);
    expect(remembered.problems).toEqual(fresh.problems);
    expect(remembered.plan).toEqual(fresh.plan);
    expect(remembered.claims).toEqual(fresh.claims);
    // Most edits break a lesson: every third time one begins from the whole text again.
    if (edit % 3 === 2) typed = text;
  }
});
