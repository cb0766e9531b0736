import { computeAdults, type Adults } from './adults.ts';
import { hazardsOf, inOrder, kitOf, signsOf } from './arising.ts';
import { properStation } from './edges.ts';
import { refusalsOf, type Refusal } from './refuse.ts';
import type { Control, Hazard, KitList, SafetyRules, Sign } from './rules.ts';
import type { Situation } from './situation.ts';

/** All that follows from a situation: numbers, refusals, hazards with their controls, kit and signs. */
export interface SafetyReport {
  readonly adults: Adults;
  readonly refusals: readonly Refusal[];
  readonly hazards: readonly Hazard[];
  readonly controls: readonly Control[];
  readonly kit: readonly KitList[];
  readonly signs: readonly Sign[];
}

/** What the rules make of a situation. Pure; the numbers are there even when something is refused. */
export function safetyReport(rules: SafetyRules, given: Situation): SafetyReport {
  const situation = { ...given, stations: given.stations.map((station) => properStation(rules, station)) };
  const adults = computeAdults(rules, situation);
  const hazards = hazardsOf(rules, situation);
  return {
    adults,
    refusals: refusalsOf(rules, situation, adults),
    hazards,
    controls: hazards.flatMap(({ controls }) => inOrder(controls)),
    kit: kitOf(rules, situation),
    signs: signsOf(rules, hazards),
  };
}

/** Rows of several lists, each once, in the order of the whole. */
const once = <Row extends { readonly id: string }>(
  all: readonly Row[],
  lists: readonly (readonly Row[])[],
): readonly Row[] => all.filter(({ id }) => lists.some((list) => list.some((row) => row.id === id)));

/**
 * Parts of a visit that follow one another: the strictest part's adults, and everything any part brings.
 *
 * @throws RangeError on an empty list.
 */
export function strictestReport(rules: SafetyRules, parts: readonly SafetyReport[]): SafetyReport {
  const [first, ...rest] = parts;
  if (first === undefined) throw new RangeError('no part given');
  const strictest = rest.reduce(
    (kept, part) => (part.adults.totalAdults > kept.adults.totalAdults ? part : kept),
    first,
  );
  const hazards = once(
    rules.hazards,
    parts.map((part) => part.hazards),
  );
  return {
    adults: strictest.adults,
    refusals: parts
      .flatMap(({ refusals }) => refusals)
      .filter(
        ({ id, say }, index, all) => all.findIndex((one) => one.id === id && one.say === say) === index,
      ),
    hazards,
    controls: hazards.flatMap(({ controls }) => inOrder(controls)),
    kit: once(
      rules.kit,
      parts.map(({ kit }) => kit),
    ),
    signs: signsOf(rules, hazards),
  };
}
