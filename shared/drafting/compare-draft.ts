import { derive, pick, shuffle } from '../chance/index.ts';
import type { Band, Find } from '../library/index.ts';
import { draftingWords as words } from '../words/en/drafting.ts';
import { meritOf, type Candidate, type DraftContext, type Drafted, type MeritPart } from './draft.ts';
import { AS_GOOD } from './pick-finds.ts';
import { bitsOf } from './trays-merit.ts';

/** Pits with the most kinds are compared with each other; more than this makes too many pairs. ASM, by time. */
const MOST_PITS = 60;
const FEWEST_KINDS = 3;
/** The kinds of likeness that chance is asked about want an older band, and pits with several kinds each. ASM. */
const ASKS_CHANCE: readonly Band[] = ['9-11', '11-14', '14-16'];
const FEWEST_FOR_CHANCE = 4;
const MOST_FOR_CHANCE = 10;

interface PitKinds {
  readonly pit: string;
  readonly kinds: ReadonlySet<string>;
}

const kindsOfPits = (finds: readonly Find[]): readonly PitKinds[] => {
  const held = new Map<string, Set<string>>();
  for (const { pit, role, attributes } of finds) {
    if (role === 'evidence') held.set(pit, (held.get(pit) ?? new Set()).add(attributes['object-type']));
  }
  return [...held].map(([pit, kinds]) => ({ pit, kinds })).toSorted((a, b) => b.kinds.size - a.kinds.size);
};

interface Pair {
  readonly first: PitKinds;
  readonly second: PitKinds;
  /** Kinds by where they lie: both, first, second. */
  readonly places: readonly (readonly string[])[];
  readonly kinds: readonly string[];
  readonly taken: readonly number[];
  readonly merit: number;
}

/** How many of each place to ask about: as even as what there is allows. */
function dealPlaces(sizes: readonly number[], most: number): readonly number[] {
  const taken = sizes.map(() => 0);
  let total = 0;
  while (total < most && taken.some((count, index) => count < (sizes[index] ?? 0))) {
    const open = taken.map((count, index) => (count < (sizes[index] ?? 0) ? count : Infinity));
    const next = open.indexOf(Math.min(...open));
    taken[next] = (taken[next] ?? 0) + 1;
    total += 1;
  }
  return taken;
}

function partsOf(taken: readonly number[], most: number, told: string, pairs: number): readonly MeritPart[] {
  const total = taken.reduce((sum, count) => sum + count, 0);
  return [
    {
      name: 'balance',
      weight: 0.6,
      value: bitsOf(taken) / Math.log2(3),
      told: `${told}; ${words.balance(bitsOf(taken), Math.log2(3), taken)}`,
    },
    {
      name: 'fullness',
      weight: 0.4,
      value: total / most,
      told: `${words.fullness(total, most)}; ${words.pitsLooked(pairs)}`,
    },
  ];
}

