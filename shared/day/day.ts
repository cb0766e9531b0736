import type { Doing } from './plan.ts';

/** A slot between two bells, in minutes after midnight. */
export interface DaySlot {
  readonly fromMinute: number;
  readonly toMinute: number;
}

/** A group that goes round together with its own adults. */
export interface DayGroup {
  readonly id: string;
  readonly name: string;
  readonly pupils: number;
  readonly youngestYears: number;
  readonly arrivesMinute: number;
  readonly leavesMinute: number;
  /** Ids of the stations it is to meet, once each. */
  readonly mustSee: readonly string[];
  /** False for a group that eats elsewhere. */
  readonly hasLunch: boolean;
}

export interface DayStation {
  readonly id: string;
  readonly name: string;
  readonly place: string;
  readonly pupilsAtOnce: number;
  readonly groupsAtOnce: number;
  /** Numbers of the slots in which it is shut, from 0. */
  readonly shutSlots: readonly number[];
  readonly isOpenWhenWet: boolean;
  /** Nobody younger: 0 where all may come. */
  readonly fromYears: number;
  /** Adults of the day it takes while a group is there. */
  readonly adults: number;
  /** What one of those adults must be able to do. */
  readonly skill: string | null;
  /** What it is in the words of the safety rules; left out where nobody says. */
  readonly kind?: string;
  /** Things that have to stand there. */
  readonly kit: readonly string[];
  /** Printed sheets that each pupil takes there. */
  readonly sheetsEach: number;
}

/** An adult of the day, told by what they do there: no person is named. */
export interface DayAdult {
  readonly id: string;
  readonly role: string;
  readonly skills: readonly string[];
  readonly freeSlots: readonly number[];
  /** The most slots in a row at a station; null where nothing is said. */
  readonly mostInARow: number | null;
  /** True where one of the lunch slots must be free. */
  readonly hasLunch: boolean;
}

export interface DayLunch {
  readonly slots: readonly number[];
  /** Pupils who can sit at once. */
  readonly places: number;
  readonly place: string;
}

/** What a lead has fixed by hand: a group, in a slot, at a station, at lunch, or with nothing on. */
export interface DayFixed {
  readonly group: number;
  readonly slot: number;
  readonly at: Exclude<Doing, { readonly kind: 'away' }>;
}

/** A day as planned from: groups, stations, adults and bells. */
export interface Day {
  readonly title: string;
  /** `2027-06-10`, or null where the day is not fixed yet. */
  readonly date: string | null;
  readonly slots: readonly DaySlot[];
  readonly groups: readonly DayGroup[];
  readonly stations: readonly DayStation[];
  /** Empty where the crew is not planned here. */
  readonly adults: readonly DayAdult[];
  readonly lunch: DayLunch | null;
  /** Where the day is, in the words of the safety rules; left out where nobody says. */
  readonly setting?: string;
  readonly fixed: readonly DayFixed[];
  /** Where groups come in and go out; null where that walk is not counted. */
  readonly gate: string | null;
  readonly places: readonly string[];
  /** Shortest minutes on foot between places, both by their number in `places`. */
  readonly walkMinutes: readonly (readonly number[])[];
  /** True where a walk may take longer than the time between two bells. */
  readonly mayWalkLate: boolean;
}

/** Minutes between two bells. @example slotMinutes({ fromMinute: 600, toMinute: 620 }) // 20 */
export const slotMinutes = ({ fromMinute, toMinute }: DaySlot): number => toMinute - fromMinute;

/**
 * True when a group is there for the whole of a slot.
 *
 * @example isThere({ arrivesMinute: 570, leavesMinute: 720 }, { fromMinute: 700, toMinute: 730 }) // false
 */
export const isThere = (
  { arrivesMinute, leavesMinute }: Pick<DayGroup, 'arrivesMinute' | 'leavesMinute'>,
  { fromMinute, toMinute }: DaySlot,
): boolean => arrivesMinute <= fromMinute && toMinute <= leavesMinute;
