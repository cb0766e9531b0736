import * as z from 'zod';
import { EDGE_CLASSES, EXPOSURES, SETTINGS, STATION_KINDS } from '../safety/index.ts';

/** What pupils do at a station. All but the first is refused: it is here so that it can be refused by name. */
export const PUPILS_DO = ['watch', 'flake', 'swing', 'grind', 'heat', 'throw'] as const;

const metres = z.number().min(0).max(1000);

/** What is done at a station, in the words of the safety rules. */
export const stationWork = {
  finds: z
    .array(z.string().min(1))
    .min(1)
    .max(60)
    .optional()
    .describe('Finds of the site, or types of object'),
  edge: z.enum(EDGE_CLASSES).optional().describe('The sharpest class of the pieces, as checked that day'),
  exposure: z.enum(EXPOSURES).optional().describe('How near a child comes to a piece'),
  pupils: z.array(z.enum(PUPILS_DO)).min(1).max(PUPILS_DO.length).optional().describe('What pupils do there'),
  'spectators-at-metres': metres.optional().describe('Where the nearest row stands; at the rope if left out'),
  'open-edge-at-metres': metres.optional().describe('How near an edge without a barrier is'),
  'plant-working': z.boolean().optional().describe('Whether a machine works on the way'),
  dry: z.boolean().optional().describe('Whether stone is worked without water'),
  'powered-tool': z.boolean().optional().describe('Whether a powered tool runs'),
  'raw-materials': z.boolean().optional().describe('Whether hide, horn, wool or bone is raw or unknown'),
} as const;

const visitStation = z.strictObject({
  kind: z.enum(STATION_KINDS).describe('What runs there'),
  children: z.int().min(1).max(200).optional().describe('Children there at once; as many as fit if left out'),
  ...stationWork,
});

/** What runs beside the screens and papers of a lesson, as a lead writes it in the head. */
export const lessonVisit = z.strictObject({
  setting: z.enum(SETTINGS).describe('Where it is'),
  stations: z.array(visitStation).min(1).max(12).describe('The stations that run together'),
});

export type WrittenVisit = z.output<typeof lessonVisit>;
export type WrittenStation = z.output<typeof visitStation>;
