import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { array, assert, boolean, constantFrom, nat, property, record, tuple } from 'fast-check';
import { expect, test } from 'vitest';
import {
  answerInto,
  intoSite,
  NO_ANSWERS,
  prepareFindsIn,
  readFindsIn,
  siteFiles,
  writeInto,
} from '../../../shared/finds-in/index.ts';
import { readSite, type ContentFile, type Find, type Site } from '../../../shared/library/index.ts';
import { demoLibrary, home } from '../../demo.ts';
import { demoWords } from './demo-words.ts';
import { SMALL_SITE, SMALL_TABLE } from './small-site.ts';

const { vocabulary } = demoLibrary;
const prepared = prepareFindsIn(vocabulary, demoWords);
const SEED = 20261129;

const file = (path: string, text: string): ContentFile => ({ path, file: path, text });
const demo = (name: string): string => readFileSync(join(home, 'content/sites', name), 'utf8');

/** The demo site with the finds of its first pit in the file itself, some lines of them in brackets. */
function insideOut(): readonly ContentFile[] {
  const table = demo('wendle-marsh.finds.csv').split('\n');
  const own = demoLibrary.sites[0]?.pits[0]?.finds ?? [];
  const row = (find: Find): string =>
    `  - {small-find: ${find.smallFind}, context: ${find.context}, object-type: ${find.attributes['object-type']}, material: ${find.attributes.material}, length-mm: ${find.lengthMm}, width-mm: ${find.widthMm}, thickness-mm: ${find.thicknessMm}, count: ${find.count}, state: ${find.attributes.state}, made-by: ${find.attributes['made-by']}, used-for: ${find.attributes['used-for']}, age: ${find.attributes.age}, role: ${find.role}} # as dug`;
  const yaml = demo('wendle-marsh.yaml').replace(
    /(\n {2}- \{context: 1103,[^\n]*\n)/,
    `$1  finds: # the first pit\n${own.map(row).join('\n')}\n`,
  );
  return [
    file('sites/wendle-marsh.yaml', yaml),
    file('sites/wendle-marsh.finds.csv', table.filter((line) => !line.startsWith('P1,')).join('\n')),
  ];
}

const SITES: readonly { readonly id: string; readonly files: readonly ContentFile[] }[] = [
  {
    id: 'wendle-marsh',
    files: ['wendle-marsh.yaml', 'wendle-marsh.finds.csv'].map((name) => file(`sites/${name}`, demo(name))),
  },
  { id: 'wendle-marsh', files: insideOut() },
  {
    id: 'gravel-end',
    files: [file('sites/gravel-end.yaml', SMALL_SITE), file('sites/gravel-end.finds.csv', SMALL_TABLE)],
  },
  { id: 'gravel-end', files: [file('sites/gravel-end.yaml', SMALL_SITE.replaceAll('\n', '\r\n'))] },
];

function siteOf(files: readonly ContentFile[], id: string): Site {
  const own = siteFiles(files, id);
  const read = own === null ? null : readSite(own.yaml.file, own.yaml.text, own.tables, vocabulary);
  if (read?.value === null || read === null) throw new Error(`${id} cannot be read`);
  expect(read.problems.filter(({ grade }) => grade === 'error')).toEqual([]);
  return read.value;
}

interface Made {
  readonly kind: 'as there' | 'changed' | 'new' | 'no number' | 'elsewhere' | 'junk';
  readonly of: number;
  readonly number: number;
  readonly field: 'length' | 'object' | 'weight' | 'note' | 'pit' | 'context';
}

const cell = (text: string): string => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** The rows of a list made from what a site has: the same, changed, new, without a number, in another place, or junk. */
function listOf(
  site: Site,
  made: readonly Made[],
  has: Readonly<Record<'pit' | 'context' | 'weight' | 'note' | 'number', boolean>>,
): string {
  const finds = site.pits.flatMap((pit) => pit.finds);
  const columns = [
    ...(has.number ? ['SF'] : []),
    ...(has.pit ? ['Pit'] : []),
    ...(has.context ? ['Context'] : []),
    'Object',
    'Material',
    'L (mm)',
    'W (mm)',
    'Th (mm)',
    ...(has.weight ? ['Wt (g)'] : []),
    ...(has.note ? ['Notes'] : []),
  ];
  const rows = made.map(({ kind, of, number, field }) => {
    const find = finds[of % finds.length];
    if (find === undefined || kind === 'junk')
      return ['', 'Total', 'Trench 2', '7,,,,', 'x,Zzyzx'][of % 5] ?? '';
    const isChanged = kind === 'changed';
    const cells: Readonly<Record<string, string>> = {
      SF:
        kind === 'no number'
          ? ''
          : String(kind === 'new' || kind === 'elsewhere' ? 900 + number : find.smallFind),
      Pit: kind === 'elsewhere' || (isChanged && field === 'pit') ? `P${1 + (number % 12)}` : find.pit,
      Context:
        kind === 'elsewhere' || (isChanged && field === 'context')
          ? String(find.context + (number % 9) - 3)
          : String(find.context),
      Object: isChanged && field === 'object' ? 'core' : find.attributes['object-type'],
      Material: isChanged && field === 'object' ? 'flint' : find.attributes.material,
      'L (mm)': String(find.lengthMm + (isChanged && field === 'length' ? 1 + number : 0)),
      'W (mm)': String(find.widthMm),
      'Th (mm)': String(find.thicknessMm),
      'Wt (g)': isChanged && field === 'weight' ? String(number + 1) : String(find.massG ?? ''),
      Notes: isChanged && field === 'note' ? 'patina, white' : (find.note ?? ''),
    };
    return columns.map((column) => cell(cells[column] ?? '')).join(',');
  });
  return [columns.join(','), ...rows].join('\n');
}

const made = record({
  kind: constantFrom<Made['kind']>(
    'as there',
    'as there',
    'changed',
    'changed',
    'new',
    'new',
    'no number',
    'elsewhere',
    'elsewhere',
    'junk',
  ),
  of: nat(60),
  number: nat(30),
  field: constantFrom<Made['field']>('length', 'object', 'weight', 'note', 'pit', 'context'),
});
const columns = record({
  pit: boolean(),
  context: constantFrom(true, true, true, false),
  weight: boolean(),
  note: boolean(),
  number: constantFrom(true, true, true, false),
});

/** What a record says, without what the site gives it. */
const bare = ({ photo: _photo, status: _status, ...find }: Find): unknown => find;
const asSet = (finds: readonly Find[]): readonly unknown[] =>
  finds.toSorted((a, b) => (a.id < b.id ? -1 : 1)).map(bare);

/** True where the lines of a text stand in another in their order, all but those of records that were replaced. */
function keepsLines(old: string, now: string, replaced: ReadonlySet<string>): boolean {
  const lines = now.split('\n');
  let from = 0;
  return old.split('\n').every((line) => {
    const at = lines.indexOf(line, from);
    const isReplaced = [...replaced].some((mark) => line.includes(mark));
    if (at !== -1) from = at + 1;
    return at !== -1 || isReplaced;
  });
}

test('any list into any site: each row has its end, old text stays, and again it changes nothing', () => {
  const met = { fresh: 0, same: 0, replaced: 0, waiting: 0, leftOut: 0, places: 0 };
  assert(
    property(
      constantFrom(...SITES.keys()),
      array(made, { minLength: 1, maxLength: 14, size: 'max' }),
      columns,
      array(tuple(constantFrom(0, 1, 2, 3, 5, 7), constantFrom(0, 1, 2, 3, 4), boolean()), {
        minLength: 4,
        maxLength: 30,
        size: 'max',
      }),
      (which, rows, has, presses) => {
        const { id, files } = SITES[which] ?? { id: '', files: [] };
        const site = siteOf(files, id);
        const own = siteFiles(files, id);
        if (own === null) throw new Error(id);
        const text = listOf(site, rows, has);
        const given = { vocabulary, words: demoWords, prepared, status: site.status };
        const list = readFindsIn(text, { ...given, site });
        let answers = NO_ANSWERS;
        for (const [asked, proposal, isShared] of presses) {
          const { questions } = intoSite(list, site, answers);
          const question = questions[asked % Math.max(1, questions.length)];
          const value = question?.proposals[proposal % Math.max(1, question.proposals.length)]?.value;
          if (question === undefined || value === undefined) continue;
          answers = answerInto(answers, question, value, isShared ? 'equal' : 'cell');
        }
        const into = intoSite(list, site, answers);

        // Each row ends as one of five, and the counts are of all rows.
        expect(into.rows.map(({ row }) => row)).toEqual(list.rows.map(({ row }) => row));
        const { fresh, same, replaced, waiting, leftOut } = into.counts;
        expect(fresh + same + replaced + waiting + leftOut).toBe(list.counts.rows);
        for (const { row, outcome, find, there, reason } of into.rows) {
          const isAsked =
            into.questions.some((question) => question.row === row) ||
            list.questions.some((question) => question.row === row && question.isBlocking);
          if (outcome === 'waiting') expect(isAsked).toBe(true);
          if (outcome === 'left-out') expect(reason).not.toBe(null);
          if (outcome === 'same') expect(there).not.toBe(null);
          if (outcome === 'new') expect(find).not.toBe(null);
          if (outcome === 'replaced') {
            expect(there?.id).toBe(find?.id);
            // What the list does not say, the record keeps.
            if (!has.note) expect(find?.note).toBe(there?.note);
            if (!has.weight) expect(find?.massG).toBe(there?.massG);
          }
        }
        // No record is met twice, and no new find has the number of another.
        const records = into.rows.flatMap(({ there }) => there?.id ?? []);
        expect(new Set(records).size).toBe(records.length);

        const written = writeInto(own, site, into, vocabulary);
        if (written === null) throw new Error(`not written: ${text}`);
        const after = siteOf(written, id);
        const finds = site.pits.flatMap((pit) => pit.finds);
        const gone = new Set(into.replaced.map(({ there }) => there.id));
        expect(asSet(after.pits.flatMap((pit) => pit.finds))).toEqual(
          asSet([
            ...finds.filter((find) => !gone.has(find.id)),
            ...into.replaced.map(({ find }) => find),
            ...into.fresh,
          ]),
        );

        // A number names one cut or one fill.
        const named = after.pits.flatMap(({ cut, fills }) => [cut, ...fills.map(({ context }) => context)]);
        expect(new Set(named).size).toBe(named.length);

        // Text that was there is there still.
        const marks = new Set(
          into.replaced.flatMap(({ there }) => [
            `${there.pit},${there.smallFind},`,
            `${there.smallFind},${there.pit},`,
            `{small-find: ${there.smallFind},`,
          ]),
        );
        for (const old of files) {
          const now = written.find(({ path }) => path === old.path)?.text ?? '';
          if (into.replaced.length === 0 && old.path.endsWith('.csv'))
            expect(now.startsWith(old.text)).toBe(true);
          if (into.places.length === 0 && into.replaced.length === 0 && old.path.endsWith('.yaml'))
            expect(now).toBe(old.text);
          if (id === 'wendle-marsh') expect(keepsLines(old.text, now, marks)).toBe(true);
        }

        // Again, with the same answers: what went in is there.
        const again = intoSite(readFindsIn(text, { ...given, site: after, answers }), after, answers);
        expect({ ...again.counts, waiting: 0, leftOut: 0 }).toEqual({
          fresh: 0,
          replaced: 0,
          same: again.counts.same,
          waiting: 0,
          leftOut: 0,
        });
        expect(again.counts.same).toBe(fresh + same + replaced);
        const next = siteFiles(written, id);
        expect(next === null ? null : writeInto(next, after, again, vocabulary)).toEqual(
          next === null ? null : [next.yaml, ...next.tables],
        );
        for (const key of ['fresh', 'same', 'replaced', 'waiting', 'leftOut'] as const)
          met[key] += into.counts[key];
        met.places += into.places.length;
      },
    ),
    { seed: SEED, numRuns: 60 },
  );
  // The lists are as mixed as they are meant to be.
  for (const [key, times] of Object.entries(met))
    expect({ key, isOften: times > 9 }).toEqual({ key, isOften: true });
});
