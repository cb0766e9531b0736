import { findsInWords as words } from '../words/en/finds-in.ts';
import { LEAVE_ROW_OUT } from './answers.ts';
import { ask } from './reading.ts';
import type { RowRead } from './read-row.ts';
import type { Place } from './settle-pits.ts';

/**
 * Gives each row its small-find number: as written; the next free one where none is; asked where two rows have the
 * same. Where a list begins its numbers again in each pit, the same number in two pits is no repetition.
 *
 * @param there Numbers the site has already: none of them is free.
 */
export function settleNumbers(
  rows: readonly RowRead[],
  places: readonly (Place | null)[],
  sameText: (row: RowRead, other: RowRead) => boolean,
  there: readonly number[] = [],
): readonly (number | null)[] {
  const listed = new Set(rows.flatMap(({ smallFind }) => smallFind ?? []));
  const used = new Set([...listed, ...there]);
  let highest = 0;
  for (const number of used) highest = Math.max(highest, number);
  const written = rows.filter(({ smallFind }) => smallFind !== null).length;
  const pitsRestart = restarts(rows, places, written - listed.size);
  const seen = new Map<string, RowRead>();
  const give = (): number => {
    highest += 1;
    used.add(highest);
    return highest;
  };
  return rows.map((read, index): number | null => {
    const { open, smallFind } = read;
    if (smallFind === null) {
      const given = give();
      if (open.columnOf('small-find') === null || open.textOf('small-find') === '')
        open.guessed.set('small-find', words.numbered());
      else {
        const asked = words.numberUnclear(open.textOf('small-find'));
        const proposals = [{ value: String(given), label: words.freeNumber(given) }];
        ask(open, 'small-find', { reason: 'number-unclear', asked, proposals, taken: String(given) });
      }
      return given;
    }
    const key = pitsRestart ? `${places[index]?.pit ?? ''}-${smallFind}` : String(smallFind);
    const before = seen.get(key);
    if (before === undefined) {
      seen.set(key, read);
      return smallFind;
    }
    const gap = !used.has(smallFind + 1) && smallFind + 1 < highest ? smallFind + 1 : null;
    const next = highest + 1;
    ask(open, 'small-find', {
      reason: 'number-repeated',
      asked: words.numberRepeated(smallFind, before.open.row),
      proposals: [
        ...(sameText(before, read) ? [{ value: LEAVE_ROW_OUT, label: words.leaveRowOut() }] : []),
        ...(gap === null ? [] : [{ value: String(gap), label: words.gapNumber(gap) }]),
        { value: String(next), label: words.freeNumber(next) },
        ...(sameText(before, read) ? [] : [{ value: LEAVE_ROW_OUT, label: words.leaveRowOut() }]),
      ],
      taken: null,
    });
    return null;
  });
}

/** More repeated numbers than this share, none of them within a pit, are numbers that begin again. ASM. */
const RESTART_SHARE = 0.1;

function restarts(rows: readonly RowRead[], places: readonly (Place | null)[], repeated: number): boolean {
  if (repeated < 3 || repeated < rows.length * RESTART_SHARE) return false;
  if (!rows.some(({ pit }) => typeof pit === 'string')) return false;
  const keys = rows.flatMap(({ smallFind }, index) =>
    smallFind === null ? [] : [`${places[index]?.pit ?? ''}-${smallFind}`],
  );
  return new Set(keys).size === keys.length;
}
