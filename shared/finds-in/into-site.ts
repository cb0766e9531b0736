import type { Find, Site } from '../library/library.ts';
import { findsIntoWords as words } from '../words/en/finds-into.ts';
import { LEAVE_ROW_OUT, NO_ANSWERS, type Answers } from './answers.ts';
import type { FindsIn, RowIn } from './finds-in.ts';
import { isPlaceSaid, placeAsked, placeKey, readPlace, type PlaceInto } from './into-places.ts';
import type { IntoQuestion } from './into-question.ts';
import type { Proposal } from './question.ts';
import { differences, merged, RECORD_FIELDS, saidFields, type RecordField } from './record-fields.ts';
import type { Place } from './settle-pits.ts';

/** What becomes of a row that is to go into a site. */
export interface RowInto {
  readonly row: number;
  readonly outcome: 'new' | 'same' | 'replaced' | 'waiting' | 'left-out';
  /** The find as the site will have it; null where none goes in. */
  readonly find: Find | null;
  /** The record that it is the same as, or takes the place of. */
  readonly there: Find | null;
  /** Why nothing of it goes in; null for the others, and for those that wait. */
  readonly reason: string | null;
}

/** A list held against a site: `rows` of the list = the sum of the counts. */
export interface IntoSite {
  readonly rows: readonly RowInto[];
  readonly counts: {
    readonly fresh: number;
    readonly same: number;
    readonly replaced: number;
    readonly waiting: number;
    readonly leftOut: number;
  };
  readonly questions: readonly IntoQuestion[];
  /** Fills that the lead wants made, and that finds lie in. */
  readonly places: readonly Place[];
  readonly fresh: readonly Find[];
  readonly replaced: readonly { readonly there: Find; readonly find: Find }[];
}

/** True where a number stands in two pits: numbers that begin again in each. */
const restarts = (finds: readonly Find[]): boolean =>
  new Set(finds.map(({ smallFind }) => smallFind)).size < finds.length;

const BESIDE_PLACE = RECORD_FIELDS.filter((field) => field !== 'pit' && field !== 'context');

/** The record in the same fill that says all a row's find says, and no less; null where there is none. */
const alikeIn = (finds: readonly Find[], find: Find): Find | null =>
  finds.find((there) => differences(there, find, RECORD_FIELDS).length === 0) ?? null;

/**
 * Holds a list against the site it is to go into. Every row ends as a new find, the same as a record that is there, in
 * the place of one (the lead has said so), waiting for an answer, or left out with its reason. A record is met by its
 * number and held only against what the row says; a row whose list gives no number, by all of it. Pure.
 *
 * @param list The list, read with this site's contexts.
 * @example intoSite(readFindsIn('', { vocabulary, words, site }), site).counts.fresh // 0
 */
