import { shuffle } from '../../chance/index.ts';
import { nearest } from '../../lesson/nearest.ts';
import type { Fault } from '../../lesson/problem.ts';
import type { Attribute, Find, Pit, Vocabulary } from '../../library/library.ts';
import { drawable } from '../../library/drawable.ts';
import { slug } from '../../library/slug.ts';
import { sortProblems } from '../../words/en/sort-problems.ts';
import type { CompileContext, Compiled } from '../kind.ts';
import type { Home, SortActivity, SortFind } from './activity.ts';
import { readFinds, type NamedFind } from './finds.ts';
import { looksLike } from '../../library/looks-like.ts';
import type { SortBlock } from './schema.ts';
import { readTrays, type FilledTray } from './trays.ts';

const FEWEST_FINDS = 3;

/** Why a find belongs where the record puts it: its type's own sign, else its value's. */
function signOf(find: Find, by: Attribute, vocabulary: Vocabulary): string {
  const type = vocabulary.objectTypes.find(({ id }) => id === find.attributes['object-type']);
  const value = vocabulary.attributes
    .find(({ id }) => id === by)
    ?.values.find(({ id }) => id === find.attributes[by]);
  return type?.signs[by] ?? value?.sign ?? '';
}

function readHomes(
  block: SortBlock,
  named: readonly NamedFind[],
  trays: readonly FilledTray[],
  vocabulary: Vocabulary,
): { readonly homes: ReadonlyMap<string, readonly Home[]>; readonly faults: readonly Fault[] } {
  const faults: Fault[] = [];
  const homes = new Map<string, Home[]>();
  for (const { find, path } of named) {
    const tray = trays.find(({ holds }) => holds.includes(find.attributes[block.by]));
    homes.set(
      find.id,
      tray === undefined
        ? []
        : [{ tray: tray.id, because: signOf(find, block.by, vocabulary), by: 'record' }],
    );
    if (tray === undefined && block.trays !== 'ours') {
      const value = find.attributes[block.by];
      faults.push({
        code: 'find-homeless',
        grade: 'error',
        path,
        ...sortProblems.findHomeless(find.id, block.by, value),
      });
    }
  }
  for (const [index, { find, tray: written, because }] of (block.also ?? []).entries()) {
    const found = homes.get(find);
    const findIds = named.map((entry) => entry.find.id);
    if (found === undefined) {
      const near = nearest(find, findIds);
      const replacement = near === null ? {} : { replacement: near };
      const words = sortProblems.findUnknown(find, near, findIds, 'the finds of this sort');
      faults.push({
        code: 'find-unknown',
        grade: 'error',
        path: ['also', index, 'find'],
        ...words,
        ...replacement,
      });
    }
    const tray = trays.find(({ id }) => id === slug(written));
    if (tray === undefined) {
      const names = trays.map(({ name }) => name);
      const near = nearest(written, names);
      const replacement = near === null ? {} : { replacement: near };
      const words = sortProblems.alsoTrayUnknown(written, near, names);
      faults.push({
        code: 'tray-unknown',
        grade: 'error',
        path: ['also', index, 'tray'],
        ...words,
        ...replacement,
      });
    }
    if (found === undefined || tray === undefined) continue;
    if (found.some((home) => home.tray === tray.id)) {
      faults.push({
        code: 'home-needless',
        grade: 'caution',
        path: ['also', index],
        ...sortProblems.homeNeedless(find, tray.name),
      });
    } else found.push({ tray: tray.id, because, by: 'argument' });
  }
  return { homes, faults };
}

/** Finds that look the same must not have to be told apart. */
function lookAlikes(named: readonly NamedFind[], homeOf: (find: Find) => string): readonly Fault[] {
  return named.flatMap(({ find, path }, index) =>
    named.slice(0, index).flatMap(({ find: earlier }): Fault[] => {
      if (!looksLike(earlier, find) || homeOf(earlier) === homeOf(find)) return [];
      return [
        { code: 'finds-look-alike', grade: 'error', path, ...sortProblems.lookAlike(earlier.id, find.id) },
      ];
    }),
  );
}

