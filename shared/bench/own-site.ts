import type { ContentFile, PhotoFiles } from '../library/index.ts';
import { readYaml } from '../lesson/read-yaml.ts';
import type { OwnFiles } from './own-files.ts';
import { photoRows } from './photo-rows.ts';

const SITE_FILE = /^sites\/[^/]+\.yaml$/;

/** The name a site file gives its site; null where it gives none. */
function siteIdIn(text: string): string | null {
  const { data } = readYaml(text);
  const id = typeof data === 'object' && data !== null && 'id' in data ? data.id : null;
  return typeof id === 'string' ? id : null;
}

/** The site files among files of a content folder, each with its site's name. */
export const siteFiles = (
  files: readonly ContentFile[],
): readonly { readonly site: string; readonly file: ContentFile }[] =>
  files.flatMap((file) => {
    const site = SITE_FILE.test(file.path) ? siteIdIn(file.text) : null;
    return site === null ? [] : [{ site, file }];
  });

/** The site file of a site; null where it is not among these. */
export const siteFileOf = (files: readonly ContentFile[], site: string): ContentFile | null =>
  siteFiles(files).find((each) => each.site === site)?.file ?? null;

const nameIn = (path: string): string => path.slice(path.lastIndexOf('/') + 1);

/**
 * All that belongs to a site in a content folder: its file, its finds tables, and the photographs it names. They are
 * called by their own names, as files of the lead's are.
 *
 * @returns null where the folder has no such site.
 */
export function siteOf(files: readonly ContentFile[], photos: PhotoFiles, site: string): OwnFiles | null {
  const found = siteFileOf(files, site);
  if (found === null) return null;
  const stem = found.path.slice(0, -'.yaml'.length);
  const isTable = ({ path }: ContentFile): boolean => path.startsWith(`${stem}.`) && path.endsWith('.csv');
  const named = new Set(photoRows(found.text).map(({ file }) => file));
  return {
    files: [found, ...files.filter(isTable)].map((file) => ({ ...file, file: nameIn(file.path) })),
    photos: new Map([...photos].filter(([name]) => named.has(name))),
  };
}

/** The lead's own files with those of a site added; what is the lead's own already stays as it is. */
export function addSite(own: OwnFiles, site: OwnFiles): OwnFiles {
  const paths = new Set(own.files.map(({ path }) => path));
  return {
    files: [...own.files, ...site.files.filter(({ path }) => !paths.has(path))],
    photos: new Map([...site.photos, ...own.photos]),
  };
}
