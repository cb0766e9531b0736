import type { Attribute, Band, Find } from '../library/index.ts';
import { looksLike } from '../library/index.ts';
import { edgeOfType, nearestAllowed, type SafetyRules } from '../safety/index.ts';

/**
 * The parts of a good set of finds for trays, each from 0 to 1, with its weight. ASM: our judgement, to be tried.
 * - balance: entropy of the trays' sizes, in bits, over that of as many even trays as the band can hold;
 * - distinct: the share of finds that no other in the set looks like;
 * - decoys: how near the share of decoys is to a fifth;
 * - difficulty: how near the finds' difficulties, sorted, are to an even rise fit for the band;
 * - hazards: the share of finds a child of the age could be near to beyond looking;
 * - certainty: the share of finds whose record is not in question.
 */
export const TRAY_WEIGHTS = {
  balance: 0.3,
  distinct: 0.15,
  decoys: 0.15,
  difficulty: 0.2,
  hazards: 0.1,
  certainty: 0.1,
} as const;
export type TrayPart = keyof typeof TRAY_WEIGHTS;

/** The share of decoys sought, and how far from it is worth nothing. ASM. */
const DECOYS = 0.2;

/** How hard the middle find should be to place, from 0 (like nothing in another tray) to 1. ASM. */
const MIDDLE: Readonly<Record<Band, number>> = {
  '4-5': 0.3,
  '5-7': 0.35,
  '7-9': 0.45,
  '9-11': 0.5,
  '11-14': 0.6,
  '14-16': 0.65,
};
/** The hardest find is this much above the middle, the easiest as much below. ASM. */
const RISE = 0.3;

/** How alike two finds are to the eye, from 0 to 1: type, material, size. ASM weights. */
export function likeness(a: Find, b: Find): number {
  const size = Math.abs(Math.log((a.lengthMm * a.widthMm) / (b.lengthMm * b.widthMm)));
  return (
    (a.attributes['object-type'] === b.attributes['object-type'] ? 0.4 : 0) +
    (a.attributes.material === b.attributes.material ? 0.3 : 0) +
    0.3 * Math.exp(-size)
  );
}

/** A pool of finds with what their merit is worked out from, made once. */
export interface Pool {
  readonly finds: readonly Find[];
  /** The tray of each find: the index of its value among the pool's values. */
  readonly tray: readonly number[];
  readonly values: readonly string[];
  readonly alike: readonly (readonly number[])[];
  readonly looks: readonly (readonly boolean[])[];
  readonly isDecoy: readonly boolean[];
  readonly isNear: readonly boolean[];
  readonly isDoubtful: readonly boolean[];
  readonly mostTrays: number;
  readonly band: Band;
}

export function makePool(
  finds: readonly Find[],
  by: Attribute,
  given: {
    readonly band: Band;
    readonly age: number;
    readonly mostTrays: number;
    readonly safety: SafetyRules;
    readonly doubtful: ReadonlySet<string>;
  },
): Pool {
  const values = [...new Set(finds.map(({ attributes }) => attributes[by]))];
  const { minimumAges } = given.safety;
  return {
    finds,
    values,
    tray: finds.map(({ attributes }) => values.indexOf(attributes[by])),
    alike: finds.map((a) => finds.map((b) => likeness(a, b))),
    looks: finds.map((a) => finds.map((b) => a !== b && looksLike(a, b))),
    isDecoy: finds.map(({ role }) => role !== 'evidence'),
    isNear: finds.map(({ attributes }) => {
      const nearest = nearestAllowed(
        minimumAges,
        edgeOfType(given.safety, attributes['object-type']),
        given.age,
      );
      return nearest !== null && nearest !== 'look';
    }),
    isDoubtful: finds.map(({ id }) => given.doubtful.has(id)),
    mostTrays: given.mostTrays,
    band: given.band,
  };
}

/** How many finds each tray of a choice holds, trays without any left out. */
export function traySizes(pool: Pool, chosen: readonly number[]): readonly number[] {
  const sizes = new Map<number, number>();
  for (const index of chosen) {
    const tray = pool.tray[index] ?? -1;
    sizes.set(tray, (sizes.get(tray) ?? 0) + 1);
  }
  return [...sizes.values()];
}

