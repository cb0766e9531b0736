import { describe, expect, test } from 'vitest';
import { derive, stream, type Stream, uniform } from '../../../shared/chance/index.ts';
import {
  bestFixedAnswer,
  fromEnds,
  type Line,
  lineFor,
  type LogNormal,
  middleOf,
  mirrored,
  recordInterval,
  referenceInterval,
  scoreInterval,
  scoreNumber,
  standardNormalQuantile,
} from '../../../shared/estimating/index.ts';
import { reckon, small } from '../../reference/making/model.ts';

// Six questions a lesson could ask, each on a line whose side is drawn by its own stream.
const questions = [
  reckon('axe-hours', small),
  reckon('knapping-minutes', small),
  reckon('grinding-hours', { ...small, finish: 'mirror' }),
  reckon('felling-minutes', { diameterCm: 20, wood: 'oak' }),
  reckon('axe-mass', { form: 'long-oval' }),
  reckon('house-stakes-hours', { diameterCm: 8, stakes: 60 }),
];

interface Item {
  readonly record: LogNormal;
  readonly range: { readonly low: number; readonly middle: number; readonly high: number };
  readonly line: Line;
}

const itemsOf = (seed: string): Item[] =>
  questions.map((question, index) => {
    const side = uniform(derive(stream(seed), `question-${index}`)) < 0.5 ? 'low' : 'high';
    const range = { low: question.lowerQuarter, middle: question.middle, high: question.upperQuarter };
    return {
      record: fromEnds(question),
      range,
      line: lineFor({ low: question.low, middle: question.middle, high: question.high }, side),
    };
  });

const alpha = 0.2;
const normal = (chance: Stream): number =>
  standardNormalQuantile(Math.min(Math.max(uniform(chance), 1e-9), 1 - 1e-9));
const average = (values: readonly number[]): number =>
  values.reduce((sum, value) => sum + value, 0) / values.length;
const lessons = Array.from({ length: 200 }, (_, index) => itemsOf(`lesson-${index}`));

/** Pupils who know the answer within a log error, and say how sure that lets them be. */
function pupils(error: number): { readonly number: number; readonly interval: number } {
  const numbers: number[] = [];
  const intervals: number[] = [];
  const chance = stream(`pupil-${error}`);
  for (const item of lessons.flat()) {
    const heard = item.record.middle * Math.exp(error * normal(chance));
    const sigma = Math.hypot(item.record.sigma, error);
    numbers.push(scoreNumber(heard, item.range, item.line).value?.score ?? Number.NaN);
    const said = recordInterval({ middle: heard, sigma }, alpha);
    intervals.push(scoreInterval(said, item.record, item.line, alpha).value?.score ?? Number.NaN);
  }
  return { number: average(numbers), interval: average(intervals) };
}

describe('in 200 lessons of six questions', () => {
  test('skill orders the scores: the more a pupil knows the more they score', () => {
    const scores = [0, 0.2, 0.5, 1, 2].map(pupils);
    expect(scores[0]?.number).toBe(1);
    expect(scores[0]?.interval).toBeCloseTo(1, 6);
    for (let step = 1; step < scores.length; step += 1) {
      expect(scores[step]?.number).toBeLessThan(scores[step - 1]?.number ?? Number.NaN);
      expect(scores[step]?.interval).toBeLessThan(scores[step - 1]?.interval ?? Number.NaN);
    }
  });

  test('an honest pupil who knows the answer within a factor of two beats every fixed answer', () => {
    const honest = pupils(Math.log(2) / 1.6449);
    const items = lessons.flat();
    // The same place on every line: its start, its middle, its end and between; and the same number whatever is asked.
    const places = [0, 0.1, 0.2, 0.25, 0.3, 0.4, 0.5, 0.6, 0.7, 0.75, 0.8, 0.9, 1];
    const placed = bestFixedAnswer(
      items,
      places,
      ({ range, line }, place) =>
        scoreNumber(line.from * (line.to / line.from) ** place, range, line).value?.score ?? null,
    );
    const numbered = bestFixedAnswer(
      items,
      [1, 2, 5, 10, 20, 50, 100, 200, 500],
      ({ range, line }, number) => scoreNumber(number, range, line).value?.score ?? null,
    );
    expect(honest.number).toBeGreaterThan(0.5);
    expect(placed?.averageScore).toBeLessThan(0.05);
    expect(numbered?.averageScore).toBeLessThan(honest.number);
    const spans = places.flatMap((from) =>
      places.filter((to) => to >= from).map((to) => [from, to] as const),
    );
    const spanned = bestFixedAnswer(items, spans, ({ record, line }, [from, to]) => {
      const at = (place: number): number => line.from * (line.to / line.from) ** place;
      return scoreInterval({ lower: at(from), upper: at(to) }, record, line, alpha).value?.score ?? null;
    });
    expect(honest.interval).toBeGreaterThan(0.5);
    expect(spanned?.averageScore).toBeLessThan(0.05);
  });

  test('overstating and understating how sure one is both cost, whatever one knows', () => {
    const items = lessons.flat();
    const scored = (factor: number): number => {
      const chance = stream('width');
      return average(
        items.map((item) => {
          const heard = item.record.middle * Math.exp(0.5 * normal(chance));
          const sigma = Math.hypot(item.record.sigma, 0.5) * factor;
          return (
            scoreInterval(recordInterval({ middle: heard, sigma }, alpha), item.record, item.line, alpha)
              .value?.score ?? Number.NaN
          );
        }),
      );
    };
    expect(scored(1)).toBeGreaterThan(scored(0.4));
    expect(scored(1)).toBeGreaterThan(scored(2.5));
  });

  test('the middle of the line, the whole line and the blind interval gain nothing in any single question', () => {
    for (const { range, record, line } of lessons.flat()) {
      const middle = middleOf(line);
      expect(scoreNumber(middle, range, line).value?.score).toBeCloseTo(0, 9);
      expect(
        scoreInterval({ lower: line.from, upper: line.to }, record, line, alpha).value?.score,
      ).toBeLessThanOrEqual(1e-6);
      expect(
        scoreInterval(referenceInterval(record, line, alpha), record, line, alpha).value?.score,
      ).toBeCloseTo(0, 5);
      expect(mirrored(mirrored(middle, line), line)).toBeCloseTo(middle, 6);
    }
  });
});
