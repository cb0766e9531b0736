import type * as z from 'zod';
import type { Stream } from '../chance/index.ts';
import type { FindToDraw } from '../drawing/drawing.ts';
import type { Band } from '../library/bands.ts';
import type { Library, Site } from '../library/library.ts';
import type { StationUse } from '../safety/index.ts';
import type {
  AskedNumber,
  Asks,
  CompileContext,
  Compiled,
  KindBase,
  Score,
  ScoredKind,
  Sheet,
  Told,
  UnscoredKind,
} from './kind.ts';
import { barter } from './barter/kind.ts';
import { compare } from './compare/kind.ts';
import { estimate } from './estimate/kind.ts';
import { handle } from './handle/kind.ts';
import { order } from './order/kind.ts';
import { sort } from './sort/kind.ts';
import { talk } from './talk/kind.ts';

export { leverTable } from './estimate/lever-table.ts';
export type {
  ActivityBase,
  AnswerRow,
  AskedNumber,
  Card,
  CompileContext,
  ComparedPits,
  Compiled,
  FreeSteps,
  PlayBase,
  Score,
  Sheet,
  SheetThing,
  StepCard,
  StepRow,
  Told,
  TraderCard,
  WantCard,
} from './kind.ts';
export { CARD_PARTS, PUPIL_PARTS, TABLE_PARTS } from './sheet-parts.ts';

const kinds = { barter, compare, estimate, handle, order, sort, talk } as const;

type Kinds = typeof kinds;
export type KindName = keyof Kinds;
/** Kinds with a record to agree with. */
export type ScoredName = {
  [K in KindName]: Kinds[K]['isScored'] extends true ? K : never;
}[KindName];
/** Kinds with no right answer. */
export type UnscoredName = Exclude<KindName, ScoredName>;
type Blocks = { readonly [K in KindName]: z.output<Kinds[K]['schema']> };
type Activities = { readonly [K in KindName]: NonNullable<ReturnType<Kinds[K]['compile']>['activity']> };
type Plays = { readonly [K in KindName]: z.output<Kinds[K]['playSchema']> };
// The compiler holds each entry against the contract here.
const table: { readonly [K in KindName]: KindBase<Blocks[K], Activities[K], Plays[K]> } = kinds;
const scored: { readonly [K in ScoredName]: ScoredKind<Blocks[K], Activities[K], Plays[K]> } = kinds;
const unscored: { readonly [K in UnscoredName]: UnscoredKind<Blocks[K], Activities[K], Plays[K]> } = kinds;

/** Any compiled activity; `kind` says which. */
export type Activity = Activities[KindName];
export type ActivityOf<K extends KindName> = Activities[K];
export type PlayOf<K extends KindName> = Plays[K];

/** The kinds there are, in the order of their names. */
export const kindNames = Object.keys(kinds).toSorted() as readonly KindName[]; // the keys are those of the literal

/** True for the name of a kind. @example isKindName('sort') // true */
export const isKindName = (name: string): name is KindName => Object.hasOwn(kinds, name);

/** What a lead may write in each kind's block. */
export const blockSchemas: Readonly<Record<KindName, z.ZodType>> = Object.fromEntries(
  kindNames.map((name) => [name, table[name].schema]),
) as Record<KindName, z.ZodType>; // one entry for each kind

/** What a play of each kind holds. */
export const playSchemas: Readonly<Record<KindName, z.ZodType>> = Object.fromEntries(
  kindNames.map((name) => [name, table[name].playSchema]),
) as Record<KindName, z.ZodType>; // one entry for each kind

/** Compiles one block of a kind; its value has passed that kind's schema. */
export const compileBlock = <K extends KindName>(
  kind: K,
  id: string,
  block: Blocks[K],
  context: CompileContext,
): Compiled<Activities[K]> => table[kind].compile(id, block, context);

/** True for a kind with a record to agree with. @example isScoredKind('sort') // true */
export const isScoredKind = (name: KindName): name is ScoredName => kinds[name].isScored;

/** True for an activity that can be scored. */
export const isScored = (activity: Activity): activity is Activities[ScoredName] =>
  isScoredKind(activity.kind);

/** Scores a play of an activity. @example score(activity, recordPlay(activity)).score // 1 */
export const score = <K extends ScoredName>(activity: Activities[K] & { kind: K }, play: Plays[K]): Score =>
  scored[activity.kind].score(activity, play);

/** The play that agrees with the record throughout. */
export const recordPlay = <K extends ScoredName>(activity: Activities[K] & { kind: K }): Plays[K] =>
  scored[activity.kind].record(activity);

/** A play by guessing. */
export const guessPlay = <K extends ScoredName>(
  activity: Activities[K] & { kind: K },
  chance: Stream,
): Plays[K] => scored[activity.kind].guess(activity, chance);

/** What a play without a right answer comes to: what was looked at, where a group stood. */
export const tellPlay = <K extends UnscoredName>(
  activity: Activities[K] & { kind: K },
  play: Plays[K],
): Told => unscored[activity.kind].tell(activity, play);

/** A play such as a group might give to an activity without a right answer. */
export const samplePlay = <K extends UnscoredName>(
  activity: Activities[K] & { kind: K },
  chance: Stream,
): Plays[K] => unscored[activity.kind].sample(activity, chance);

/** The table of pieces that children meet in an activity; null where nothing is handed out. */
export const tableOf = <K extends KindName>(activity: Activities[K] & { kind: K }): StationUse | null =>
  table[activity.kind].table?.(activity) ?? null;

/** The sheets an activity prints. */
export const sheetsOf = <K extends KindName>(activity: Activities[K] & { kind: K }): readonly Sheet[] =>
  table[activity.kind].paper(activity);

/** The finds an activity shows; [] where it shows none. */
export const shownFinds = <K extends KindName>(
  activity: Activities[K] & { kind: K },
): readonly FindToDraw[] => table[activity.kind].shows(activity);

/** What an activity asks, for the claims a lesson makes. */
export const asksOf = <K extends KindName>(activity: Activities[K] & { kind: K }, library: Library): Asks =>
  table[activity.kind].asks?.(activity, library) ?? { met: [], things: null };

/** What a new block of a kind holds, from the finds of a site. */
export const starterOf = (kind: KindName, site: Site): Readonly<Record<string, unknown>> =>
  table[kind].starter?.(site) ?? { title: kind, minutes: 10 };

/** An activity as one band is asked it. */
export const forBand = <K extends KindName>(
  activity: Activities[K] & { kind: K },
  band: Band,
): Activities[K] => table[activity.kind].forBand?.(activity, band) ?? activity;

/** The largest numbers the pupils of an activity meet, each with the key of its block that it comes from. */
export const numbersOf = <K extends KindName>(
  activity: Activities[K] & { kind: K },
  block: Blocks[K],
): readonly AskedNumber[] => table[activity.kind].numbers?.(activity, block) ?? [];
