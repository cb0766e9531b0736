import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { begin, keptPast, redo, undo, write } from '../../../shared/bench/index.ts';

test('typing on is one step; a rest or another place begins the next', () => {
  let history = begin('a');
  history = write(history, 'ab', 'file', 0);
  history = write(history, 'abc', 'file', 300);
  history = write(history, 'abcd', 'file', 5000);
  history = write(history, 'abcde', 'head title', 5100);
  expect(history.past).toEqual(['a', 'abc', 'abcd']);
  expect(undo(undo(history)).text).toBe('abc');
  expect(undo(undo(undo(undo(undo(history))))).text).toBe('a');
});

test('a step forward is there until something else is written', () => {
  const history = write(begin('a'), 'b', 'file', 0);
  expect(redo(undo(history)).text).toBe('b');
  expect(redo(write(undo(history), 'c', 'file', 9000)).text).toBe('c');
  expect(redo(begin('a')).text).toBe('a');
});

test('any run of writing, stepping back and forward ends where stepping all the way back began', () => {
  fc.assert(
    fc.property(
      fc.array(fc.oneof(fc.string(), fc.constantFrom('UNDO', 'REDO')), { maxLength: 60 }),
      (acts) => {
        let history = begin('start');
        for (const [at, act] of acts.entries())
          history =
            act === 'UNDO'
              ? undo(history)
              : act === 'REDO'
                ? redo(history)
                : write(history, act, 'file', at * 2000);
        for (let step = 0; step <= acts.length; step += 1) history = undo(history);
        expect(history.text).toBe('start');
      },
    ),
  );
});

test('no more is kept than is written often without being felt', () => {
  let history = begin('0');
  for (let step = 1; step < 300; step += 1) history = write(history, String(step), 'file', step * 5000);
  expect(history.past).toHaveLength(200);
  expect(keptPast(history)).toHaveLength(30);
  expect(keptPast(history).at(-1)).toBe('298');
});
