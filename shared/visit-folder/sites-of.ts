import { outline } from '../bench/index.ts';
import type { ContentFile, PhotoFiles } from '../library/index.ts';

/** A site with the finds tables and photographs that go with it, by the id that lessons name it by. */
export interface SiteParts {
  readonly id: string;
  readonly files: readonly ContentFile[];
  readonly photos: PhotoFiles;
}

const stemOf = (path: string): string => path.slice(0, -'.yaml'.length);

/** The id that a site file says, or what the file is called where it says none that can be read. */
const idOf = ({ path, text }: ContentFile): string =>
  /^["']?id["']?[ \t]*:[ \t]*["']?([a-z][a-z0-9-]*)/m.exec(text)?.[1] ??
  stemOf(path).split('/').at(-1) ??
  path;

/** Everything a site file names that could be a picture. */
export const picturesIn = (text: string): ReadonlySet<string> =>
  new Set([...text.matchAll(/[\w-]+\.(?:jpe?g|png|webp)\b/gi)].map(([name]) => name));

/** Files of one's own, dealt to the sites they belong to. */
export function sitesOf(files: readonly ContentFile[], photos: PhotoFiles): readonly SiteParts[] {
  return files
    .filter(({ path }) => path.endsWith('.yaml'))
    .map((site) => {
      const named = picturesIn(site.text);
      return {
        id: idOf(site),
        files: [
          site,
          ...files.filter(({ path }) => path.endsWith('.csv') && path.startsWith(`${stemOf(site.path)}.`)),
        ],
        photos: new Map([...photos].filter(([name]) => named.has(name))),
      };
    });
}

/** The site that a lesson names in its head; '' where it names none. */
export function siteNamed(text: string): string {
  const site = outline(text).head?.data?.['site'];
  return typeof site === 'string' ? site : '';
}
