import type { Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { catalogues } from '../../shared/words/index.ts';
import { signsOf } from '../components/signs-of.ts';
import type { PrintPart } from '../printing/print-view.ts';
import { straight, text } from './paper-parts.ts';

const words = catalogues.en.stationWords;

/** A list of the signs, then each on a page of its own. */
export function signsParts(plan: Plan, library: Library): readonly PrintPart[] {
  const signs = signsOf(plan, library);
  return [
    straight('signs', [
      text(words.signsLead),
      {
        block: 'grid',
        look: 'signs-list',
        heads: [words.signColWords, words.signColWhere, words.signColNumber],
        rows: signs.map(({ large, where, number }) => [
          { text: large, hasTick: true },
          { text: where },
          { text: number ?? '', isNumber: true },
        ]),
      },
      ...signs.map(({ large, beneath }) => ({ block: 'sign', large, beneath }) as const),
    ]),
  ];
}
