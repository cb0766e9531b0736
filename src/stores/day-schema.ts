import * as z from 'zod/mini';
import type { AimMinutes, Day, DayEdit, DayPlan } from '../../shared/day/index.ts';

/** A plan as it is kept on this device, with the day it was made for. */
export interface Made {
  readonly day: Day;
  readonly plan: DayPlan;
  /** `stopped`: the lead stopped it; the plan keeps every rule and may not be the best. */
  readonly status: 'optimal' | 'bounded' | 'stopped';
  readonly minutes: AimMinutes;
  readonly bound: AimMinutes;
  readonly movedCells: number | null;
  /** Names of the stations that the rain shuts. */
  readonly leftOut: readonly string[];
  /** The text of the file it was made for. */
  readonly text: string;
  /** What a rotation made by hand comes to; null before that is known. */
  readonly rotation:
    | { readonly kind: 'keeps'; readonly minutes: AimMinutes }
    | { readonly kind: 'too-few-slots' | 'breaks-rules' }
    | null;
}

/** A day on this device: its file, the plan for dry and for wet weather, and which of them is shown. */
export interface KeptDay {
  readonly title: string;
  readonly text: string;
  readonly isWet: boolean;
  readonly dry: Made | null;
  readonly wet: Made | null;
  /** Changes that are on their way into the text; left out where there are none. */
  readonly waiting?: readonly DayEdit[] | undefined;
}

const number = z.number();
const text = z.string();
const doing = z.union([
  z.object({ kind: z.literal('station'), station: number }),
  z.object({ kind: z.enum(['lunch', 'free', 'away']) }),
]);
const fixedAt = z.union([
  z.object({ kind: z.literal('station'), station: number }),
  z.object({ kind: z.enum(['lunch', 'free']) }),
]);
const minutes = z.object({ idleMinutes: number, unevenMinutes: number, walkingMinutes: number });

const day = z.object({
  title: text,
  date: z.nullable(text),
  slots: z.array(z.object({ fromMinute: number, toMinute: number })),
  groups: z.array(
    z.object({
      id: text,
      name: text,
      pupils: number,
      youngestYears: number,
      arrivesMinute: number,
      leavesMinute: number,
      mustSee: z.array(text),
      hasLunch: z.boolean(),
    }),
  ),
  stations: z.array(
    z.object({
      id: text,
      name: text,
      place: text,
      pupilsAtOnce: number,
      groupsAtOnce: number,
      shutSlots: z.array(number),
      isOpenWhenWet: z.boolean(),
      fromYears: number,
      adults: number,
      skill: z.nullable(text),
      kit: z.array(text),
      sheetsEach: number,
    }),
  ),
  adults: z.array(
    z.object({
      id: text,
      role: text,
      skills: z.array(text),
      freeSlots: z.array(number),
      mostInARow: z.nullable(number),
      hasLunch: z.boolean(),
    }),
  ),
  lunch: z.nullable(z.object({ slots: z.array(number), places: number, place: text })),
  fixed: z.array(z.object({ group: number, slot: number, at: fixedAt })),
  gate: z.nullable(text),
  places: z.array(text),
  walkMinutes: z.array(z.array(number)),
  mayWalkLate: z.boolean(),
});

const made: z.ZodMiniType<Made> = z.object({
  day,
  plan: z.object({ groups: z.array(z.array(doing)), crew: z.array(z.array(z.nullable(number))) }),
  status: z.enum(['optimal', 'bounded', 'stopped']),
  minutes,
  bound: minutes,
  movedCells: z.nullable(number),
  leftOut: z.array(text),
  text,
  rotation: z.nullable(
    z.union([
      z.object({ kind: z.literal('keeps'), minutes }),
      z.object({ kind: z.enum(['too-few-slots', 'breaks-rules']) }),
    ]),
  ),
});

const path = z.array(z.union([text, number]));
const edit = z.union([z.object({ path, remove: z.literal(true) }), z.object({ path, value: z.unknown() })]);

export const keptDay: z.ZodMiniType<KeptDay> = z.object({
  title: text,
  text,
  isWet: z.boolean(),
  dry: z.nullable(made),
  wet: z.nullable(made),
  waiting: z.optional(z.array(edit)),
});

/** The days on this device, newest first, and the one that is open. */
export const keptShelf = z.object({
  open: z.nullable(text),
  days: z.array(z.object({ id: text, title: text })),
});
export type KeptShelf = z.infer<typeof keptShelf>;
