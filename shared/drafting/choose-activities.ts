import { pick, type Stream } from '../chance/index.ts';
import { draftingWords as words } from '../words/en/drafting.ts';
import { meritOf, type Candidate, type MeritPart } from './draft.ts';
import { AS_GOOD } from './pick-finds.ts';

/** More activities than this are not one sitting. ASM. */
const MOST_ACTIVITIES = 4;

/** A candidate that compiles, with the outcomes it would earn. */
export interface Offer {
  readonly candidate: Candidate;
  readonly outcomes: ReadonlySet<string>;
}

/** A lesson's activities, what they come to, and how many sets were weighed. */
export interface Chosen {
  readonly offers: readonly Offer[];
  readonly parts: readonly MeritPart[];
  readonly merit: number;
  readonly sets: number;
}

/** What a set of activities comes to. ASM weights: good activities first, then time, kinds, outcomes; pins before all. */
function partsOf(
  offers: readonly Offer[],
  minutes: number,
  all: number,
  pins: ReadonlySet<string>,
): readonly MeritPart[] {
  const used = offers.reduce((sum, { candidate }) => sum + candidate.minutes, 0);
  const good = offers.reduce((sum, { candidate }) => sum + candidate.merit * candidate.minutes, 0) / used;
  const kinds = new Set(offers.map(({ candidate }) => candidate.kind)).size;
  const outcomes = new Set(offers.flatMap(({ outcomes: own }) => [...own])).size;
  const shown = new Set(offers.flatMap(({ candidate }) => candidate.finds));
  const held = [...pins].filter((id) => shown.has(id)).length;
  return [
    {
      name: 'fit',
      weight: 0.35,
      value: good,
      told: words.fit(offers.map(({ candidate }) => candidate.title).join('; ')),
    },
    { name: 'time', weight: 0.25, value: used / minutes, told: words.time(used, minutes) },
    {
      name: 'variety',
      weight: 0.15,
      value: kinds / offers.length,
      told: words.variety(kinds, offers.length),
    },
    {
      name: 'claims',
      weight: 0.25,
      value: all === 0 ? 0 : outcomes / all,
      told: words.claims(outcomes, all),
    },
    {
      name: 'pins',
      weight: pins.size === 0 ? 0 : 2,
      value: pins.size === 0 ? 1 : held / pins.size,
      told: words.pins(held, pins.size),
    },
  ];
}

/** Every set of up to four activities that fit the time is weighed; the seed picks among the best. Null where none fits. */
export function chooseActivities(
  offers: readonly Offer[],
  minutes: number,
  pins: ReadonlySet<string>,
  chance: Stream,
): Chosen | null {
  const all = new Set(offers.flatMap(({ outcomes }) => [...outcomes])).size;
  const sets: {
    readonly offers: readonly Offer[];
    readonly parts: readonly MeritPart[];
    readonly merit: number;
  }[] = [];
  const grow = (held: readonly Offer[], from: number, left: number): void => {
    if (held.length > 0) {
      const parts = partsOf(held, minutes, all, pins);
      sets.push({ offers: held, parts, merit: meritOf(parts) });
    }
    if (held.length === MOST_ACTIVITIES) return;
    for (const [index, offer] of offers.entries()) {
      if (index >= from && offer.candidate.minutes <= left)
        grow([...held, offer], index + 1, left - offer.candidate.minutes);
    }
  };
  grow([], 0, minutes);
  if (sets.length === 0) return null;
  const best = Math.max(...sets.map(({ merit }) => merit));
  return {
    ...pick(
      chance,
      sets.filter(({ merit }) => merit >= best - AS_GOOD),
    ),
    sets: sets.length,
  };
}
