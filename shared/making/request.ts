import type { Choice, Measure } from './figures.ts';

/** What is asked of the model. What is left out takes the default; sizes all left out take the form's usual ones. */
export interface MakingRequest
  extends Partial<Readonly<Record<Measure, number>>>, Partial<Readonly<Record<Choice, string>>> {
  /** The flint comes from a mine, so that winning it counts; false when left out. */
  readonly mined?: boolean;
}

/** Why the model does not answer: it never goes beyond what it was made for. */
export type Refusal =
  | {
      readonly kind: 'out-of-range';
      readonly input: Measure;
      readonly received: number;
      readonly from: number;
      readonly to: number;
      readonly unit: string;
    }
  | { readonly kind: 'not-whole'; readonly input: Measure; readonly received: number }
  | { readonly kind: 'missing'; readonly input: Measure }
  | {
      readonly kind: 'unknown';
      readonly input: Choice;
      readonly received: string;
      readonly known: readonly string[];
    }
  /** Nobody we know of has counted it for this stone. */
  | { readonly kind: 'not-counted'; readonly stone: string }
  /** A form that is not flaked, of a stone that is. */
  | { readonly kind: 'form-needs-pecking'; readonly form: string; readonly stone: string };

export type Result<Value> =
  | { readonly ok: true; readonly value: Value }
  | { readonly ok: false; readonly refusals: readonly Refusal[] };