/** Shannon's entropy of some sizes, in bits. @example bitsOf([2, 2]) // 1 */
export function bitsOf(sizes: readonly number[]): number {
  const total = sizes.reduce((sum, size) => sum + size, 0);
  return sizes.reduce(
    (bits, size) => (size === 0 ? bits : bits - (size / total) * Math.log2(size / total)),
    0,
  );
}

/** How hard each find of a choice is to place: how like it is to the nearest find of another tray. */
export function difficulties(pool: Pool, chosen: readonly number[]): readonly number[] {
  const hardest = chosen.map(() => 0);
  for (const [place, index] of chosen.entries()) {
    const alike = pool.alike[index] ?? [];
    for (let before = 0; before < place; before += 1) {
      const other = chosen[before] ?? 0;
      if (pool.tray[other] === pool.tray[index]) continue;
      const value = alike[other] ?? 0;
      if (value > (hardest[place] ?? 0)) hardest[place] = value;
      if (value > (hardest[before] ?? 0)) hardest[before] = value;
    }
  }
  return hardest;
}

/** True where no two finds that look alike lie in different trays, and the trays are two or more and no more than the band can hold. */
function isSound(pool: Pool, chosen: readonly number[]): boolean {
  const trays = new Set<number | undefined>();
  for (const [place, index] of chosen.entries()) {
    trays.add(pool.tray[index]);
    const looks = pool.looks[index] ?? [];
    for (let before = 0; before < place; before += 1) {
      const other = chosen[before] ?? 0;
      if (looks[other] === true && pool.tray[other] !== pool.tray[index]) return false;
    }
  }
  return trays.size >= 2 && trays.size <= pool.mostTrays;
}

/** How many of a choice look like another of it. */
function lookAlikes(pool: Pool, chosen: readonly number[]): number {
  let count = 0;
  for (const index of chosen) {
    const looks = pool.looks[index] ?? [];
    for (const other of chosen) {
      if (looks[other] !== true) continue;
      count += 1;
      break;
    }
  }
  return count;
}

const countOf = (marks: readonly boolean[], chosen: readonly number[]): number => {
  let count = 0;
  for (const index of chosen) if (marks[index] === true) count += 1;
  return count;
};

/** The parts of a choice's merit. */
export function trayParts(pool: Pool, chosen: readonly number[]): Readonly<Record<TrayPart, number>> {
  const count = chosen.length;
  const most = Math.min(pool.mostTrays, pool.values.length, count);
  const hard = [...difficulties(pool, chosen)].sort((a, b) => a - b);
  const middle = MIDDLE[pool.band];
  let gap = 0;
  for (const [place, value] of hard.entries()) {
    const wanted = middle + RISE * (count === 1 ? 0 : (2 * place) / (count - 1) - 1);
    gap += Math.abs(value - Math.min(1, Math.max(0, wanted)));
  }
  return {
    balance: bitsOf(traySizes(pool, chosen)) / Math.log2(Math.max(2, most)),
    distinct: 1 - lookAlikes(pool, chosen) / count,
    decoys: Math.max(0, 1 - Math.abs(countOf(pool.isDecoy, chosen) / count - DECOYS) / DECOYS),
    difficulty: Math.max(0, 1 - (2 * gap) / count),
    hazards: countOf(pool.isNear, chosen) / count,
    certainty: 1 - countOf(pool.isDoubtful, chosen) / count,
  };
}

const PARTS = Object.entries(TRAY_WEIGHTS) as readonly (readonly [TrayPart, number])[]; // the keys are those of the literal

/** The merit of a choice, from 0 to 1; below 0 where a pupil could not play it. */
export function trayMerit(pool: Pool, chosen: readonly number[]): number {
  if (!isSound(pool, chosen)) return -1;
  const parts = trayParts(pool, chosen);
  let merit = 0;
  for (const [name, weight] of PARTS) merit += weight * parts[name];
  return merit;
}
