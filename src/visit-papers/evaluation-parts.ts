import type { Plan } from '../../shared/compile/index.ts';
import { BANDS, type Band } from '../../shared/library/index.ts';
import { catalogues, say, wordsFor } from '../../shared/words/index.ts';
import type { PrintBlock, PrintPart } from '../printing/print-view.ts';
import { straight, text } from './paper-parts.ts';

const words = catalogues.en.evaluation;

/** Two slips of a band, for one sheet. */
function pupilSlips(band: Band, title: string): PrintBlock {
  const said = wordsFor(words, band);
  return {
    block: 'pupil-slips',
    title: say(said.pupilTitle),
    of: `${title} · ${catalogues.en.agesOf([band])}`,
    how: say(said.pupilHow),
    statement: say(said.statement),
    scale: [said.scaleLow, said.scaleSome, said.scaleMore, said.scaleHigh]
      .map((word) => say(word))
      .filter((word) => word !== ''),
    statements: [said.learnt, said.why, said.mind, said.again].map((statement) => say(statement)),
    ask: say(said.ask),
  };
}

/** Evaluation slips: the teacher's, then a sheet of pupils' for each band. */
export function evaluationParts(plan: Plan): readonly PrintPart[] {
  const hard = [words.tooHard, words.fitting, words.tooEasy];
  return [
    straight('slips', [
      text(words.lead),
      text(words.leadCount),
      {
        block: 'teacher-slip',
        title: words.teacherTitle,
        what: words.teacherWhat,
        counted: words.pupilsCounted,
        outcomesTitle: plan.claims.length === 0 ? words.outcomesNone : words.outcomesMet,
        outcomes: plan.claims.map(({ summary, frameworkName, code }) => ({
          summary,
          from: code === null ? frameworkName : `${frameworkName} · ${code}`,
        })),
        rateTitle: words.rateTitle,
        rates: [
          { asked: words.rateReading, answers: hard },
          { asked: words.rateThinking, answers: hard },
          { asked: words.rateTime, answers: [words.tooLong, words.fitting, words.tooShort] },
        ],
        asks: [words.change, words.afterwards],
        safe: words.safe,
      },
      ...BANDS.filter((band) => plan.bands.includes(band)).map((band) => pupilSlips(band, plan.title)),
    ]),
  ];
}
