import { readFileSync } from 'node:fs';
import { readMakingFigures } from '../../../shared/library/read-making-figures.ts';
import {
  type AxeMaking,
  type Head,
  makeAxe,
  type MakingRequest,
  type QuantityId,
  type Reckoning,
  reckonQuantity,
  resolveHead,
} from '../../../shared/making/index.ts';

const file = new URL('../../../content/figures/making-hours.yaml', import.meta.url);
const read = readMakingFigures('making-hours.yaml', readFileSync(file, 'utf8'));
if (read.value === null) throw new Error(JSON.stringify(read.problems));

/** The figures the product ships: what the reference cases are held against. */
export const evidence = read.value;
export const figures = evidence.figures;

export function head(request: MakingRequest): Head {
  const resolved = resolveHead(figures, request);
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.refusals));
  return resolved.value;
}

export const make = (request: MakingRequest): AxeMaking => makeAxe(figures, head(request));

export function reckon(quantity: QuantityId, request: MakingRequest): Reckoning {
  const result = reckonQuantity(figures, quantity, request);
  if (!result.ok) throw new Error(JSON.stringify(result.refusals));
  return result.value;
}

/** Relative distance of a value from the literal expected of it. */
export const off = (value: number, expected: number): number => Math.abs(value / expected - 1);

export const small: MakingRequest = {
  form: 'small-plain',
  stone: 'flint',
  lengthMm: 120,
  widthMm: 52,
  thicknessMm: 27,
};
