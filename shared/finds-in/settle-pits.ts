import type { Site } from '../library/library.ts';
import { findsInWords as words } from '../words/en/finds-in.ts';
import type { Answers } from './answers.ts';
import type { RowRead } from './read-row.ts';

/** A pit of the list, its contexts, and why it is taken to be one; null where the list or the site says so. */
export interface PitGuess {
  readonly pit: string;
  readonly contexts: readonly number[];
  readonly why: string | null;
}

/** Contexts no further apart than this are taken for fills of one pit: numbers are given as one digs. ASM. */
const WIDEST_GAP = 2;

/** Where a row lay; null where it waits for an answer. */
export interface Place {
  readonly pit: string;
  readonly context: number;
}

interface Known {
  readonly pitOf: ReadonlyMap<number, string>;
  readonly why: ReadonlyMap<string, string>;
}

/** Which pit each context belongs to: as the lead, the list or the site says, else by runs of numbers. */
function knowPits(rows: readonly RowRead[], site: Site | null, answers: Answers): Known {
  const pitOf = new Map<number, string>();
  for (const pit of site?.pits ?? []) for (const { context } of pit.fills) pitOf.set(context, pit.id);
  for (const { pit, context } of rows)
    if (typeof pit === 'string' && context !== null && !pitOf.has(context)) pitOf.set(context, pit);
  for (const [context, pit] of Object.entries(answers.pits)) pitOf.set(Number(context), pit);
  const loose = [
    ...new Set(rows.flatMap(({ context }) => (context === null || pitOf.has(context) ? [] : [context]))),
  ].toSorted((a, b) => a - b);
  const runs: number[][] = [];
  for (const context of loose) {
    const run = runs.at(-1);
    if (run !== undefined && context - (run.at(-1) ?? 0) <= WIDEST_GAP) run.push(context);
    else runs.push([context]);
  }
  const taken = new Set([...pitOf.values(), ...(site?.pits ?? []).map(({ id }) => id)]);
  const why = new Map<string, string>();
  let next = 1;
  for (const run of runs) {
    while (taken.has(`P${next}`)) next += 1;
    const pit = `P${next}`;
    taken.add(pit);
    why.set(pit, words.fromRun(run));
    for (const context of run) pitOf.set(context, pit);
  }
  return { pitOf, why };
}

/** Settles where each row lay. A list without contexts is put in one a pit, and this is told. */
export function settlePits(
  given: readonly RowRead[],
  site: Site | null,
  answers: Answers,
  hasContexts: boolean,
): { readonly places: readonly (Place | null)[]; readonly pits: readonly PitGuess[] } {
  // "p3" is the site's P3.
  const ownName = new Map((site?.pits ?? []).map(({ id }) => [id.toLowerCase(), id]));
  const rows = given.map((read): RowRead =>
    typeof read.pit === 'string' ? { ...read, pit: ownName.get(read.pit.toLowerCase()) ?? read.pit } : read,
  );
  const { pitOf, why } = knowPits(rows, site, answers);
  const contextsOf = new Map<string, Set<number>>();
  const ownContext = new Map<string, number>();
  const places = rows.map((read): Place | null => {
    const { open } = read;
    const isAnswered = answers.cells[`${open.row}:context`] !== undefined;
    if (read.pit === null || (read.context === null && (hasContexts || isAnswered))) return null;
    let { context } = read;
    let pit = read.pit ?? (context === null ? 'P1' : pitOf.get(context));
    if (context === null) {
      const known = site?.pits.find(({ id }) => id === pit)?.fills[0]?.context;
      const given = ownContext.get(pit ?? '') ?? known ?? ownContext.size + 1;
      ownContext.set(pit ?? '', given);
      context = given;
      open.guessed.set('context', words.onlyContext());
    }
    if (pit === undefined) pit = 'P1';
    if (read.pit === undefined && read.context === null) open.guessed.set('pit', words.onlyPit());
    if (read.pit === undefined && why.has(pit)) open.guessed.set('pit', why.get(pit) ?? '');
    contextsOf.set(pit, (contextsOf.get(pit) ?? new Set()).add(context));
    return { pit, context };
  });
  const pits = [...contextsOf].map(([pit, contexts]): PitGuess => ({
    pit,
    contexts: [...contexts].toSorted((a, b) => a - b),
    why: why.get(pit) ?? null,
  }));
  return { places, pits: pits.toSorted((a, b) => a.pit.localeCompare(b.pit, 'en', { numeric: true })) };
}
