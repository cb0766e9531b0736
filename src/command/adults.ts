import { parseArgs } from 'node:util';
import { safetyReport } from '../../shared/safety/index.ts';
import { becauseSentence, safetyCommandWords } from '../../shared/words/en/safety.ts';
import { comersOptions } from './comers.ts';
import type { ExitCode, Io } from './io.ts';
import { judge } from './judge.ts';

/**
 * `adults FILE --pupils N --ages A-B --framework ID`, `adults --situation FILE.yaml`: how many adults, and which rule
 * decided. A refusal is an answer: the numbers stand whatever is refused.
 */
export async function adults(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: {
      ...comersOptions,
      situation: { type: 'string' },
      content: { type: 'string' },
      json: { type: 'boolean' },
    },
  });
  const needs = safetyCommandWords.adultsNeeds();
  if (values.situation === undefined && values.pupils === undefined) {
    io.complain(needs);
    return 2;
  }
  const judged = await judge({ values, positionals, needs }, io);
  if (typeof judged === 'number') return judged;
  const { adults: reckoned, refusals, hazards, controls } = safetyReport(judged.rules, judged.situation);
  const { because, ...numbers } = reckoned;
  if (values.json === true) {
    const answer = {
      ...numbers,
      refusals: [...new Set(refusals.map(({ id }) => id))],
      hazards: hazards.map(({ id }) => id),
      controls: controls.map(({ id }) => id),
      because: because.map((step) => ({ rule: step.rule, says: becauseSentence(step) })),
      refused: refusals,
    };
    io.write(`${JSON.stringify(answer, null, 2)}\n`);
    return 0;
  }
  io.write(safetyCommandWords.adults(numbers, because.map(becauseSentence)));
  for (const refusal of refusals) io.write(safetyCommandWords.refusal(refusal));
  io.write(safetyCommandWords.employerFirst);
  return 0;
}
