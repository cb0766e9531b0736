import { quoted } from './problems.ts';

const figure = (value: number, digits = 2): string => value.toFixed(digits);
const many = (count: number, one: string, other: string): string => `${count} ${count === 1 ? one : other}`;
const list = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1) ?? ''}`;

/** Sentences of a draft: what was picked and why, with its figures; what is lacking. */
export const draftingWords = {
  list,
  partNames: {
    balance: 'balance of the trays',
    distinct: 'no two alike',
    decoys: 'decoys',
    difficulty: 'rise of difficulty',
    hazards: 'blunt enough to be near',
    certainty: 'records not in question',
    fullness: 'as much as the age can hold',
    size: 'sizes the model knows',
    whole: 'whole, not broken',
    evidence: 'made from what lay in the pit',
    fit: 'fit for the age',
    time: 'time well spent',
    variety: 'different kinds of activity',
    claims: 'outcomes earned',
    pins: 'pinned finds shown',
  } as Readonly<Record<string, string>>,

  // What the parts say.
  balance: (bits: number, mostBits: number, sizes: readonly number[]): string =>
    `trays of ${list(sizes.map(String))}: ${figure(bits)} of ${figure(mostBits)} bits`,
  distinct: (share: number): string => `${Math.round(share * 100)} in 100 look like no other`,
  decoys: (count: number, of: number): string => `${count} of ${of} are decoys; a fifth is sought`,
  difficulty: (least: number, most: number): string =>
    `from ${figure(least)} (easy to place) to ${figure(most)} (like a find of another tray)`,
  hazards: (count: number, of: number): string => `${count} of ${of} are blunt enough for the age to touch`,
  certainty: (count: number, of: number): string => `${count} of ${of} have a record that is not in question`,
  fullness: (count: number, most: number): string => `${count} of at most ${most}`,
  places: (both: number, first: number, second: number): string =>
    `${both} in both, ${first} only in one, ${second} only in the other`,
  pitsLooked: (pairs: number): string => `the best of ${many(pairs, 'pair of pits', 'pairs of pits')}`,
  size: (lengthMm: number): string => `${lengthMm} mm long`,
  whole: (isWhole: boolean): string =>
    isWhole ? 'whole' : 'broken: its whole length is a judgement, to be corrected',
  wholeLength: (lengthMm: number): string =>
    `${lengthMm} mm is left of it; its whole length is a judgement, to be corrected`,
  evidenceAxe: (name: string): string => `the site has a ${name}`,
  fit: (what: string): string => what,

  // Activities.
  sortTitle: (question: string): string => question,
  sortSummary: (label: string, finds: number, trays: number, isBest: boolean, lookedAt: number): string =>
    `Trays by ${label}: ${many(finds, 'find', 'finds')} in ${trays} trays, ${isBest ? `the best of all ${lookedAt} choices or as good` : `the best met in ${lookedAt} swaps or as good`}.`,
  compareTitle: (): string => 'In both, or only in one?',
  compareSummary: (first: string, second: string, kinds: number): string =>
    `Pits ${first} and ${second} side by side: ${many(kinds, 'kind', 'kinds')} of thing.`,
  chanceTitle: (): string => 'Could chance alone do this?',
  chanceSummary: (pits: number, kinds: number): string =>
    `${many(pits, 'pit', 'pits')} with ${many(kinds, 'kind', 'kinds')} between them: would chance alone make any two so alike?`,
  orderTitle: (): string => 'What came first?',
  orderSummary: (steps: number, name: string, find: string): string =>
    `${many(steps, 'step', 'steps')} of making an axe, for the ${name} ${find}.`,
  estimateTitle: (): string => 'How long did it take to make?',
  estimateSummary: (name: string, find: string): string =>
    `The hours in the ${name} ${find}, by the making model.`,
  barterTitle: (): string => 'Swap your way to an axe',
  barterSummary: (traders: number, chain: number): string =>
    `A made-up gathering: ${many(traders, 'trader', 'traders')}, a chain of ${chain} swaps at the least.`,

  // What is lacking.
  lackFinds: (count: number, fewest: number): string =>
    `For trays at least ${fewest} finds are wanted; there are ${count}.`,
  lackTime: (minutes: number, least: number): string =>
    `${minutes} minutes leave no time for an activity; the shortest wants about ${least}.`,
  lackMinutes: (least: number, most: number): string => `A lesson takes from ${least} to ${most} minutes.`,
  lackBand: (band: string): string => `Nothing is known of the age band ${quoted(band)}.`,
  lackBands: (): string => 'No age band is named.',
  lackValues: (label: string): string => `By ${label} there is only one tray to fill.`,
  lackSound: (label: string): string =>
    `By ${label} finds that look alike would have to lie in different trays, whatever is picked.`,
  lackPits: (count: number): string =>
    `To compare, two pits with things of their time are wanted; there is ${count === 0 ? 'none' : 'one'}.`,
  lackDifference: (): string =>
    'No two pits hold some kinds in common and some not, so there is nothing to tell.',
  lackAxe: (): string =>
    'For the making of an axe, an axe, a roughout or a piece of one is wanted; there is none.',
  lackAxeMeasured: (): string =>
    'For the hours in an axe, an axe of a stone and size the making model knows is wanted; there is none.',
  lackKinds: (): string => 'No kind of activity is left to draw on.',
  lackByLead: (kind: string): string =>
    `${quoted(kind)} is not drafted: which pieces lie on a tray, and what is worth arguing, is for you to write.`,
  lackPin: (id: string): string => `${id} is pinned, but no activity of this lesson can hold it.`,
  lackPinUnknown: (id: string): string => `${id} is pinned, but is no find of this site.`,
  lackCompiles: (title: string, expected: string, received: string): string =>
    `${quoted(title)} was drafted and set aside: expected ${expected}; received ${received}.`,
  lackAll: (): string => 'Nothing can be made of these finds in this time.',

  // Reasons for the lesson as a whole.
  chosen: (title: string, merit: number): string => `${quoted(title)}: merit ${figure(merit)} of 1.`,
  part: (name: string, value: number, weight: number, told: string): string =>
    `${draftingWords.partNames[name] ?? name} ${figure(value)} (weight ${figure(weight)}): ${told}`,
  overall: (merit: number, sets: number, count: number): string =>
    `${many(count, 'activity', 'activities')}, the best of ${many(sets, 'set', 'sets')} that fit the time, or as good: ${figure(merit)} of 1.`,
  time: (used: number, of: number): string => `${used} of the ${of} minutes there are for activities`,
  variety: (kinds: number, activities: number): string =>
    `${many(kinds, 'kind', 'kinds')} in ${many(activities, 'activity', 'activities')}`,
  claims: (count: number, of: number): string =>
    `${count} of the ${of} outcomes that any of the activities drafted could earn`,
  pins: (count: number, of: number): string => (of === 0 ? 'none were pinned' : `${count} of ${of}`),
  claimed: (count: number, offered: number): string =>
    `It earns ${many(offered, 'claim', 'claims')}; ${count} stand in its head, one of each framework first.`,

  // The lesson's own prose.
  lessonTitle: (site: string): string => `Finds from ${site}`,
  about: (finds: number, activities: number): string =>
    `A draft: ${many(activities, 'activity', 'activities')}${finds === 0 ? '' : `, made from ${many(finds, 'find', 'finds')}`}.`,
  opening: (): string =>
    'Long ago, people dug a pit and put things in it. Look at each thing before you say what it is.',
  /** Said before an activity, by its kind. */
  before: {
    sort: 'Take one find at a time. Which tray would you lay it in? How do you know?',
    compare: 'Look from one pit to the other. What do you see in both?',
    order: 'Grown-ups who knew how made these. We only look, talk and lay the cards.',
    estimate: 'Nobody wrote down how long it took. Say what you think before you look.',
    barter: 'There was no money then. How did people come by what they could not make?',
  } as Readonly<Record<string, string>>,
  closing: (): string => 'Which find would you ask about first? What would you want to know?',
} as const;

/** The steps of an axe, fewest first by what a band can hold; in our own words, CP: common practice among makers. */
export const axeSteps = {
  find: { name: 'Find a big flint', why: null, after: [] },
  shape: { name: 'Chip it into shape', why: 'There must be a stone to shape.', after: ['find'] },
  smooth: { name: 'Rub it smooth', why: 'A chip would spoil the smooth side.', after: ['shape'] },
  join: {
    name: 'Put the axe in its handle',
    why: 'What is to be joined must be ready.',
    after: ['smooth', 'haft'],
  },
  haft: { name: 'Make a handle', why: null, after: [] },
  test: {
    name: 'Try the flint for flaws',
    why: 'A flaw found now costs minutes, later hours.',
    after: ['find'],
  },
  wet: { name: 'Set up a wet grindstone', why: null, after: [] },
  bind: { name: 'Bind it fast', why: 'Binding holds what already fits.', after: ['join'] },
} as const;
