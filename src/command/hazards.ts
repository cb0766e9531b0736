import { parseArgs } from 'node:util';
import { inOrder, safetyReport } from '../../shared/safety/index.ts';
import { safetyCommandWords } from '../../shared/words/en/safety.ts';
import { comersOptions } from './comers.ts';
import type { ExitCode, Io } from './io.ts';
import { judge } from './judge.ts';

/** `hazards FILE`, `hazards --situation FILE.yaml`: each hazard with its controls, strongest first, and how they are known. */
export async function hazards(argv: readonly string[], io: Io): Promise<ExitCode> {
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
  const judged = await judge({ values, positionals, needs: safetyCommandWords.hazardsNeeds() }, io);
  if (typeof judged === 'number') return judged;
  const report = safetyReport(judged.rules, judged.situation);
  const found = report.hazards.map((hazard) => ({ ...hazard, controls: inOrder(hazard.controls) }));
  if (values.json === true) {
    io.write(`${JSON.stringify({ hazards: found, kit: report.kit, signs: report.signs }, null, 2)}\n`);
    return 0;
  }
  for (const hazard of found) io.write(safetyCommandWords.hazard(hazard));
  io.write(safetyCommandWords.employerFirst);
  return 0;
}
