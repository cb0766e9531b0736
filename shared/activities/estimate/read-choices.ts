import { pick, type Stream } from '../../chance/index.ts';
import { comparisonsFor, LEAST_RATIO, nearestChoice } from '../../estimating/index.ts';
import { nearest } from '../../lesson/nearest.ts';
import type { Fault } from '../../lesson/problem.ts';
import type { Band } from '../../library/bands.ts';
import type { Comparison } from '../../library/read-comparisons.ts';
import { estimateProblems } from '../../words/en/estimate-problems.ts';
import type { EstimateChoice } from './activity.ts';
import type { EstimateBlock } from './schema.ts';

const FEW: ReadonlySet<Band> = new Set(['4-5', '5-7']);

interface ReadChoices {
  readonly choices: readonly EstimateChoice[];
  readonly faults: readonly Fault[];
}

const ratioOf = (a: number, b: number): number => Math.max(a / b, b / a);

/** Those the lead names, rising: each known, told apart, and the right one not their middle. */
function namedChoices(named: readonly string[], hours: number, known: readonly Comparison[]): ReadChoices {
  const ids = known.map(({ id }) => id);
  const unknown = named.flatMap((id, index): Fault[] => {
    if (ids.includes(id)) return [];
    const near = nearest(id, ids);
    const words = estimateProblems.comparisonUnknown(id, near, ids);
    const replacement = near === null ? {} : { replacement: near };
    return [{ code: 'word-unknown', grade: 'error', path: ['among', index], ...words, ...replacement }];
  });
  if (unknown.length > 0) return { choices: [], faults: unknown };
  const choices = known.filter(({ id }) => named.includes(id));
  const right = nearestChoice(
    choices.map((choice) => choice.hours),
    hours,
  );
  const faults: Fault[] = [];
  if (choices.length < 2 || right === choices.length - 1 - right) {
    const words = estimateProblems.middleIsRight(choices[right]?.label ?? '');
    faults.push({ code: 'ask-unfit', grade: 'error', path: ['among'], ...words });
  }
  const close = choices.find(
    (choice, index) => ratioOf(choice.hours, choices[index - 1]?.hours ?? 0) < LEAST_RATIO,
  );
  if (close !== undefined) {
    const words = estimateProblems.tooClose(close.label, LEAST_RATIO);
    faults.push({ code: 'ask-unfit', grade: 'caution', path: ['among'], ...words });
  }
  return { choices, faults };
}

/**
 * Every way to set so many comparisons about an amount, by the place of the right one. A place is kept only where its
 * mirror image can be had too: else the place of the right one could be told from the list alone.
 */
function evenHanded(
  known: readonly Comparison[],
  hours: number,
  count: number,
): readonly (readonly Comparison[])[] {
  const candidates = known.map((comparison) => ({ ...comparison, amount: comparison.hours }));
  const byPlace = Array.from({ length: count }, (_, place): readonly Comparison[] | null => {
    if (place === count - 1 - place) return null;
    const found = comparisonsFor(candidates, hours, count, place).value;
    return found === null ? null : found.map(({ amount: _amount, ...comparison }) => comparison);
  });
  return byPlace.flatMap((choices, place) =>
    choices === null || byPlace[count - 1 - place] === null ? [] : [choices],
  );
}

/**
 * The comparisons to choose among: those named, or picked so that each can be told apart, with the right one at a place
 * drawn by chance and never in the middle. Where there are too few about the answer, fewer are shown.
 */
export function readChoices(
  block: EstimateBlock,
  hours: number,
  known: readonly Comparison[],
  youngestBand: Band,
  chance: Stream,
): ReadChoices {
  if (block.among !== undefined) return namedChoices(block.among, hours, known);
  for (let count = FEW.has(youngestBand) ? 3 : 4; count >= 2; count -= 1) {
    const ways = evenHanded(known, hours, count);
    if (ways.length > 0) return { choices: pick(chance, ways), faults: [] };
  }
  const words = estimateProblems.tooFewComparisons(hours, known.length);
  return { choices: [], faults: [{ code: 'ask-unfit', grade: 'error', path: ['of'], ...words }] };
}

/** Comparisons along a line of hours, far enough apart to be read. */
export function landmarksOn(
  line: { readonly from: number; readonly to: number },
  known: readonly Comparison[],
): readonly Comparison[] {
  const least = (line.to / line.from) ** (1 / 6);
  const landmarks: Comparison[] = [];
  for (const comparison of known) {
    const last = landmarks.at(-1);
    if (comparison.hours < line.from || comparison.hours > line.to) continue;
    if (last === undefined || comparison.hours / last.hours >= least) landmarks.push(comparison);
  }
  return landmarks;
}
