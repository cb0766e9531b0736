import type { Plan } from '../compile/index.ts';
import type { AdaptationRow, KitRow, MistakenRow, NotesRow, NotesRows, TalkRow } from '../library/index.ts';

/** A row chosen for a lesson; `from` is what a lead wrote of where it comes from, null for a row of ours. */
export type Chosen<Row extends NotesRow> = Row & {
  readonly from: { readonly written: string | null } | null;
};

export interface ChosenRows {
  readonly kit: readonly Chosen<KitRow>[];
  readonly talk: readonly Chosen<TalkRow>[];
  readonly misconceptions: readonly Chosen<MistakenRow>[];
  readonly adaptations: readonly Chosen<AdaptationRow>[];
}

/** A row goes with a lesson that has one of its kinds and uses one of its words; with none of either, with every lesson. */
const goesWith = (row: NotesRow, kinds: ReadonlySet<string>, words: ReadonlySet<string>): boolean =>
  (row.kinds.length === 0 || row.kinds.some((kind) => kinds.has(kind))) &&
  (row.words.length === 0 || row.words.some((word) => words.has(word)));

interface Written {
  readonly id?: string | undefined;
  readonly source?: string | undefined;
}

/** Ours, each in its place unless the lead has another for it; then the lead's own. */
function merge<Row extends NotesRow, Own extends Written>(
  ours: readonly Row[],
  own: readonly Own[],
  made: (own: Own, row: NotesRow) => Row,
): readonly Chosen<Row>[] {
  const chosen = (each: Own, place: number): Chosen<Row> => ({
    ...made(each, {
      id: each.id ?? `own-${place + 1}`,
      kinds: [],
      words: [],
      status: 'ASM',
      sources: [],
    }),
    from: { written: each.source ?? null },
  });
  const taken = own.map((each, place) => ({ id: each.id, row: chosen(each, place) }));
  const kept = ours.map(
    (row): Chosen<Row> => taken.find(({ id }) => id === row.id)?.row ?? { ...row, from: null },
  );
  const shown = new Set(kept.map(({ id }) => id));
  return [...kept, ...taken.filter(({ row }) => !shown.has(row.id)).map(({ row }) => row)];
}

/**
 * The rows that go with a lesson, what the lead wrote in its head taken into account.
 *
 * @param words The words of the glossary that the lesson uses.
 */
export function chooseRows(plan: Plan, rows: NotesRows, words: readonly string[]): ChosenRows {
  const kinds = new Set<string>(plan.activities.map(({ kind }) => kind));
  const used = new Set(words);
  const leftOut = new Set(plan.notes?.['leave-out']);
  const fitting = <Row extends NotesRow>(all: readonly Row[]): readonly Row[] =>
    all.filter((row) => !leftOut.has(row.id) && goesWith(row, kinds, used));
  const { kit = [], talk = [], misconceptions = [], adaptations = [] } = plan.notes ?? {};
  return {
    kit: merge(
      fitting(rows.kit),
      kit.map((each): Written & { readonly text: string } => ({ text: each })),
      (own, row) => ({ ...row, text: own.text }),
    ),
    talk: merge(fitting(rows.talk), talk, ({ ask, argue }, row) => ({ ...row, ask, argue })),
    misconceptions: merge(fitting(rows.misconceptions), misconceptions, ({ thought, reply }, row) => ({
      ...row,
      thought,
      reply,
    })),
    adaptations: merge(fitting(rows.adaptations), adaptations, (own, row) => ({
      ...row,
      for: own.for,
      do: own.do,
    })),
  };
}
