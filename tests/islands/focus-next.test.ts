import { afterEach, beforeEach, expect, test, vi } from 'vitest';
import { focusNext } from '../../src/islands/focus-next.ts';

/** A stand-in for an island: what is drawn in it, and what has had the focus. */
function island() {
  const drawn = new Set<string>();
  const focused: string[] = [];
  const root = {
    current: {
      querySelector: (selector: string) =>
        drawn.has(selector) ? { focus: () => focused.push(selector) } : null,
    },
  } as unknown as Parameters<typeof focusNext>[0];
  return { drawn, focused, root };
}

beforeEach(() => {
  vi.useFakeTimers({ toFake: ['setTimeout'] });
  vi.stubGlobal('requestAnimationFrame', (frame: () => void) => setTimeout(frame, 16));
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

test('what a store has drawn by a timer takes the focus, though a frame comes first', () => {
  const { drawn, focused, root } = island();
  // As a store does, and as an island's move does straight after it; the press before is still there.
  drawn.add('[data-find]');
  setTimeout(() => {
    drawn.delete('[data-find]');
    drawn.add('[data-record]');
  });
  focusNext(root, ['[data-record]', '[data-find]']);
  vi.runAllTimers();
  expect(focused).toEqual(['[data-record]']);
});

test('what is drawn late is waited for, and what is never drawn is let go', () => {
  const { drawn, focused, root } = island();
  focusNext(root, ['[data-record]']);
  vi.advanceTimersByTime(160);
  expect(focused).toEqual([]);
  drawn.add('[data-record]');
  vi.advanceTimersByTime(32);
  expect(focused).toEqual(['[data-record]']);
  focusNext(root, ['.nowhere']);
  vi.runAllTimers();
  expect(vi.getTimerCount()).toBe(0);
  expect(focused).toEqual(['[data-record]']);
});
