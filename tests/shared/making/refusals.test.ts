import { expect, test } from 'vitest';
import { reckonQuantity } from '../../../shared/making/index.ts';
import { refusalSentence } from '../../../shared/words/en/hours.ts';
import { figures } from '../../reference/making/model.ts';

test('a size out of range is refused with the range, and everything else wrong with it', () => {
  const result = reckonQuantity(figures, 'axe-hours', { lengthMm: 900, widthMm: 52, stone: 'flnt' });
  expect(result).toEqual({
    ok: false,
    refusals: [
      { kind: 'out-of-range', input: 'lengthMm', received: 900, from: 40, to: 450, unit: 'mm' },
      { kind: 'missing', input: 'thicknessMm' },
      expect.objectContaining({ kind: 'unknown', input: 'stone', received: 'flnt' }),
    ],
  });
});

test.each([
  { name: 'the least', diameterCm: 2, ok: true },
  { name: 'just below it', diameterCm: 1.999, ok: false },
  { name: 'the greatest', diameterCm: 120, ok: true },
  { name: 'just above it', diameterCm: 120.001, ok: false },
  { name: 'no number', diameterCm: Number.NaN, ok: false },
])('a trunk of $name: answered $ok', ({ diameterCm, ok }) => {
  expect(reckonQuantity(figures, 'felling-minutes', { diameterCm }).ok).toBe(ok);
});

test('a pecked form of a flaked stone is refused; of a tough one it is not', () => {
  expect(reckonQuantity(figures, 'axe-hours', { form: 'pecked-celt', stone: 'flint' })).toEqual({
    ok: false,
    refusals: [{ kind: 'form-needs-pecking', form: 'pecked-celt', stone: 'flint' }],
  });
  expect(reckonQuantity(figures, 'axe-hours', { form: 'pecked-celt', stone: 'basalt' }).ok).toBe(true);
});

test('breakage is not made up for a stone that is not flaked', () => {
  expect(reckonQuantity(figures, 'breakage-risk', { stone: 'basalt' })).toEqual({
    ok: false,
    refusals: [{ kind: 'not-counted', stone: 'basalt' }],
  });
});

test('half a stake is no stake; stakes and trunk are both told of', () => {
  expect(reckonQuantity(figures, 'house-stakes-hours', { diameterCm: 10, stakes: 2.5 })).toEqual({
    ok: false,
    refusals: [{ kind: 'not-whole', input: 'stakes', received: 2.5 }],
  });
  const both = reckonQuantity(figures, 'house-stakes-hours', { diameterCm: 500, stakes: 0 });
  expect(both.ok ? 0 : both.refusals.length).toBe(2);
});

test('a sawn stone says that sawing is not in the total', () => {
  const result = reckonQuantity(figures, 'axe-hours', { stone: 'jadeitite' });
  expect(result.ok && result.value.without).toEqual(['sawing']);
});

test('sentences name the range or the words known', () => {
  expect(
    refusalSentence({
      kind: 'out-of-range',
      input: 'lengthMm',
      received: 900,
      from: 40,
      to: 450,
      unit: 'mm',
    }),
  ).toBe(
    'length: expected from 40 to 450 mm; received 900. The model was made for that range and says nothing beyond it.',
  );
  expect(
    refusalSentence({ kind: 'unknown', input: 'extent', received: 'ful', known: ['none', 'full'] }, 'full'),
  ).toBe('extent: expected one of: none, full; received "ful". Did you mean full?');
  expect(refusalSentence({ kind: 'missing', input: 'stakes' })).toBe(
    'number of stakes: expected a number; received none',
  );
  expect(refusalSentence({ kind: 'not-whole', input: 'stakes', received: 2.5 })).toContain('whole number');
  expect(refusalSentence({ kind: 'not-counted', stone: 'basalt' })).toContain('basalt');
  expect(refusalSentence({ kind: 'form-needs-pecking', form: 'pecked-celt', stone: 'flint' })).toContain(
    'pecked-celt',
  );
});
