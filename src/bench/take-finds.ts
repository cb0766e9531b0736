import {
  readFindsIn,
  readFindsInWords,
  siteHead,
  tellGuesses,
  writeFindsTable,
  writeSite,
} from '../../shared/finds-in/index.ts';
import type { ContentFile, Vocabulary } from '../../shared/library/index.ts';
import type { FindsAsk, FindsRead } from './protocol.ts';

const WORDS = 'finds-in/words.yaml';

/**
 * Reads a finds list and writes the finds that are ready as a site file and a finds table.
 *
 * @param content The files of the site, with the words lists are written in; the first of a name counts.
 * @throws Error where those words cannot be read.
 */
export function takeFinds(
  { text, answers, name }: FindsAsk,
  vocabulary: Vocabulary,
  content: readonly ContentFile[],
): Pick<FindsRead, 'read' | 'guesses' | 'files' | 'site'> {
  const found = content.find(({ path }) => path === WORDS);
  const words = found === undefined ? null : readFindsInWords(found.file, found.text).value;
  if (words === null) throw new Error(`${WORDS}: expected a readable file, received none`);
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
  };
}
