import { readSite, type Library } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';
import type { Saved } from './build-visit.ts';

/** The demo's library with the site that was saved from the Bench, as the command line would read it. */
export function libraryWith(files: readonly Saved[]): Library {
  const [site] = files.filter(({ name }) => name.endsWith('.yaml'));
  const tables = files.filter(({ name }) => name.endsWith('.csv'));
  if (site === undefined || tables.length === 0)
    throw new Error(`no site among ${files.map(({ name }) => name).join(', ')}`);
  const { value, problems } = readSite(
    site.name,
    site.text,
    tables.map(({ name, text }) => ({ file: name, text })),
    demoLibrary.vocabulary,
  );
  if (value === null) throw new Error(JSON.stringify(problems));
  return { ...demoLibrary, sites: [...demoLibrary.sites, value] };
}