function limitFaults(
  block: SortBlock,
  finds: number,
  trays: readonly FilledTray[],
  filled: ReadonlySet<string>,
  context: CompileContext,
): readonly Fault[] {
  const faults: Fault[] = [];
  if (finds < FEWEST_FINDS) {
    faults.push({
      code: 'finds-too-few',
      grade: 'error',
      path: ['finds'],
      ...sortProblems.tooFew(finds, FEWEST_FINDS),
    });
  }
  const youngest = context.library.bands.find(({ band }) => context.bands.includes(band));
  if (youngest !== undefined) {
    if (finds > youngest.finds) {
      faults.push({
        code: 'finds-too-many',
        grade: 'caution',
        path: ['finds'],
        ...sortProblems.tooMany(finds, youngest.finds, youngest.band),
      });
    }
    if (trays.length > youngest.trays) {
      faults.push({
        code: 'trays-too-many',
        grade: 'caution',
        path: ['trays'],
        ...sortProblems.traysTooMany(trays.length, youngest.trays, youngest.band),
      });
    }
    const leastMinutes = Math.ceil((finds * youngest.secondsPerFind) / 60);
    if (finds >= FEWEST_FINDS && block.minutes < leastMinutes) {
      faults.push({
        code: 'minutes-under',
        grade: 'caution',
        path: ['minutes'],
        ...sortProblems.minutesUnder(block.minutes, leastMinutes, finds),
      });
    }
  }
  for (const [index, tray] of trays.entries()) {
    if (!filled.has(tray.id))
      faults.push({
        code: 'tray-empty',
        grade: 'caution',
        path: ['trays', index],
        ...sortProblems.trayEmpty(tray.name),
      });
  }
  return faults;
}

function describe(find: Find, homes: readonly Home[], vocabulary: Vocabulary): SortFind {
  const type = vocabulary.objectTypes.find(({ id }) => id === find.attributes['object-type']);
  return {
    id: find.id,
    smallFind: find.smallFind,
    pit: find.pit,
    plain: type?.plain ?? '',
    name: type?.label ?? find.attributes['object-type'],
    lengthMm: find.lengthMm,
    widthMm: find.widthMm,
    thicknessMm: find.thicknessMm,
    massG: find.massG ?? null,
    count: find.count,
    homes,
    note: find.note ?? null,
    attributes: find.attributes,
    drawing: drawable(find),
  };
}

const pitToCut = ({ finds: _finds, centre: _centre, ...pit }: Pit): SortActivity['pit'] => pit;

/** Compiles a sort: the key is derived from the finds' attributes, and everything a pupil could not do is refused. */
export function compileSort(id: string, block: SortBlock, context: CompileContext): Compiled<SortActivity> {
  const { vocabulary } = context.library;
  const words = vocabulary.attributes.find((attribute) => attribute.id === block.by);
  if (words === undefined) throw new Error(`the vocabulary has no attribute ${block.by}`);
  const { named, pit, faults: findFaults } = readFinds(block, context.site);
  const { trays, faults: trayFaults } = readTrays(block, words);
  const { homes, faults: homeFaults } = readHomes(block, named, trays, vocabulary);
  // A tray that is not known leaves its finds homeless: one fault, told once.
  const hasTrayErrors = trayFaults.some(({ code }) => code === 'tray-unknown');
  // Where trays overlap or repeat, one of them is empty only because of that.
  const areTraysSound = trayFaults.length === 0;
  const told = hasTrayErrors ? homeFaults.filter(({ code }) => code !== 'find-homeless') : homeFaults;
  const homeOf = (find: Find): string =>
    block.trays === 'ours'
      ? find.attributes[block.by]
      : JSON.stringify((homes.get(find.id) ?? []).map(({ tray }) => tray).toSorted());
  const filled = new Set([...homes.values()].flat().map(({ tray }) => tray));
  const faults = [
    ...findFaults,
    ...trayFaults,
    ...told,
    ...(hasTrayErrors ? [] : lookAlikes(named, homeOf)),
    ...(findFaults.length > 0 || hasTrayErrors
      ? []
      : limitFaults(block, named.length, trays, filled, context).filter(
          ({ code }) => areTraysSound || code !== 'tray-empty',
        )),
  ];
  if (faults.some(({ grade }) => grade === 'error')) return { activity: null, faults };
  const activity: SortActivity = {
    id,
    kind: 'sort',
    title: block.title,
    minutes: block.minutes,
    question: block.question ?? words.question,
    by: block.by,
    ownTrays: block.trays === 'ours',
    ordered: block.ordered ?? false,
    trays: trays.map(({ id: tray, name, hint }) => ({ id: tray, name, hint })),
    finds: shuffle(context.chance, named).map(({ find }) =>
      describe(find, homes.get(find.id) ?? [], vocabulary),
    ),
    pit: pit === null ? null : pitToCut(pit),
    seed: context.chance.seed,
    signsSource: words.values[0]?.source ?? '',
  };
  return { activity, faults };
}
