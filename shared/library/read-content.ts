import { hasErrors, type Problem } from '../lesson/problem.ts';
import type { Curricula, Framework } from '../curriculum/index.ts';
import type { Library, Site } from './library.ts';
import { readBands } from './read-bands.ts';
import { readClaimRules } from './read-claim-rules.ts';
import { readComparisons } from './read-comparisons.ts';
import { readFramework } from './read-framework.ts';
import { readGlossary } from './read-glossary.ts';
import { readHazards } from './read-hazards.ts';
import { readMakingFigures } from './read-making-figures.ts';
import { NO_ROWS } from './notes-rows.ts';
import { readNotes } from './read-notes.ts';
import type { PhotoFiles } from './read-photos.ts';
import { readSite } from './read-site.ts';
import { readSources } from './read-sources.ts';
import { readVocabulary } from './read-vocabulary.ts';

/** A file of a content folder, wherever its text was read from. */
export interface ContentFile {
  /** Within the folder: `sites/wendle-marsh.yaml`. */
  readonly path: string;
  /** The name problems carry. */
  readonly file: string;
  readonly text: string;
}

/** A library read from files, with all that is wrong in them. Files with errors are left out. */
export interface ReadContent {
  readonly library: Library;
  readonly problems: readonly Problem[];
}

interface Read<Value> {
  readonly value: Value | null;
  readonly problems: readonly Problem[];
}

type Reader<Value> = (file: string, text: string) => Read<Value>;

const within = (files: readonly ContentFile[], folder: string, ending: string): readonly ContentFile[] =>
  files
    .filter(({ path }) => path.startsWith(`${folder}/`) && path.endsWith(ending))
    .filter(({ path }) => !path.slice(folder.length + 1).includes('/'))
    .toSorted((a, b) => (a.path < b.path ? -1 : 1));

/** What nothing works without. @throws Error when the file is missing or has errors. */
function readNeeded<Value>(path: string, files: readonly ContentFile[], reader: Reader<Value>) {
  const found = files.find((each) => each.path === path);
  if (found === undefined) throw new Error(`${path}: expected a readable file, received none`);
  const { value, problems } = reader(found.file, found.text);
  if (value !== null && !hasErrors(problems)) return { value, problems };
  const first = problems[0];
  const place = first === undefined ? found.file : `${found.file}:${first.from.line}:${first.from.column}`;
  throw new Error(
    `${place}: expected ${first?.expected ?? 'a readable file'}, received ${first?.received ?? 'none'}`,
  );
}

/** The product's frameworks serve everywhere; a file of the folder with the same id takes the place of ours. */
function readCurricula(
  files: readonly ContentFile[],
  home: readonly ContentFile[],
  rules: NonNullable<ReturnType<typeof readClaimRules>['value']>,
): { readonly curricula: Curricula; readonly problems: readonly Problem[] } {
  const { kinds, conditions, steps } = rules;
  const known = { kinds, conditions: conditions.map(({ id }) => id) };
  const frameworks = new Map<string, Framework>();
  const problems: Problem[] = [];
  for (const place of new Set([home, files])) {
    for (const { file, text } of within(place, 'curricula', '.yaml')) {
      const read = readFramework(file, text, known);
      problems.push(...read.problems);
      if (read.value !== null) frameworks.set(read.value.id, read.value);
    }
  }
  return { curricula: { frameworks: [...frameworks.values()], conditions, steps }, problems };
}

function readSites(
  files: readonly ContentFile[],
  library: Omit<Library, 'sites'>,
  photos: PhotoFiles,
): { readonly sites: readonly Site[]; readonly problems: readonly Problem[] } {
  const sites: Site[] = [];
  const problems: Problem[] = [];
  for (const { path, file, text } of within(files, 'sites', '.yaml')) {
    const stem = path.slice(0, -'.yaml'.length);
    const tables = within(files, 'sites', '.csv').filter((table) => table.path.startsWith(`${stem}.`));
    const read = readSite(file, text, tables, library.vocabulary, photos);
    problems.push(...read.problems);
    if (read.value !== null) sites.push(read.value);
  }
  return { sites, problems };
}

/**
 * Reads a library from the files of a content folder: `vocabulary.yaml`, `bands.yaml`, `sources.yaml`,
 * `claim-rules.yaml`, `glossary.yaml`, `notes.yaml`, `figures/`, `hazards/visits.yaml`, `curricula/` and `sites/`. Pure:
 * the loader of the build and the Bench in a browser read by it alike.
 *
 * @param home The product's own files: its figures, hazards, rules of claims, curricula and notes serve where the folder has none.
 * @param photos The pictures of `sites/photos`, by name.
 * @throws Error when the vocabulary, the bands, the sources, the hazards or the rules of claims cannot be read at all.
 */
export function readContent(
  files: readonly ContentFile[],
  home: readonly ContentFile[] = files,
  photos: PhotoFiles = new Map(),
): ReadContent {
  /** The folder's own file, or else the product's; one with errors is told of, and ours does not stand in for it unseen. */
  const ownOr = (path: string): readonly ContentFile[] =>
    files.some((each) => each.path === path) ? files : home;
  const readOptional = <Value>(path: string, reader: Reader<Value>): Read<Value> => {
    const found = ownOr(path).find((each) => each.path === path);
    return found === undefined ? { value: null, problems: [] } : reader(found.file, found.text);
  };
  const vocabulary = readNeeded('vocabulary.yaml', files, readVocabulary);
  const bands = readNeeded('bands.yaml', files, readBands);
  const sources = readNeeded('sources.yaml', files, readSources);
  const safety = readNeeded('hazards/visits.yaml', ownOr('hazards/visits.yaml'), readHazards);
  const rules = readNeeded('claim-rules.yaml', ownOr('claim-rules.yaml'), readClaimRules);
  const making = readOptional('figures/making-hours.yaml', readMakingFigures);
  const comparisons = readOptional('figures/comparisons.yaml', readComparisons);
  const sourceIds = sources.value.map(({ id }) => id);
  const glossary = readOptional('glossary.yaml', (file, text) => readGlossary(file, text, sourceIds));
  const known = {
    kinds: rules.value.kinds,
    sources: sourceIds,
    words: (glossary.value ?? []).map(({ word }) => word),
  };
  const notes = readOptional('notes.yaml', (file, text) => readNotes(file, text, known));
  const claims = readCurricula(files, home, rules.value);
  const rest = {
    vocabulary: vocabulary.value,
    bands: bands.value,
    sources: sources.value,
    making: making.value,
    comparisons: comparisons.value ?? [],
    safety: safety.value,
    curricula: claims.curricula,
    glossary: glossary.value ?? [],
    notes: notes.value ?? NO_ROWS,
  };
  const { sites, problems } = readSites(files, rest, photos);
  return {
    library: { ...rest, sites },
    problems: [
      ...vocabulary.problems,
      ...bands.problems,
      ...sources.problems,
      ...making.problems,
      ...comparisons.problems,
      ...claims.problems,
      ...glossary.problems,
      ...notes.problems,
      ...problems,
    ],
  };
}
