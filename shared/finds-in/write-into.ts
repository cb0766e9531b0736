import { changeYaml } from '../bench/change-yaml.ts';
import { readYaml } from '../lesson/read-yaml.ts';
import type { Find, Site, Vocabulary } from '../library/library.ts';
import type { ContentFile } from '../library/read-content.ts';
import { readSite } from '../library/read-site.ts';
import { addPlaces } from './add-places.ts';
import { addToTable, replaceInTable, type Replaced } from './change-table.ts';
import type { IntoSite } from './into-site.ts';
import { differences, RECORD_FIELDS, valueOf } from './record-fields.ts';
import { writeFindsTable } from './write-table.ts';

/** The files a site is read from. */
export interface SiteFiles {
  readonly yaml: ContentFile;
  /** Its finds tables, in the order they are read. */
  readonly tables: readonly ContentFile[];
}

/** The files of a site by its id, or by the path of its own file; null where there are none. */
export function siteFiles(files: readonly ContentFile[], site: string): SiteFiles | null {
  const idOf = (text: string): unknown => {
    const { data } = readYaml(text);
    return typeof data === 'object' && data !== null && 'id' in data ? data.id : null;
  };
  const yaml = files.find(
    ({ path, text }) => path === site || (/^sites\/[^/]+\.yaml$/.test(path) && idOf(text) === site),
  );
  if (yaml === undefined) return null;
  const stem = yaml.path.replace(/\.ya?ml$/, '');
  const tables = files
    .filter(({ path }) => path.startsWith(`${stem}.`) && path.endsWith('.csv'))
    .toSorted((a, b) => (a.path < b.path ? -1 : 1));
  return { yaml, tables };
}

/** Records within the site file itself: their keys that say otherwise are written, one by one. */
function replaceInYaml(yaml: string, replaced: readonly Replaced[]): string | null {
  const site = readYaml(yaml).data as
    | {
        readonly pits?: readonly {
          readonly id?: unknown;
          readonly finds?: readonly Readonly<Record<string, unknown>>[];
        }[];
      }
    | undefined;
  let text: string | null = yaml;
  for (const { there, find } of replaced) {
    const pit = site?.pits?.findIndex(({ id }) => id === there.pit) ?? -1;
    const place = site?.pits?.[pit]?.finds?.findIndex((row) => row['small-find'] === there.smallFind) ?? -1;
    if (place === -1) return null;
    for (const { field } of differences(there, find, RECORD_FIELDS)) {
      if (text === null) return null;
      const path = ['pits', pit, 'finds', place, field];
      text = changeYaml(text, { do: 'set', path, value: valueOf(find, field) });
    }
  }
  return text;
}

/** What records say, as one text: the same for the same finds in any order. */
const inOrder = (finds: readonly Find[]): string =>
  JSON.stringify(
    finds
      .toSorted((a, b) => (a.id < b.id ? -1 : 1))
      .map((find) => [
        find.id,
        find.smallFind,
        ...RECORD_FIELDS.map((field) => valueOf(find, field) ?? null),
      ]),
  );

/**
 * Writes what a list brings into the files of its site. New finds stand at the end of a finds table, the site's own
 * where it has one with the columns for them, else one beside it; a record that is replaced has only its own cells
 * written anew; pits and fills stand at the end of their lists. All other text stays as it is. What was written is read
 * again, and must be the finds that were there and those that came in.
 *
 * @returns The files of the site, changed and unchanged; null where they cannot be written so.
 */
export function writeInto(
  { yaml, tables }: SiteFiles,
  site: Site,
  into: IntoSite,
  vocabulary: Vocabulary,
): readonly ContentFile[] | null {
  const readBack = (siteText: string, texts: readonly ContentFile[]) => {
    const { value, problems } = readSite(yaml.file, siteText, texts, vocabulary);
    const errors = problems.filter(({ grade }) => grade === 'error').length;
    return { finds: value?.pits.flatMap(({ finds }) => finds) ?? [], errors };
  };
  const before = readBack(yaml.text, tables);
  const gone = new Set(into.replaced.map(({ there }) => there.id));
  const wanted = inOrder([
    ...before.finds.filter(({ id }) => !gone.has(id)),
    ...into.replaced.map(({ find }) => find),
    ...into.fresh,
  ]);

  let others: readonly Replaced[] = into.replaced;
  const homeless: Find[] = [];
  const changed = tables.map((table): ContentFile => {
    const result = replaceInTable(table.text, others);
    ({ others } = result);
    homeless.push(...result.homeless);
    return { ...table, text: result.text };
  });
  const placed = addPlaces(yaml.text, site, into.places);
  const siteText = placed === null ? null : replaceInYaml(placed, others);
  if (siteText === null) return null;

  const added = [...homeless, ...into.fresh];
  const stem = yaml.path.replace(/\.ya?ml$/, '');
  const own = `${stem}.finds.csv`;
  const ranked = changed.toSorted((a, b) => Number(b.path === own) - Number(a.path === own));
  const beside = [own, ...[2, 3, 4, 5, 6, 7, 8, 9].map((number) => `${stem}.finds-${number}.csv`)].find(
    (path) => !tables.some((table) => table.path === path),
  );
  const tries: (readonly ContentFile[])[] = ranked.flatMap((table) => {
    const text = addToTable(table.text, added);
    return text === null ? [] : [changed.map((each) => (each === table ? { ...each, text } : each))];
  });
  if (added.length === 0) tries.unshift(changed);
  else if (beside !== undefined) {
    const file = `${yaml.file.slice(0, -yaml.path.length)}${beside}`;
    const named = yaml.file.endsWith(yaml.path) ? file : (beside.split('/').at(-1) ?? beside);
    tries.push([...changed, { path: beside, file: named, text: writeFindsTable(added) }]);
  }
  const written = tries.find((texts) => {
    const after = readBack(siteText, texts);
    return after.errors <= before.errors && inOrder(after.finds) === wanted;
  });
  return written === undefined ? null : [{ ...yaml, text: siteText }, ...written];
}
