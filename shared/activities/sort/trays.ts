import { nearest } from '../../lesson/nearest.ts';
import type { Fault } from '../../lesson/problem.ts';
import type { AttributeWords } from '../../library/library.ts';
import { slug } from '../../library/slug.ts';
import { sortProblems } from '../../words/en/sort-problems.ts';
import type { SortTray } from './activity.ts';
import type { SortBlock } from './schema.ts';

/** A tray with the values of the attribute that belong in it. */
export interface FilledTray extends SortTray {
  readonly holds: readonly string[];
}

/** Matches what a lead wrote on the trays to the values of the attribute. */
export function readTrays(
  block: SortBlock,
  words: AttributeWords,
): { readonly trays: readonly FilledTray[]; readonly faults: readonly Fault[] } {
  if (block.trays === 'ours') return { trays: [], faults: [] };
  const faults: Fault[] = [];
  const known = words.values.map(({ id }) => id);
  const labels = words.values.map(({ label }) => label);
  const terms = words.values.map(({ id, label }) => ({ id, name: slug(label) }));
  const matching = (written: string): string | null => {
    const wanted = slug(written);
    return terms.find(({ id, name }) => id === wanted || name === wanted)?.id ?? null;
  };
  const unknown = (written: string, path: Fault['path']): void => {
    const near = nearest(written, labels) ?? nearest(written, known);
    const replacement = near === null ? {} : { replacement: near };
    faults.push({
      code: 'tray-unknown',
      grade: 'error',
      path,
      ...sortProblems.trayUnknown(written, words.label, near, labels),
      ...replacement,
    });
  };
  const trays = block.trays.map((tray, index): FilledTray => {
    if (typeof tray === 'string') {
      const value = matching(tray);
      if (value === null) unknown(tray, ['trays', index]);
      const term = words.values.find(({ id }) => id === value);
      return { id: slug(tray), name: tray, hint: term?.hint ?? '', holds: value === null ? [] : [value] };
    }
    const holds = tray.holds.flatMap((written, place) => {
      const value = matching(written);
      if (value === null) unknown(written, ['trays', index, 'holds', place]);
      return value ?? [];
    });
    return { id: slug(tray.name), name: tray.name, hint: tray.hint ?? '', holds };
  });
  for (const [index, tray] of trays.entries()) {
    const path = typeof block.trays[index] === 'string' ? ['trays', index] : ['trays', index, 'name'];
    const earlier = trays.slice(0, index);
    if (earlier.some(({ id }) => id === tray.id)) {
      faults.push({ code: 'tray-repeated', grade: 'error', path, ...sortProblems.trayRepeated(tray.name) });
      continue;
    }
    const shared = tray.holds.find((value) => earlier.some(({ holds }) => holds.includes(value)));
    const other = earlier.find(({ holds }) => shared !== undefined && holds.includes(shared));
    if (shared !== undefined && other !== undefined) {
      faults.push({
        code: 'tray-overlap',
        grade: 'error',
        path,
        ...sortProblems.trayOverlap(shared, other.name, tray.name),
      });
    }
  }
  return { trays, faults };
}
