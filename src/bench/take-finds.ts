import {
  intoSite,
  readFindsIn,
  readFindsInWords,
  siteFiles,
  siteHead,
  tellGuesses,
  writeFindsTable,
  writeInto,
  writeSite,
  type FindsIn,
  type SiteFiles,
} from '../../shared/finds-in/index.ts';
import {
  readSite,
  type ContentFile,
  type Library,
  type Site,
  type Vocabulary,
} from '../../shared/library/index.ts';
import type { FindsAsk, FindsRead } from './protocol.ts';

const WORDS = 'finds-in/words.yaml';

type Taken = Pick<FindsRead, 'read' | 'guesses' | 'files' | 'site' | 'into' | 'isTaken'>;

/** Errors in the files of a site; a photograph that is not at hand hides no find. */
function errorsIn({ yaml, tables }: SiteFiles, vocabulary: Vocabulary): number {
  const { problems } = readSite(yaml.file, yaml.text, tables, vocabulary);
  return problems.filter(({ grade, code }) => grade === 'error' && code !== 'photo-unfit').length;
}

/** A list into a site that is there: what becomes of each row, and the site's files with what is ready. */
function takeInto(
  list: FindsIn,
  { answers }: FindsAsk,
  site: Site,
  { vocabulary }: Library,
  content: readonly ContentFile[],
): Taken {
  const { finds: _, ...read } = list;
  const into = intoSite(list, site, answers);
  const isSame = new Set(into.rows.flatMap(({ row, outcome }) => (outcome === 'same' ? [row] : [])));
  const own = siteFiles(content, site.id);
  const isNothing = into.fresh.length + into.replaced.length === 0;
  const written = own === null || isNothing ? null : writeInto(own, site, into, vocabulary);
  return {
    // Of a row that is there already, nothing is left to be asked.
    read: { ...read, questions: read.questions.filter(({ row }) => !isSame.has(row)) },
    guesses: tellGuesses(read.rows.filter(({ row }) => !isSame.has(row))),
    // Called by their own names, as files of the lead's are.
    files: (written ?? []).map((file) => ({ ...file, file: file.path.split('/').at(-1) ?? file.path })),
    site: site.id,
    into: {
      site: site.id,
      name: site.name,
      errors: own === null ? 0 : errorsIn(own, vocabulary),
      rows: into.rows,
      counts: into.counts,
      questions: into.questions,
      places: into.places,
    },
    isTaken: false,
  };
}

/**
 * Reads a finds list and writes the finds that are ready: as a site file and a finds table, or into the files of a site
 * that is there.
 *
 * @param content The files of the site, the lead's own in the place of those of the same name.
 * @param home The product's own: its words of lists serve where the site has none.
 * @throws Error where those words cannot be read.
 */
export function takeFinds(
  ask: FindsAsk,
  library: Library,
  content: readonly ContentFile[],
  home: readonly ContentFile[],
): Taken {
  const { text, answers, name } = ask;
  const { vocabulary } = library;
  const found = [...content, ...home].find(({ path }) => path === WORDS);
  const words = found === undefined ? null : readFindsInWords(found.file, found.text).value;
  if (words === null) throw new Error(`${WORDS}: expected a readable file, received none`);
  const site = library.sites.find(({ id }) => id === ask.into);
  if (site !== undefined) {
    const list = readFindsIn(text, { vocabulary, words, answers, site, status: site.status });
    return takeInto(list, ask, site, library, content);
  }
  const { finds, ...read } = readFindsIn(text, { vocabulary, words, answers });
  const head = siteHead(name);
  const file = (ending: string, written: string): ContentFile => ({
    path: `sites/${head.id}${ending}`,
    file: `${head.id}${ending}`,
    text: written,
  });
  return {
    read,
    guesses: tellGuesses(read.rows),
    files:
      finds.length === 0
        ? []
        : [file('.yaml', writeSite(head, finds)), file('.finds.csv', writeFindsTable(finds))],
    site: head.id,
    into: null,
    isTaken: library.sites.some(({ id }) => id === head.id),
  };
}
