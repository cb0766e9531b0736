import { nearest } from '../../lesson/nearest.ts';
import type { Fault } from '../../lesson/problem.ts';
import type { Refusal } from '../../making/index.ts';
import { estimateProblems } from '../../words/en/estimate-problems.ts';
import { placeOfInput } from './read-request.ts';
import type { EstimateBlock } from './schema.ts';

/** Why the model does not answer, at the place in the block that asks it. */
export function refusalFault(refusal: Refusal, block: EstimateBlock): Fault {
  switch (refusal.kind) {
    case 'out-of-range':
      return {
        code: 'beyond-model',
        grade: 'error',
        path: placeOfInput(block, refusal.input),
        ...estimateProblems.outOfRange(refusal),
      };
    case 'not-whole':
      return {
        code: 'value-unfit',
        grade: 'error',
        path: placeOfInput(block, refusal.input),
        ...estimateProblems.notWhole(refusal.input, refusal.received),
      };
    case 'missing':
      return {
        code: 'key-missing',
        grade: 'error',
        path: placeOfInput(block, refusal.input),
        ...estimateProblems.missing(refusal.input),
      };
    case 'unknown': {
      const near = nearest(refusal.received, refusal.known);
      return {
        code: 'word-unknown',
        grade: 'error',
        path: placeOfInput(block, refusal.input),
        ...estimateProblems.unknown(refusal.input, refusal.received, near, refusal.known),
        ...(near === null ? {} : { replacement: near }),
      };
    }
    case 'not-counted':
      return {
        code: 'beyond-model',
        grade: 'error',
        path: placeOfInput(block, 'stone'),
        ...estimateProblems.notCounted(refusal.stone),
      };
    case 'form-needs-pecking':
      return {
        code: 'beyond-model',
        grade: 'error',
        path: placeOfInput(block, 'form'),
        ...estimateProblems.formNeedsPecking(refusal.form, refusal.stone),
      };
    default:
      return refusal satisfies never;
  }
}