export function intoSite(list: FindsIn, site: Site, answers: Answers = NO_ANSWERS): IntoSite {
  const there = site.pits.flatMap(({ finds }) => finds);
  const isByPit = restarts(there) || restarts(list.finds);
  const keyOf = (pit: string, number: number): string => (isByPit ? `${pit}-${number}` : String(number));
  const thereBy = new Map(there.map((find) => [keyOf(find.pit, find.smallFind), find]));
  const thereAt = new Map<string, Find[]>();
  for (const find of there) {
    const inFill = thereAt.get(placeKey(find)) ?? [];
    inFill.push(find);
    thereAt.set(placeKey(find), inFill);
  }
  const countColumn = list.columns.find(({ guess }) => guess === 'count')?.index ?? null;
  const headerOf = (field: string): string => list.columns.find(({ guess }) => guess === field)?.header ?? '';

  const questions: IntoQuestion[] = [];
  const claimed = new Map<string, number>();
  const places = new Map<string, Place>();
  const numbers = [...there, ...list.finds].map(({ smallFind }) => smallFind);
  let highest = 0;
  for (const number of numbers) highest = Math.max(highest, number);
  for (const [key, value] of Object.entries(answers.into))
    if (key.endsWith(':number') && /^\d{1,6}$/.test(value)) highest = Math.max(highest, Number(value));

  const ask = (
    { row }: RowIn,
    field: IntoQuestion['field'],
    question: Pick<IntoQuestion, 'reason' | 'received' | 'asked'> & {
      readonly proposals: readonly Proposal[];
    },
  ): RowInto => {
    const isShared = field === 'context';
    questions.push({
      row,
      field,
      header: headerOf(field),
      ...question,
      taken: null,
      isBlocking: true,
      isShared,
    });
    return { row, outcome: 'waiting', find: null, there: null, reason: null };
  };
  const stays = (row: number, record: Find): RowInto => ({
    row,
    outcome: 'same',
    find: null,
    there: record,
    reason: words.same(record.id),
  });
  const leave = (row: number): RowInto => ({
    row,
    outcome: 'left-out',
    find: null,
    there: null,
    reason: words.leadLeftOut(),
  });
  const isAt = (find: Find, { pit, context }: Place): boolean => find.pit === pit && find.context === context;
  const claim = (row: number, find: Find): void => {
    claimed.set(keyOf(find.pit, find.smallFind), row);
  };
  const askNumber = (row: RowIn, find: Find, asked: string, proposals: readonly Proposal[]): RowInto => {
    const received = String(find.smallFind);
    return ask(row, 'small-find', { reason: 'number-there', received, asked, proposals });
  };
  const numberOn = (): Proposal => ({ value: String(highest + 1), label: words.numberOn(highest + 1) });

  /** A find under its number: new where that is free; else asked. */
  const asNew = (row: RowIn, find: Find, place: PlaceInto, said: readonly RecordField[]): RowInto => {
    const given = answers.into[`${row.row}:number`] ?? '';
    const isNumbered = /^[1-9]\d{0,4}$/.test(given);
    const smallFind = isNumbered ? Number(given) : find.smallFind;
    const { pit, context } = place;
    const made: Find = { ...find, pit, context, smallFind, id: `${pit}-${smallFind}` };
    const before = claimed.get(keyOf(pit, smallFind));
    const record = thereBy.get(keyOf(pit, smallFind));
    const leaveOut = { value: LEAVE_ROW_OUT, label: words.leaveRowOut() };
    if (before !== undefined)
      return askNumber(row, made, words.numberInRow(smallFind, before), [numberOn(), leaveOut]);
    if (record !== undefined) return againstRecord(row, made, record, said, isNumbered ? '' : given, place);
    claim(row.row, made);
    if (place.isNew) places.set(placeKey(place), made);
    return { row: row.row, outcome: 'new', find: made, there: null, reason: null };
  };

  /** A find whose number the site has. */
  const againstRecord = (
    row: RowIn,
    find: Find,
    record: Find,
    said: readonly RecordField[],
    given: string,
    place: PlaceInto | null,
  ): RowInto => {
    const isElsewhere = record.pit !== find.pit;
    const differs = differences(record, find, said);
    if (differs.length === 0) {
      claim(row.row, record);
      return stays(row.row, record);
    }
    if (given === 'replace') {
      const kept = isElsewhere ? said.filter((field) => BESIDE_PLACE.some((each) => each === field)) : said;
      const now = merged(record, find, kept);
      claim(row.row, record);
      if (differences(record, now, RECORD_FIELDS).length === 0) return stays(row.row, record);
      if (place?.isNew === true && isAt(now, place)) places.set(placeKey(place), now);
      return { row: row.row, outcome: 'replaced', find: now, there: record, reason: null };
    }
    const others = (thereAt.get(placeKey(find)) ?? []).filter((each) => each !== record);
    const twin = alikeIn(others, find);
    return askNumber(row, find, words.numberThere(record.id, differs), [
      ...(twin === null ? [] : [{ value: LEAVE_ROW_OUT, label: words.leaveOutAs(twin.id) }]),
      ...(twin === null ? [{ value: LEAVE_ROW_OUT, label: words.leaveOut(record.id) }] : []),
      {
        value: 'replace',
        label: isElsewhere ? words.replaceThere(record.id) : words.replace(record.id),
      },
      numberOn(),
    ]);
  };

  const readOne = (row: RowIn): RowInto => {
    const { find } = row;
    const given = answers.into[`${row.row}:number`] ?? '';
    if (find === null) {
      const isOut = row.outcome === 'left-out';
      return {
        row: row.row,
        outcome: isOut ? 'left-out' : 'waiting',
        find: null,
        there: null,
        reason: row.reason,
      };
    }
    if (given === LEAVE_ROW_OUT) return leave(row.row);
    const said = saidFields(row, find, countColumn);
    // A row that names no place is met by its number alone.
    const record = row.isNumberGiven ? undefined : thereBy.get(keyOf(find.pit, find.smallFind));
    const isNumbered = /^[1-9]/.test(given);
    if (
      record !== undefined &&
      !isNumbered &&
      !isPlaceSaid(row) &&
      claimed.get(keyOf(record.pit, record.smallFind)) === undefined
    )
      return againstRecord(row, find, record, said, given, null);
    const read = readPlace(site, row, find, answers);
    if (read.place === null)
      return ask(row, 'context', {
        reason: read.reason,
        received: placeAsked(row, find),
        asked: read.asked,
        proposals: read.proposals,
      });
    const { pit, context } = read.place;
    const placed = { ...find, pit, context };
    if (row.isNumberGiven) {
      const free = (thereAt.get(placeKey(placed)) ?? []).filter(
        (each) => claimed.get(keyOf(each.pit, each.smallFind)) === undefined,
      );
      const twin = alikeIn(free, placed);
      if (twin !== null) {
        claim(row.row, twin);
        return stays(row.row, twin);
      }
    }
    return asNew(row, find, read.place, said);
  };

  // Rows with a number come first: a record is theirs before it is taken for that of a row without one.
  const order = [
    ...list.rows.filter(({ isNumberGiven }) => !isNumberGiven),
    ...list.rows.filter(({ isNumberGiven }) => isNumberGiven),
  ];
  const rows = order.map(readOne).toSorted((a, b) => a.row - b.row);
  const countOf = (outcome: RowInto['outcome']): number =>
    rows.filter((row) => row.outcome === outcome).length;
  return {
    rows,
    counts: {
      fresh: countOf('new'),
      same: countOf('same'),
      replaced: countOf('replaced'),
      waiting: countOf('waiting'),
      leftOut: countOf('left-out'),
    },
    questions: questions.toSorted((a, b) => a.row - b.row),
    places: [...places.values()].map(({ pit, context }) => ({ pit, context })),
    fresh: rows.flatMap(({ outcome, find }) => (outcome === 'new' && find !== null ? [find] : [])),
    replaced: rows.flatMap(({ outcome, find, there: record }) =>
      outcome === 'replaced' && find !== null && record !== null ? [{ there: record, find }] : [],
    ),
  };
}
