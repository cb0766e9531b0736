import * as z from 'zod';
import {
  CONTROL_LEVELS,
  EDGE_CLASSES,
  EXPOSURES,
  FLAGS,
  REFUSAL_OUTCOMES,
  SETTINGS,
  STATION_KINDS,
} from '../safety/index.ts';
import { STATUSES } from './status.ts';

const text = z.string().min(1);
const id = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'small letters, digits and hyphens');
const code = z.string().regex(/^[A-Z]{1,3}\d{1,3}$/, 'one to three capitals and a number');
const known = { status: z.enum(STATUSES), source: id, note: text.optional() };
const age = z.int().min(0).max(18);
const leastAge = age.nullable();
const types = z.array(id);

const number = z.strictObject({
  name: text,
  value: z.union([z.number(), text, z.array(z.number())]).nullable(),
  unit: text.nullable(),
  with: text.optional(),
  working: text.optional(),
  ...known,
});
const said = z.strictObject({ text, ...known });
const sign = z.strictObject({ id: text, title: text, 'use-for': text, ...known });

const hazard = z.strictObject({
  id,
  name: text,
  arises: z.strictObject({
    always: z.boolean().optional(),
    kinds: z.array(id).optional(),
    stations: z.array(z.enum(STATION_KINDS)).optional(),
    settings: z.array(z.enum(SETTINGS)).optional(),
    flags: z.array(z.enum(FLAGS)).optional(),
    edges: z.array(z.enum(EDGE_CLASSES)).optional(),
  }),
  who: z.array(text).min(1),
  worst: text,
  controls: z.array(z.strictObject({ id, level: z.enum(CONTROL_LEVELS), text, ...known })).min(1),
  never: z.array(text),
  numbers: z.array(number),
  signs: z.array(code),
  places: z.strictObject({ uk: text, us: text, eu: text }),
  'defer-to': text,
});

/** A file of hazards, controls, ratios, stations and refusals. */
export const hazardsFile = z.strictObject({
  schema: z.literal('hazards/1'),
  caution: z.strictObject({
    status: z.enum(STATUSES),
    short: text,
    full: text,
    'for-pupils': text,
    'never-line': text,
  }),
  'edge-classes': z.array(z.strictObject({ id: z.enum(EDGE_CLASSES), name: text, meaning: text, ...known })),
  'edge-check': said,
  exposures: z.array(z.strictObject({ id: z.enum(EXPOSURES), meaning: text, ...known })),
  'minimum-ages': z.array(
    z.strictObject({
      edge: z.enum(EDGE_CLASSES),
      look: leastAge,
      'touch-held': leastAge,
      handle: leastAge,
      use: leastAge,
      ...known,
    }),
  ),
  'edges-of-types': z.strictObject({
    ...known,
    E0: types,
    E1: types,
    E2: types,
    E3: types,
    unknown: z.literal('E3'),
  }),
  ratios: z.array(
    z.strictObject({
      id,
      framework: id,
      'age-from': age,
      'age-to': age,
      'children-per-adult': z.int().min(1).nullable(),
      published: text,
      standing: text,
      ...known,
    }),
  ),
  'ratio-notes': z.array(said),
  stations: z.array(
    z.strictObject({
      id: z.enum(STATION_KINDS),
      name: text,
      practitioners: z.int().min(0),
      'minimum-supervisors': z.int().min(1),
      'children-per-supervisor': z.array(z.strictObject({ from: age, children: z.int().min(1) })).min(1),
      'maximum-at-once': z.int().min(1),
      settings: z.array(z.enum(SETTINGS)).min(1),
      'rope-m': z.number().min(0).nullable(),
      'eye-zone-m': z.number().min(0),
      kit: z.array(id),
      ...known,
    }),
  ),
  clauses: z.array(z.strictObject({ id: code, text, ...known })),
  'first-aid-numbers': z.array(number),
  refusals: z.array(
    z.strictObject({
      id: code,
      outcome: z.enum(REFUSAL_OUTCOMES),
      when: text,
      say: text,
      mend: text,
      ...known,
    }),
  ),
  'protective-equipment': z.array(z.strictObject({ id, item: text, marks: z.array(text), ...known })),
  'protective-numbers': z.array(number),
  signs: z.array(sign),
  'bottle-labels': z.array(sign),
  kit: z.array(z.strictObject({ id, for: text, items: z.array(text).min(1), ...known })),
  hazards: z.array(hazard).min(1),
  history: z.array(said),
  assessment: z.strictObject({
    steps: z.array(z.strictObject({ text, 'filled-by': text, ...known })),
    columns: z.array(z.strictObject({ id, heading: text, fill: z.enum(['product', 'blank']), ...known })),
    notes: z.array(said),
  }),
  sources: z.array(z.strictObject({ id, citation: text, status: z.enum(STATUSES), via: text.optional() })),
});

export type HazardsFile = z.output<typeof hazardsFile>;
