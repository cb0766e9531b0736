interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

const MOST_LISTED = 8;

/** Some ids in a sentence: `hide, pot and axe`; the first eight where there are more. */
function listed(ids: readonly string[]): string {
  const shown = ids.slice(0, MOST_LISTED);
  const more = ids.length - shown.length;
  if (more > 0) return `${shown.join(', ')} and ${more} more`;
  return shown.length < 2 ? (shown[0] ?? 'nothing') : `${shown.slice(0, -1).join(', ')} and ${shown.at(-1)}`;
}

const percent = (share: number): string => `${Math.round(100 * share)} %`;
const handovers = (count: number): string => `${count} ${count === 1 ? 'handover' : 'handovers'}`;

/** Sentences for what can be wrong in a gathering written by hand. */
export const worldProblems = {
  aimUnknown: (aim: string, goods: readonly string[]): Sentences => ({
    expected: `one of the goods: ${listed(goods)}`,
    received: aim,
    mend: 'name one of the goods as the aim',
  }),
  aimHeld: (aim: string): Sentences => ({
    expected: 'an aim you do not hold yet',
    received: `${aim}, held from the start`,
    mend: `take "${aim}" out of what you hold, or choose another aim`,
  }),
  aimUnheld: (aim: string): Sentences => ({
    expected: 'an aim that somebody holds',
    received: `${aim}, held by nobody`,
    mend: `let one of the traders hold "${aim}"`,
  }),
  aimUnclear: (aim: string, worth: number, rivals: readonly string[], best: number): Sentences => ({
    expected: 'one good that you want more than any other: the aim',
    received:
      worth === 0 ? `no want for "${aim}"` : `"${aim}" at ${worth}, ${listed(rivals)} at as much or more`,
    mend: `make the first "${aim}" worth ${best + 1} or more to you, or make ${listed(rivals)} worth less`,
  }),
  nameRepeated: (id: string): Sentences => ({
    expected: 'a name used once',
    received: id,
    mend: 'give one of them another name',
  }),
  goodUnused: (id: string): Sentences => ({
    expected: 'a good that somebody holds',
    received: `${id}, held by nobody`,
    mend: `let somebody hold "${id}", or leave it out`,
  }),
  traderIdle: (name: string, wantsNothing: boolean): Sentences => ({
    expected: `something ${name} ${wantsNothing ? 'wants that another holds' : 'holds that you want'}`,
    received: 'nothing',
    mend: `let ${name} ${wantsNothing ? 'want' : 'hold'} something, or leave ${name} out`,
  }),
  unsolvable: (aim: string, holders: readonly string[], reached: readonly string[]): Sentences => ({
    expected: `a chain of swaps from what you hold to "${aim}"`,
    received: `no chain: ${listed(holders)} gives "${aim}" for nothing you can come by (${listed(reached)})`,
    mend: `let ${listed(holders)} want something you can come by more than "${aim}", and let it be worth less to you than "${aim}"`,
  }),
  mendOnlyGiven: (aim: string, holders: readonly string[]): string =>
    `"${aim}" is only given: let ${listed(holders)} return it for a gift you can come by, or let it be swapped`,
  mendWant: (
    holder: string,
    want: { readonly good: string; readonly has: number; readonly least: number; readonly now: number },
    aim: string,
    par: number,
  ): string => {
    const { good, has, least, now } = want;
    const much = has === 0 ? `"${good}"` : `one more "${good}" (number ${has + 1})`;
    return `let ${holder} want ${much} at ${least} or more (now ${now}): then "${aim}" is ${handovers(par)} away`;
  },
  chainTrivial: (trader: string | null, aim: string, given: readonly string[]): Sentences => ({
    expected: 'a chain of two handovers or more',
    received: `one handover: ${trader ?? 'a trader'} gives "${aim}" for ${listed(given)}`,
    mend: 'put one more trader between you and the aim',
  }),
  mendTrivial: (trader: string, good: string, par: number | null): string => {
    const then =
      par !== null && par > 1
        ? `: then it takes ${par}`
        : ', and let somebody else take it for a thing that is wanted instead';
    return `let ${trader} not want "${good}"${then}`;
  },
  choiceTrivial: (most: number, average: number): Sentences => ({
    expected: `something to choose: aimless swapping gets at most ${percent(most)} of what is possible`,
    received: `${percent(average)}, whatever one swaps`,
    mend: 'let a trader offer you something you would take that does not lead to the aim, or leads there by a longer way',
  }),
  tooManyPositions: (most: number, atLeast: number): Sentences => ({
    expected: `at most ${most} positions that can come about`,
    received: `more than ${atLeast}`,
    mend: 'let traders want fewer things, hold fewer of each, or let a swap be one for one',
  }),
  tooManyOf: (key: string, count: number, most: number): Sentences => ({
    expected: `at most ${most} ${key}`,
    received: `${count}`,
    mend: `leave some ${key} out`,
  }),
  bundleUnfit: (bundle: number, most: number): Sentences => ({
    expected: `a whole number from 1 to ${most}`,
    received: `${bundle}`,
    mend: `write a whole number from 1 to ${most}`,
  }),
  spoilsUnfit: (written: number): Sentences => ({
    expected: 'a whole number of handovers from 1 to 99',
    received: `${written}`,
    mend: 'write a whole number of handovers from 1 to 99',
  }),
  goodUnknown: (good: string, goods: readonly string[]): Sentences => ({
    expected: `one of the goods: ${listed(goods)}`,
    received: good,
    mend: `add "${good}" to the goods, or name one of those there are`,
  }),
  onwardUnwanted: (good: string, isKnown: boolean): Sentences => ({
    expected: 'goods that are wanted',
    received: good,
    mend: isKnown ? `say what "${good}" is worth under wants` : `add "${good}" to the goods`,
  }),
  countUnfit: (count: number): Sentences => ({
    expected: 'a whole number from 0 to 99',
    received: `${count}`,
    mend: 'write how many there are',
  }),
  worthUnfit: (worth: number): Sentences => ({
    expected: 'whole numbers from 0 to 999',
    received: `${worth}`,
    mend: 'write worths as whole numbers, the first of the good first',
  }),
  wantsRise: (before: number, after: number, number: number): Sentences => ({
    expected: 'each worth no more than the one before it',
    received: `${after} after ${before}`,
    mend: `write ${before} or less for number ${number}`,
  }),
  doorNeverOpens: (name: string): Sentences => ({
    expected: 'something given in return for a gift',
    received: 'nothing',
    mend: `say what ${name} returns for a gift, or open the door`,
  }),
  returnUnheld: (name: string, returns: string, holds: readonly string[]): Sentences => ({
    expected: `something ${name} holds`,
    received: returns,
    mend: `let ${name} hold "${returns}", or return one of: ${listed(holds)}`,
  }),
  returnSpoils: (returns: string): Sentences => ({
    expected: 'something that keeps until it is given back',
    received: `${returns}, which spoils`,
    mend: `choose something that keeps, or leave out spoils-after of "${returns}"`,
  }),
  bundleOver: (bundle: number, most: number, band: string): Sentences => ({
    expected: `at most ${most} for ${band}`,
    received: `${bundle}`,
    mend: `write ${most}, or choose an older band`,
  }),
  tradersOver: (traders: number, most: number, band: string): Sentences => ({
    expected: `at most ${most} for ${band}`,
    received: `${traders}`,
    mend: 'leave some traders out, or choose an older band',
  }),
  parOver: (par: number, most: number, band: string): Sentences => ({
    expected: `at most ${most} handovers for ${band}`,
    received: `${par}`,
    mend: 'start with something nearer the aim, or choose an older band',
  }),
  deadEndFinal: (ends: number, positions: number, spoiling: readonly string[], band: string): Sentences => ({
    expected: `no dead end for ${band} that one cannot step back from`,
    received: `${ends} of ${positions} positions`,
    mend: `${
      spoiling.length > 0
        ? `let ${listed(spoiling)} keep longer`
        : 'let the gift be something not needed for a swap'
    }, or choose an older band`,
  }),
};
