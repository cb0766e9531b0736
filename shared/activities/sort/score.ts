import { adjustedRandIndex, placedAgreement, type PlacedItem } from '../../agreement/index.ts';
import { shuffle, stream } from '../../chance/index.ts';
import { ATTRIBUTES, type Attribute } from '../../library/library.ts';
import type { Score } from '../kind.ts';
import type { SortActivity, SortFind } from './activity.ts';
import type { SortPlay } from './play.ts';

/** What is said of one find: where it went, whether that agrees, and where the record puts it. */
export interface FindFeedback {
  readonly find: string;
  /** The tray's id; null where it was left in the pit (or, hands up, where no hand went up). */
  readonly placed: string | null;
  readonly agrees: 'record' | 'argument' | 'no' | 'unplaced';
  /** Share of the choices that agree, 0 to 1: 0 or 1 for one pupil. */
  readonly agreement: number;
}

export interface SortScore extends Score {
  readonly working: {
    readonly finds: number;
    /** How many finds agree with the record or with an argued home; a fraction for hands up and ordered trays. */
    readonly agreeing: number;
    /** How many would agree if the same choices were dealt to the finds at random. */
    readonly agreeingByGuess: number;
    readonly feedback: readonly FindFeedback[];
    /** With trays of one's own: which attribute they follow best, and how well each is followed. */
    readonly followed?: { readonly attribute: Attribute; readonly index: number };
    readonly indices?: Readonly<Partial<Record<Attribute, number>>>;
    readonly [more: string]: unknown;
  };
}

const SHUFFLES = 200;

/** A tray named by its id, or by the words on it. */
const trayId = (activity: SortActivity, written: string): string =>
  activity.trays.find(({ id, name }) => id === written || name === written)?.id ?? written;

function chosenFor(activity: SortActivity, find: SortFind, play: SortPlay): Readonly<Record<string, number>> {
  const hands = play.hands?.[find.id];
  const placed = play.placed?.[find.id];
  if (hands !== undefined) {
    return Object.fromEntries(Object.entries(hands).map(([tray, count]) => [trayId(activity, tray), count]));
  }
  return placed === undefined ? {} : { [trayId(activity, placed)]: 1 };
}

/** What each tray would earn for a find: 1 at a home, less by equal steps away from it where trays are ordered. */
function agreementOf(activity: SortActivity, find: SortFind): Readonly<Record<string, number>> {
  const order = activity.trays.map(({ id }) => id);
  const homes = find.homes.map(({ tray }) => order.indexOf(tray));
  return Object.fromEntries(
    order.map((tray, index) => {
      const steps = Math.min(...homes.map((home) => Math.abs(home - index)));
      const share = activity.ordered ? 1 - steps / Math.max(1, order.length - 1) : steps === 0 ? 1 : 0;
      return [tray, share];
    }),
  );
}

const mostChosen = (chosen: Readonly<Record<string, number>>): string | null =>
  Object.entries(chosen)
    .filter(([, count]) => count > 0)
    .toSorted(([, a], [, b]) => b - a)[0]?.[0] ?? null;

function feedbackOf(find: SortFind, item: PlacedItem): FindFeedback {
  const placed = mostChosen(item.chosen);
  const all = Object.values(item.chosen).reduce((total, count) => total + count, 0);
  const agreement = Object.entries(item.chosen).reduce(
    (total, [tray, count]) => total + (all === 0 ? 0 : count / all) * (item.agreement[tray] ?? 0),
    0,
  );
  const home = find.homes.find(({ tray }) => tray === placed);
  return { find: find.id, placed, agrees: placed === null ? 'unplaced' : (home?.by ?? 'no'), agreement };
}

/**
 * Trays of one's own: how well they follow each attribute (adjusted Rand index), and the best of these beyond what
 * the best would be for the same trays filled at random (mean of seeded shuffles).
 */
function scoreOwnTrays(activity: SortActivity, play: SortPlay): SortScore {
  // A find left in the pit is in a group of its own.
  const groups = activity.finds.map((find) => play.placed?.[find.id] ?? `\u0000${find.id}`);
  const indexOf = (attribute: Attribute, answer: readonly string[]): number =>
    adjustedRandIndex(
      activity.finds.map((find) => find.attributes[attribute]),
      answer,
    ).value ?? 0;
  const usable = ATTRIBUTES.filter((attribute) => {
    const kinds = new Set(activity.finds.map((find) => find.attributes[attribute])).size;
    return kinds > 1 && kinds < activity.finds.length;
  });
  const best = (answer: readonly string[]): number =>
    Math.max(...usable.map((attribute) => indexOf(attribute, answer)));
  const chance = stream(`${activity.seed}/own-trays`);
  let total = 0;
  for (let shuffled = 0; shuffled < SHUFFLES; shuffled += 1) total += best(shuffle(chance, groups));
  const guess = total / SHUFFLES;
  const reached = best(groups);
  const followed = usable.toSorted((a, b) => indexOf(b, groups) - indexOf(a, groups))[0] ?? activity.by;
  const hasPlaced = Object.keys(play.placed ?? {}).length > 0;
  return {
    score: hasPlaced && usable.length > 0 && guess < 1 ? (reached - guess) / (1 - guess) : null,
    guess,
    working: {
      finds: activity.finds.length,
      agreeing: 0,
      agreeingByGuess: 0,
      feedback: activity.finds.map((find) => ({
        find: find.id,
        placed: play.placed?.[find.id] ?? null,
        agrees: 'no',
        agreement: 0,
      })),
      followed: { attribute: followed, index: indexOf(followed, groups) },
      indices: Object.fromEntries(usable.map((attribute) => [attribute, indexOf(attribute, groups)])),
    },
  };
}

/**
 * Scores a sort: agreement with the record beyond what dealing the same choices at random would get.
 *
 * One home a find: Cohen's kappa. Ordered trays: weighted kappa with equal steps. Several homes: see
 * `placedAgreement`. Trays of one's own: adjusted Rand index of the attribute they follow best, corrected for guessing.
 */
export function scoreSort(activity: SortActivity, play: SortPlay): SortScore {
  if (activity.ownTrays) return scoreOwnTrays(activity, play);
  const items = activity.finds.map((find): PlacedItem => ({
    agreement: agreementOf(activity, find),
    chosen: chosenFor(activity, find, play),
  }));
  const { score, observed, expected } = placedAgreement(items);
  const finds = activity.finds.length;
  return {
    score,
    guess: score === null ? null : expected,
    working: {
      finds,
      agreeing: observed * finds,
      agreeingByGuess: expected * finds,
      feedback: activity.finds.map((find, index) =>
        feedbackOf(find, items[index] ?? { agreement: {}, chosen: {} }),
      ),
    },
  };
}
