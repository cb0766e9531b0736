import * as z from 'zod';
import { CHOICES, quantityIds, STANDINGS } from '../making/index.ts';

const id = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'small letters, digits and hyphens');
const status = z.enum(STANDINGS);
const sources = z.array(id).min(1);
const words = z.string().min(1);
const note = words.exactOptional();
const number = z.number();
const end = number.nullable();
const positive = number.positive();

/** A number with its spread, on one line inside a table's row. */
const figure = z.strictObject({ low: end, middle: number, high: end, unit: words, status, sources });
const named = z.strictObject({ id, label: words, ...figure.shape, note });
const row = { id, label: words, note };

/** The keys of inputs that are numbers, as files write them. */
export const MEASURE_KEYS = [
  'length-mm',
  'width-mm',
  'thickness-mm',
  'diameter-cm',
  'stakes',
  'nodule-kg',
] as const;

const request = z.strictObject({
  'length-mm': positive.exactOptional(),
  'width-mm': positive.exactOptional(),
  'thickness-mm': positive.exactOptional(),
  'diameter-cm': positive.exactOptional(),
  form: id.exactOptional(),
  stone: id.exactOptional(),
  grinder: id.exactOptional(),
  preform: id.exactOptional(),
  extent: id.exactOptional(),
  finish: id.exactOptional(),
  skill: id.exactOptional(),
  wood: id.exactOptional(),
  axe: id.exactOptional(),
});

/** The shape of `figures/making-hours.yaml`. */
export const makingFiguresSchema = z.strictObject({
  schema: z.literal('making-hours/1'),
  defaults: z.record(z.enum(CHOICES), id),
  limits: z.array(z.strictObject({ id: z.enum(MEASURE_KEYS), from: positive, to: positive, unit: words })),
  coefficients: z.array(named),
  spreads: z.array(named),
  stones: z.array(
    z.strictObject({
      ...row,
      'shaped-by': z.enum(['flaking', 'pecking', 'sawing']),
      density: figure,
      'grind-factor': figure,
    }),
  ),
  grinders: z.array(z.strictObject({ ...row, people: z.int().positive(), 'grind-factor': figure })),
  forms: z.array(
    z.strictObject({
      ...row,
      section: z.enum(['oval', 'four-sided']),
      'typical-mm': z.tuple([positive, positive, positive]),
      'shape-factor': figure,
      'knap-factor': figure,
    }),
  ),
  skills: z.array(
    z.strictObject({ ...row, 'knap-multiplier': figure, 'blank-success': figure, 'fell-multiplier': figure }),
  ),
  preforms: z.array(z.strictObject({ ...row, 'depth-mm': figure })),
  extents: z.array(z.strictObject({ ...row, share: figure })),
  finishes: z.array(z.strictObject({ ...row, 'hours-per-100-cm2': figure })),
  woods: z.array(z.strictObject({ ...row, 'fell-factor': figure })),
  axes: z.array(z.strictObject({ ...row, 'fell-multiplier': figure })),
  experiments: z.array(
    z.strictObject({
      id,
      about: words,
      of: z.enum(quantityIds),
      inputs: request.nullable(),
      low: end,
      value: end,
      high: end,
      unit: words,
      status,
      sources,
      use: z.enum(['calibration', 'independent']),
      assumed: words.exactOptional(),
      note,
    }),
  ),
  specimens: z.array(
    z.strictObject({
      id,
      label: words,
      stone: words,
      'length-mm': positive,
      'width-mm': positive,
      'thickness-mm': positive,
      'mass-g': positive.nullable(),
      complete: z.boolean(),
      status,
      sources,
      note,
    }),
  ),
  'other-figures': z.array(z.strictObject({ ...named.shape, 'log-spread': positive.exactOptional() })),
  facts: z.array(z.strictObject({ id, statement: words, status, sources, note })),
  unknowns: z.array(z.strictObject({ id, question: words, say: words })),
  surprises: z.array(
    z.strictObject({ id, say: words, ratio: positive.exactOptional(), working: words, status, sources }),
  ),
  sources: z.array(
    z.strictObject({
      id,
      citation: words,
      kind: words,
      read: words,
      reach: z.enum(['primary', 'secondary', 'none']),
      url: z.url().exactOptional(),
      note,
    }),
  ),
});

export type MakingFiguresFile = z.output<typeof makingFiguresSchema>;
