import type { NotesRow, Source, Status } from '../library/index.ts';
import { statusWords } from '../telling/status-words.ts';
import { catalogues, say } from '../words/index.ts';
import type { Chosen } from './choose-rows.ts';

const words = catalogues.en.notes;

/** A source so marked is a work one can look up. */
const PUBLISHED: ReadonlySet<Status> = new Set(['RF', 'FM']);

/** Works cited in notes, numbered in the order in which they are first named. */
export interface Cited {
  /** How a row is known and where from: "from memory: 3". */
  readonly markOf: (row: Chosen<NotesRow>) => string;
  /** Every work named so far, one a line, in order. */
  readonly lines: () => readonly string[];
}

/** Numbers works as rows are marked: a work gets its number with the first row that names it. */
export function citing(sources: readonly Source[]): Cited {
  const named: string[] = [];
  const numberOf = (id: string): number => {
    if (!named.includes(id)) named.push(id);
    return named.indexOf(id) + 1;
  };
  return {
    markOf: ({ status, sources: ids, from }) => {
      if (from !== null)
        return from.written === null ? words.byLead : say(words.byLeadFrom, { source: from.written });
      // Judgement and practice have no work behind them: the mark says so and nothing is numbered.
      const works = ids.filter((id) =>
        PUBLISHED.has(sources.find((each) => each.id === id)?.status ?? 'ASM'),
      );
      return works.length === 0
        ? statusWords(status)
        : say(words.mark, { status: statusWords(status), number: works.map(numberOf).join(', ') });
    },
    lines: () =>
      named.map((id) => {
        const source = sources.find((each) => each.id === id);
        return source === undefined
          ? id
          : say(words.sourceLine, { citation: source.citation, status: statusWords(source.status) });
      }),
  };
}
