import { basename } from 'node:path';
import { parseArgs } from 'node:util';
import { compileLesson, type CompiledLesson } from '../../shared/compile/index.ts';
import { offerClaims, type JudgedClaim } from '../../shared/curriculum/index.ts';
import { hasErrors, type Problem } from '../../shared/lesson/index.ts';
import type { Band, Library } from '../../shared/library/index.ts';
import { claimReport } from '../../shared/words/en/claim-report.ts';
import { commandWords } from '../../shared/words/en/command.ts';
import type { ExitCode, Io } from './io.ts';
import { libraryFor } from './library-for.ts';
import { showProblem } from './show-problem.ts';

/** A claim as the command tells it. */
interface ClaimRow {
  readonly outcome: string;
  readonly framework: string | null;
  readonly stage: string | null;
  readonly summary: string | null;
  readonly status: string | null;
  readonly grade: string;
  readonly earned: boolean;
  /** False for a claim the lesson could make and does not. */
  readonly claimed: boolean;
  readonly evidence: string | null;
  readonly why: string | null;
  readonly where: readonly {
    readonly activity: string;
    readonly kind: string;
    readonly title: string;
    readonly by: 'plan' | 'lead';
    /** Left out where all bands that meet the stage show it. */
    readonly bands?: readonly Band[];
  }[];
}

function claimRow(claim: JudgedClaim, isClaimed: boolean): ClaimRow {
  const { known, framework, evidence, fault, grade } = claim;
  const shown = fault === null ? evidence.filter((row) => row.grade === evidence[0]?.grade) : [];
  return {
    outcome: claim.outcome,
    framework: framework?.id ?? null,
    stage: known?.stage ?? null,
    summary: known?.summary ?? null,
    status: known?.status ?? null,
    grade,
    earned: fault === null,
    claimed: isClaimed,
    evidence: shown.length === 0 ? null : [...new Set(shown.map(({ means }) => means))].join('; '),
    why: fault === null ? null : claimReport.why(fault),
    where: shown.map(({ activity, kind, title, by, bands }) => ({
      activity,
      kind,
      title,
      by,
      ...(bands === undefined ? {} : { bands }),
    })),
  };
}

function rowsOf(compiled: CompiledLesson, library: Library, withOffers: boolean): readonly ClaimRow[] {
  const claimed = compiled.claims.map((claim) => claimRow(claim, true));
  if (!withOffers || compiled.facts === null) return claimed;
  const ids = compiled.claims.map(({ outcome }) => outcome);
  const offered = offerClaims(library.curricula, compiled.facts, ids);
  return [...claimed, ...offered.map((claim) => claimRow(claim, false))];
}

/**
 * `claims FILE [--offered] [--json]`: each claim of a lesson, earned or not, with its evidence; with `--offered` also
 * the claims it could make. 1 where the file has errors, an unearned claim among them.
 */
export async function claims(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { json: { type: 'boolean' }, offered: { type: 'boolean' }, content: { type: 'string' } },
  });
  const [file] = positionals;
  if (file === undefined) {
    io.complain(commandWords.needsFile('claims'));
    return 2;
  }
  const text = await io.read(file);
  const { library, problems } = await libraryFor(file, values.content, io);
  // An outcome may be unknown because its framework could not be read.
  for (const problem of problems) io.complain(showProblem(problem, null));
  const compiled = compileLesson(file, text, library, basename(file, '.md'));
  const rows = rowsOf(compiled, library, values.offered === true);
  if (values.json === true) io.write(`${JSON.stringify(rows, null, 2)}\n`);
  else for (const row of rows) io.write(claimReport.row(row));
  const isOfClaim = ({ code }: Problem): boolean => code.startsWith('claim-');
  // Claims are told above; what else stands in the way goes to the other stream.
  for (const problem of compiled.problems.filter((other) => !isOfClaim(other)))
    io.complain(showProblem(problem, text));
  return hasErrors(compiled.problems) ? 1 : 0;
}
