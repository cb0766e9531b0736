import * as z from 'zod';
import { stationWork } from '../lesson/visit-schema.ts';
import { SETTINGS, STATION_KINDS } from '../safety/index.ts';
import { STATUSES } from './status.ts';

const clock = z.string().regex(/^([01]\d|2[0-3]):[0-5]\d$/, 'a time such as "09:30"');
const id = z.string().regex(/^[a-z][a-z0-9-]*$/, 'small letters, digits and hyphens');
const slotNumber = z.int().min(1).max(24);
const count = z.int().min(1).max(1000);

const group = z.strictObject({
  name: z.string().describe('What the group is called on the sheets: no person’s name'),
  pupils: count.describe('How many pupils'),
  ages: z
    .string()
    .regex(/^\d{1,2}(-\d{1,2})?$/, 'ages such as "7-9"')
    .describe('Ages in years: 7-8'),
  arrives: clock.describe('When it is ready for the first bell: "09:30"'),
  leaves: clock.describe('When it has to go'),
  'must-see': z.array(z.string()).optional().describe('Its own stations, in place of those of the whole day'),
  lunch: z.boolean().optional().describe('false where it eats outside the plan'),
});

const station = z.strictObject({
  name: z.string().describe('What the station is called on the sheets'),
  place: z.string().describe('Where it stands; stations of one place need no walk'),
  pupils: count.describe('Pupils it holds at once'),
  groups: z.int().min(1).max(24).optional().describe('Groups it takes at once; 1 where nothing is said'),
  shut: z.array(slotNumber).optional().describe('Slots in which it is shut, counted from 1'),
  wet: z.enum(['open', 'shut']).optional().describe('shut where rain closes it'),
  'from-age': z.int().min(0).max(18).optional().describe('The youngest age that may come'),
  adults: z
    .int()
    .min(0)
    .max(12)
    .optional()
    .describe('Adults of the day it takes while a group is there; 1 where nothing is said'),
  skill: z.string().optional().describe('What one of those adults must be able to do'),
  kind: z
    .enum(STATION_KINDS)
    .optional()
    .describe('What it is to the safety rules, for the adults it takes; a table where nothing is said'),
  work: z
    .strictObject(stationWork)
    .optional()
    .describe('What is done there, in the words of a lesson’s visit: exposure, edge, pupils, dry …'),
  kit: z.array(z.string()).max(40).optional().describe('What has to stand there'),
  sheets: z.int().min(0).max(20).optional().describe('Printed sheets each pupil takes there'),
});

const adult = z.strictObject({
  role: z.string().describe('What they do on the day: no person’s name'),
  skills: z.array(z.string()).optional().describe('What they can do that a station may ask for'),
  free: z.array(slotNumber).optional().describe('Slots they are there for; all where nothing is said'),
  'most-in-a-row': z.int().min(1).max(24).optional().describe('Slots at a station before one off'),
  lunch: z.boolean().optional().describe('true where one lunch slot must be free'),
});

/** A day as a lead writes it. Slots are numbered from 1, in the order of the bells. */
export const dayFile = z.strictObject({
  title: z.string().describe('What the day is called on every sheet'),
  status: z.enum(STATUSES).describe('How the day is known: invented for a demo, ASM for a plan of your own'),
  note: z.string().optional().describe('A remark for whoever opens the file'),
  date: z
    .string()
    .regex(/^\d{4}-(0[1-9]|1[0-2])-(0[1-9]|[12]\d|3[01])$/, 'a date such as "2027-06-10"')
    .optional()
    .describe('"2027-06-10"; needed for a calendar file'),
  slots: z
    .array(z.strictObject({ from: clock, to: clock }))
    .min(1)
    .max(24)
    .describe('From bell to bell, in order; the time between two slots is for walking'),
  lunch: z
    .strictObject({
      slots: z.array(slotNumber).min(1).describe('Slots in which lunch may be'),
      places: count.describe('Pupils who can sit at once'),
      place: z.string().describe('Where lunch is'),
    })
    .optional()
    .describe('The slots lunch may be in, how many can sit at once, and where'),
  gate: z.string().optional().describe('Where groups come in and go out; that walk is then counted'),
  setting: z.enum(SETTINGS).optional().describe('Where the day is, to the safety rules'),
  walking: z
    .array(z.strictObject({ from: z.string(), to: z.string(), minutes: z.int().min(0).max(120) }))
    .optional()
    .describe('Minutes on foot between two places, both ways; other ways are put together from these'),
  'late-walks': z
    .boolean()
    .optional()
    .describe('true where a walk may be longer than the time between bells'),
  'must-see': z.array(z.string()).optional().describe('Stations that each group has to meet, once'),
  groups: z.record(id, group).describe('The groups, each under a short name of its own'),
  stations: z.record(id, station).describe('The stations, each under a short name of its own'),
  adults: z
    .record(id, adult)
    .optional()
    .describe('The adults of the day; leave out where they are not planned here'),
  fixed: z
    .array(
      z.strictObject({
        group: z.string().describe('The short name of a group'),
        slot: slotNumber.describe('The slot, counted from 1'),
        at: z.string().describe('The short name of a station, or lunch, or free'),
      }),
    )
    .max(100)
    .optional()
    .describe('What is settled by hand: a group, a slot, and where it is then'),
});

export type DayParts = z.output<typeof dayFile>;

/** Each kind of entry by itself, for help. */
export const dayEntries = { group, station, adult } as const;
