import * as z from 'zod';
import { CHOICES, MEASURES, quantityIds, STANDINGS } from '../making/index.ts';

const id = z.string().regex(/^[a-z0-9]+(?:-[a-z0-9]+)*$/, 'small letters, digits and hyphens');
const status = z.enum(STANDINGS);
const sources = z.array(id).min(1);
const note = z.string().min(1).optional();
const number = z.number();
const end = number.nullable();
const label = z.string().min(1);

/** A number with its spread, on one line inside a table's row. */
const figure = z.strictObject({ low: end, middle: number, high: end, unit: z.string().min(1), status, sources });
const named = z.strictObject({ id, label, ...figure.shape, note });
const row = { id, label, note };

const choice = z.enum(CHOICES);
const measure = z.enum(MEASURES);
const positive = number.positive();

const request = z.strictObject({
  ...Object.fromEntries(MEASURES.map((name) => [name, positive.optional()])),
  ...Object.fromEntries(CHOICES.map((name) => [name, id.optional()])),
});

/** The shape of `content/figures/making-hours.yaml`. */
export const makingFiguresSchema = z.strictObject({
  schema: z.literal('making-hours/1'),
  defaults: z.record(choice, id),
  limits: z.array(z.strictObject({ id: measure, from: positive, to: positive, unit: z.string() })),
  coefficients: z.array(named),
  spreads: z.array(named),
  stones: z.array(
    z.strictObject({ ...row, shapedBy: z.enum(['flaking', 'pecking', 'sawing']), density: figure, grindFactor: figure }),
  ),
  grinders: z.array(z.strictObject({ ...row, people: z.int().positive(), grindFactor: figure })),
  forms: z.array(
    z.strictObject({
      ...row,
      section: z.enum(['oval', 'four-sided']),
      typicalMm: z.tuple([positive, positive, positive]),
      shapeFactor: figure,
      knapFactor: figure,
    }),
  ),
  skills: z.array(
    z.strictObject({ ...row, knapMultiplier: figure, blankSuccess: figure, fellMultiplier: figure }),
  ),
  preforms: z.array(z.strictObject({ ...row, depthMm: figure })),
  extents: z.array(z.strictObject({ ...row, share: figure })),
  finishes: z.array(z.strictObject({ ...row, hoursPer100Cm2: figure })),
  woods: z.array(z.strictObject({ ...row, fellFactor: figure })),
  axes: z.array(z.strictObject({ ...row, fellMultiplier: figure })),
  experiments: z.array(
    z.strictObject({
      id,
      about: label,
      of: z.enum(quantityIds),
      inputs: request.nullable(),
      low: end,
      value: end,
      high: end,
      unit: z.string(),
      status,
      sources,
      use: z.enum(['calibration', 'independent']),
      assumed: z.string().optional(),
      note,
    }),
  ),
  specimens: z.array(
    z.strictObject({
      id,
      label,
      stone: label,
      lengthMm: positive,
      widthMm: positive,
      thicknessMm: positive,
      massG: positive.nullable(),
      complete: z.boolean(),
      status,
      sources,
      note,
    }),
  ),
  otherFigures: z.array(z.strictObject({ ...named.shape, logSpread: positive.optional() })),
  facts: z.array(z.strictObject({ id, statement: label, status, sources, note })),
  unknowns: z.array(z.strictObject({ id, question: label, say: label })),
  surprises: z.array(
    z.strictObject({ id, say: label, ratio: positive.optional(), working: label, status, sources }),
  ),
  sources: z.array(
    z.strictObject({
      id,
      citation: label,
      kind: label,
      read: label,
      reach: z.enum(['primary', 'secondary', 'none']),
      url: z.url().optional(),
      note,
    }),
  ),
});

export type MakingFiguresFile = z.output<typeof makingFiguresSchema>;
