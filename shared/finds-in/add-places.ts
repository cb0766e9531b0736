import { appendItem } from '../bench/append-item.ts';
import type { Site } from '../library/library.ts';
import { findsIntoWords as words } from '../words/en/finds-into.ts';
import type { Place } from './settle-pits.ts';
import { APART_M, fillLine, fillValue, pitLines, pitValue } from './stand-ins.ts';

/** The cut of a pit that is only named: the number before its first fill, as one digs, or else the next free one. */
function freeCut(used: ReadonlySet<number>, fills: readonly number[]): number {
  const before = (fills[0] ?? 1) - 1;
  if (before > 0 && !used.has(before)) return before;
  let highest = 0;
  for (const number of used) highest = Math.max(highest, number);
  return highest + 1;
}

/**
 * Writes fills and pits that a list names into the text of a site file, each with a comment that says what of it is a
 * stand-in; all else stays as it stands.
 *
 * @returns null where the text cannot be written so.
 */
export function addPlaces(yaml: string, site: Site, places: readonly Place[]): string | null {
  let text: string | null = yaml;
  for (const { pit, context } of places) {
    const index = site.pits.findIndex(({ id }) => id === pit);
    if (index === -1 || text === null) continue;
    text = appendItem(text, ['pits', index, 'fills'], {
      value: fillValue(context),
      lines: [fillLine(context)],
      comment: words.newFillComment(),
    });
  }
  const newPits = [...new Set(places.map(({ pit }) => pit))].filter(
    (pit) => !site.pits.some(({ id }) => id === pit),
  );
  const used = new Set([
    ...site.pits.flatMap(({ cut, fills }) => [cut, ...fills.map(({ context }) => context)]),
    ...places.map(({ context }) => context),
  ]);
  const eastMost = site.pits.toSorted((a, b) => b.centre.eastM - a.centre.eastM)[0];
  for (const [place, id] of newPits.entries()) {
    if (text === null) continue;
    const contexts = places
      .filter(({ pit }) => pit === id)
      .map(({ context }) => context)
      .toSorted((a, b) => a - b);
    const cut = freeCut(used, contexts);
    used.add(cut);
    const pit = {
      id,
      cut,
      eastM: Number(((eastMost?.centre.eastM ?? 0) + APART_M * (place + 1)).toFixed(2)),
      northM: eastMost?.centre.northM ?? 0,
      topLevelMOd: eastMost?.topLevelMOd ?? 0,
      contexts,
    };
    text = appendItem(text, ['pits'], {
      value: pitValue(pit),
      lines: pitLines(pit),
      comment: words.newPitComment(),
    });
  }
  return text;
}