/** Two pits side by side: every pair of pits is looked at. */
function draftPlaces(context: DraftContext, pits: readonly PitKinds[]): Drafted {
  const { limits, minutesMost } = context;
  const minutes = Math.min(limits.minutesPerActivity, minutesMost);
  const most = Math.min(limits.finds, Math.floor(((minutes - 2) * 60) / limits.secondsPerFind));
  if (most < FEWEST_KINDS)
    return { candidates: [], lacking: [words.lackTime(minutesMost, FEWEST_KINDS + 2)] };
  const chance = derive(context.chance, 'places');
  const pairs: Pair[] = [];
  for (const [index, first] of pits.entries()) {
    for (const second of pits.slice(index + 1)) {
      const both = [...first.kinds].filter((kind) => second.kinds.has(kind));
      const places = [
        both,
        [...first.kinds].filter((kind) => !second.kinds.has(kind)),
        [...second.kinds].filter((kind) => !first.kinds.has(kind)),
      ];
      const taken = dealPlaces(
        places.map(({ length }) => length),
        most,
      );
      const total = taken.reduce((sum, count) => sum + count, 0);
      if (taken.filter((count) => count > 0).length < 2 || total < FEWEST_KINDS) continue;
      const merit = 0.6 * (bitsOf(taken) / Math.log2(3)) + 0.4 * (total / most);
      pairs.push({ first, second, places, taken, kinds: [], merit });
    }
  }
  if (pairs.length === 0) return { candidates: [], lacking: [words.lackDifference()] };
  const best = Math.max(...pairs.map(({ merit }) => merit));
  const chosen = pick(
    chance,
    pairs.filter(({ merit }) => merit >= best - AS_GOOD),
  );
  const kinds = chosen.places
    .flatMap((place, index) => shuffle(chance, place).slice(0, chosen.taken[index] ?? 0))
    .toSorted();
  const [both = 0, one = 0, other = 0] = chosen.taken;
  const parts = partsOf(chosen.taken, most, words.places(both, one, other), pairs.length);
  const [first, second] = [chosen.first.pit, chosen.second.pit].toSorted();
  const shown = context.finds
    .filter(
      ({ pit, role, attributes }) =>
        (pit === first || pit === second) && role === 'evidence' && kinds.includes(attributes['object-type']),
    )
    .map(({ id }) => id);
  return {
    candidates: [
      {
        place: 2,
        title: words.compareTitle(),
        minutes: Math.max(3, Math.ceil((kinds.length * limits.secondsPerFind) / 60) + 2),
        lines: ['ask: places', `pits: ${JSON.stringify([first, second])}`, `kinds: [${kinds.join(', ')}]`],
        merit: meritOf(parts),
        parts,
        finds: shown,
        summary: words.compareSummary(first ?? '', second ?? '', kinds.length),
      },
    ],
    lacking: [],
  };
}

/** Several pits, and whether chance alone would make them as alike; whether it can be asked only compiling tells. */
function draftChance(context: DraftContext, pits: readonly PitKinds[]): readonly Omit<Candidate, 'kind'>[] {
  const minutes = Math.min(context.limits.minutesPerActivity, context.minutesMost);
  const full = pits.filter(({ kinds }) => kinds.size >= FEWEST_FOR_CHANCE).slice(0, MOST_FOR_CHANCE);
  if (!ASKS_CHANCE.includes(context.limits.band) || full.length < 5 || minutes < 10) return [];
  const kinds = new Set(full.flatMap((pit) => [...pit.kinds])).size;
  const parts: readonly MeritPart[] = [
    {
      name: 'fullness',
      weight: 0.5,
      value: full.length / MOST_FOR_CHANCE,
      told: words.fullness(full.length, MOST_FOR_CHANCE),
    },
    {
      name: 'fit',
      weight: 0.5,
      value: context.limits.band === '9-11' ? 0.6 : 0.9,
      told: words.fit(context.limits.label),
    },
  ];
  const names = full.map(({ pit }) => pit).toSorted((a, b) => a.localeCompare(b, 'en', { numeric: true }));
  return [
    {
      place: 2,
      title: words.chanceTitle(),
      minutes: Math.min(minutes, 20),
      lines: ['ask: chance', `pits: ${JSON.stringify(names)}`, 'by: jaccard'],
      merit: meritOf(parts),
      parts,
      finds: context.finds
        .filter(({ pit, role }) => role === 'evidence' && names.includes(pit))
        .map(({ id }) => id),
      summary: words.chanceSummary(full.length, kinds),
    },
  ];
}

/** Pits side by side. */
export function* draftCompare(context: DraftContext): Generator<void, Drafted, void> {
  const pits = kindsOfPits(context.finds);
  if (pits.length < 2) return { candidates: [], lacking: [words.lackPits(pits.length)] };
  // Pits with pinned finds are looked at first.
  const pinned = new Set(context.finds.flatMap(({ id, pit }) => (context.pins.has(id) ? [pit] : [])));
  const first = pits
    .toSorted((a, b) => Number(pinned.has(b.pit)) - Number(pinned.has(a.pit)))
    .slice(0, MOST_PITS);
  const places = draftPlaces(context, first);
  yield;
  return { candidates: [...places.candidates, ...draftChance(context, pits)], lacking: places.lacking };
}
