import { existsSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { hasErrors, type Problem } from '../../shared/lesson/index.ts';
import {
  readBands,
  readHazards,
  readSources,
  readVocabulary,
  type Library,
  type Site,
} from '../../shared/library/index.ts';
import { readCurricula, readFrameworkWords } from './read-curricula.ts';
import { readFigures } from './read-figures.ts';
import { readNotesFiles } from './read-notes-files.ts';
import { readSiteFile } from './read-site-file.ts';

/** A library read from a folder, with all that is wrong in its files. Files with errors are left out. */
export interface LoadedLibrary {
  readonly library: Library;
  readonly problems: readonly Problem[];
}

async function readSites(
  folder: string,
  library: Omit<Library, 'sites'>,
): Promise<{ sites: readonly Site[]; problems: readonly Problem[] }> {
  const names = (await readdir(folder)).toSorted();
  const sites: Site[] = [];
  const problems: Problem[] = [];
  for (const name of names.filter((file) => file.endsWith('.yaml'))) {
    const read = await readSiteFile(join(folder, name), library.vocabulary);
    problems.push(...read.problems);
    if (read.value !== null) sites.push(read.value);
  }
  return { sites, problems };
}

/**
 * Reads `vocabulary.yaml`, `bands.yaml`, `sources.yaml`, `glossary.yaml`, `notes.yaml`, `figures/`, `hazards/visits.yaml`
 * and `sites/` of a content folder.
 *
 * @param productContent Where the product's own content is: its figures, hazards, curricula and notes serve where the folder has none.
 * @throws Error when the vocabulary, the bands or the sources cannot be read at all: nothing works without them.
 */
export async function readLibrary(folder: string, productContent = folder): Promise<LoadedLibrary> {
  const read = async <Value>(
    name: string,
    reader: (
      file: string,
      text: string,
    ) => { readonly value: Value | null; readonly problems: readonly Problem[] },
    root = folder,
  ): Promise<{ readonly value: Value; readonly problems: readonly Problem[] }> => {
    const file = join(root, name);
    const { value, problems } = reader(file, await readFile(file, 'utf8'));
    if (value === null || hasErrors(problems)) {
      const first = problems[0];
      const place = first === undefined ? file : `${file}:${first.from.line}:${first.from.column}`;
      throw new Error(
        `${place}: expected ${first?.expected ?? 'a readable file'}, received ${first?.received ?? 'none'}`,
      );
    }
    return { value, problems };
  };
  const [vocabulary, bands, sources, safety] = await Promise.all([
    read('vocabulary.yaml', readVocabulary),
    read('bands.yaml', readBands),
    read('sources.yaml', readSources),
    // A lead's own folder need not hold hazards: those of the product rule, and are never silently none.
    read(
      'hazards/visits.yaml',
      readHazards,
      existsSync(join(folder, 'hazards/visits.yaml')) ? folder : productContent,
    ),
  ]);
  const { figures, problems: figureProblems } = await readFigures(folder, productContent);
  const { curricula, problems: claimProblems } = await readCurricula(folder, productContent);
  const { kinds } = await readFrameworkWords(folder, productContent);
  const { problems: notesProblems, ...teaching } = await readNotesFiles(folder, productContent, {
    kinds,
    sources: sources.value.map(({ id }) => id),
  });
  const rest = {
    vocabulary: vocabulary.value,
    bands: bands.value,
    sources: sources.value,
    ...figures,
    safety: safety.value,
    curricula,
    ...teaching,
  };
  const { sites, problems } = await readSites(join(folder, 'sites'), rest);
  return {
    library: { ...rest, sites },
    problems: [
      ...vocabulary.problems,
      ...bands.problems,
      ...sources.problems,
      ...figureProblems,
      ...claimProblems,
      ...notesProblems,
      ...problems,
    ],
  };
}
