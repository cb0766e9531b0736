import { inputName } from './hours.ts';
import { oneOf, quoted, writeNearest } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** Sentences for what can be wrong in an estimate block. */
export const estimateProblems = {
  figuresMissing: (): Sentences => ({
    expected: 'the figures of the making model, in figures/making-hours.yaml',
    received: 'none that can be read',
    mend: 'mend that file, or remove it: the figures that come with Pitlore then serve',
  }),
  findUnknown: (written: string, near: string | null, finds: number, site: string): Sentences => ({
    expected: `one of the ${finds} finds of ${site}`,
    received: quoted(written),
    mend: near === null ? 'write the id of a find of this site' : `write ${quoted(near)}`,
  }),
  findBroken: (find: string, lengthMm: number): Sentences => ({
    expected: 'the size of a whole axe',
    received: `${find}, which is broken: ${lengthMm} mm is what is left of its length`,
    mend: `write "for: { find: ${find}, length-mm: … }" with the length it had when whole`,
  }),
  stoneUnknown: (find: string, material: string, known: readonly string[]): Sentences => ({
    expected: `a stone the making model knows: ${known.join(', ')}`,
    received: `${find}, of ${material}`,
    mend: 'choose a find of stone, or write "stone" with one of these',
  }),
  outOfRange: (refusal: {
    readonly input: string;
    readonly received: number;
    readonly from: number;
    readonly to: number;
    readonly unit: string;
  }): Sentences => ({
    expected: `${inputName(refusal.input)} from ${refusal.from} to ${refusal.to} ${refusal.unit}: the model says nothing beyond`,
    received: String(refusal.received),
    mend: 'choose a size within this range',
  }),
  notWhole: (input: string, received: number): Sentences => ({
    expected: `${inputName(input)}: a whole number`,
    received: String(received),
    mend: `write ${Math.round(received)}`,
  }),
  missing: (input: string): Sentences => ({
    expected: `${inputName(input)}, which this quantity needs`,
    received: 'none',
    mend: `add ${quoted(input.replaceAll(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`))} under "for"`,
  }),
  unknown: (input: string, written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `a ${input} of the making model: ${oneOf(known, 'by pitlore hours --list')}`,
    received: quoted(written),
    mend: writeNearest(near, known, 'listed by pitlore hours --list'),
  }),
  notCounted: (stone: string): Sentences => ({
    expected: 'a stone that is flaked: how often others break has not been counted that we know of',
    received: quoted(stone),
    mend: 'choose flint, or ask for another quantity',
  }),
  formNeedsPecking: (form: string, stone: string): Sentences => ({
    expected: `a stone that is pecked, for the form ${quoted(form)}`,
    received: `${quoted(stone)}, which is flaked`,
    mend: 'choose another form, or another stone',
  }),
  bandElsewhere: (band: string, bands: readonly string[]): Sentences => ({
    expected: `bands of this lesson: ${bands.join(', ')}`,
    received: quoted(band),
    mend: 'remove this line, or add the band to the head',
  }),
  chooseNoTime: (quantity: string): Sentences => ({
    expected: '"number" or "interval": only a length of time can be chosen among comparisons',
    received: `"choose" for ${quoted(quantity)}`,
    mend: 'write "number"',
  }),
  comparisonUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `a comparison: ${known.join(', ')}`,
    received: quoted(written),
    mend: writeNearest(near, known, 'in figures/comparisons.yaml'),
  }),
  middleIsRight: (label: string): Sentences => ({
    expected: 'the right comparison anywhere but in the middle, where guessing would reach it',
    received: `${quoted(label)} in the middle`,
    mend: 'add or take away a comparison at one end',
  }),
  tooClose: (label: string, ratio: number): Sentences => ({
    expected: `comparisons at least ${ratio} times apart, so that they can be told apart`,
    received: `${quoted(label)} closer than that to the one before`,
    mend: 'leave one of the two out',
  }),
  tooFewComparisons: (hours: number, known: number): Sentences => ({
    expected: 'comparisons shorter and longer than the answer, each to be told from the next',
    received: `${known} comparisons, for an answer of ${Number(hours.toPrecision(2))} hours`,
    mend: 'add some to figures/comparisons.yaml, or write "ask: number"',
  }),
  middleOfLine: (): Sentences => ({
    expected: 'an answer that is not the middle of its line',
    received: 'one that is: guessing would reach it',
    mend: 'change the size or the quantity',
  }),
  isNothing: (quantity: string): Sentences => ({
    expected: 'something to estimate',
    received: `${quoted(quantity)} is exactly 0 for this stone and this work`,
    mend: 'ask for another quantity, or change "stone" or "extent"',
  }),
};
