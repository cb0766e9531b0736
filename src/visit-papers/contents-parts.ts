import type { Plan } from '../../shared/compile/index.ts';
import { catalogues } from '../../shared/words/index.ts';
import { CONTENTS, papersOf } from '../components/papers.ts';
import type { PrintPart } from '../printing/print-view.ts';
import { section, straight, text } from './paper-parts.ts';

const words = catalogues.en.printPack;

/** What lies in the pile: each paper, for whom, how many copies, and a box to tick. */
export const contentsParts = (plan: Plan): readonly PrintPart[] => [
  ...(plan.about === null || plan.about === undefined || plan.about === ''
    ? []
    : [straight('about', [text(plan.about)])]),
  section('contents', CONTENTS.name, [
    text(words.contentsLead),
    {
      block: 'grid',
      look: 'contents',
      heads: [words.colPart, words.colWhom, words.colCopies, words.colReady],
      rows: papersOf(plan).map(({ name, whom, copies }) => [
        { text: name },
        { text: whom },
        { text: copies },
        { text: '', hasTick: true },
      ]),
    },
  ]),
];
