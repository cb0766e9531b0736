import { MOST_AT_ONCE, MOST_ZIP_BYTES, openZip, visitsOfFolder } from '../../shared/visit-folder/index.ts';
import type { CarriedVisit, WhyLeftOfZip } from '../../shared/visit-folder/index.ts';
import { say } from '../../shared/words/index.ts';
import { visitFolder as words, whyLeft } from '../../shared/words/en/visit-folder.ts';
import type { ZipFault } from '../../shared/zip/index.ts';
import type { Told } from './told.ts';

/** Visits found in files, and what is to be said of the rest. */
export interface FilesRead extends Told {
  readonly visits: readonly CarriedVisit[];
}

const MEGABYTE = 1_000_000;

const isZip = ({ name }: File, bytes: Uint8Array): boolean =>
  /\.zip$/i.test(name) || (bytes[0] === 0x50 && bytes[1] === 0x4b);

function tellFault(file: string, fault: ZipFault): string {
  switch (fault.fault) {
    case 'no-zip':
      return say(words.noZip, { file });
    case 'broken':
      return say(words.broken, { file });
    case 'larger-than-told':
      return say(words.largerThanTold, { file });
    case 'too-large': {
      const received = Math.ceil(fault.received / MEGABYTE);
      return say(words.tooLarge, { file, received, most: MOST_AT_ONCE.bytes / MEGABYTE });
    }
    case 'too-many':
      return say(words.tooMany, { file, received: fault.received, most: MOST_AT_ONCE.files });
    default:
      return fault satisfies never;
  }
}

const tellLeft = (left: readonly { readonly path: string; readonly why: WhyLeftOfZip }[]): Told['left'] =>
  left.map(({ path, why }) => ({ path, why: whyLeft[why] }));

/** A file that lies by itself was chosen as what its ending says it is. */
const looseAt = (name: string): string =>
  /\.(md|markdown|txt)$/i.test(name) ? `lessons/${name.replace(/\.txt$/i, '.md')}` : name;

/** Reads files that were chosen or dropped together: each zip by itself, and all others as one folder. */
export async function readFiles(files: readonly File[]): Promise<FilesRead> {
  const visits: CarriedVisit[] = [];
  const sentences: string[] = [];
  const left: Told['left'][number][] = [];
  const loose: { readonly path: string; readonly bytes: Uint8Array }[] = [];
  for (const file of files) {
    if (file.size > MOST_ZIP_BYTES) {
      const received = Math.ceil(file.size / MEGABYTE);
      sentences.push(
        say(words.tooLargeZip, { file: file.name, received, most: MOST_AT_ONCE.bytes / MEGABYTE }),
      );
      continue;
    }
    const bytes = new Uint8Array(await file.arrayBuffer());
    if (!isZip(file, bytes)) {
      loose.push({ path: looseAt(file.name), bytes });
      continue;
    }
    const opened = openZip(bytes);
    visits.push(...opened.visits);
    left.push(...tellLeft(opened.left));
    if (opened.fault !== null) sentences.push(tellFault(file.name, opened.fault));
    else if (opened.visits.length === 0) sentences.push(say(words.openedNone, { file: file.name }));
  }
  const folder = visitsOfFolder(loose);
  if (loose.length > 0 && visits.length + folder.visits.length + sentences.length === 0)
    sentences.push(
      say(words.openedNone, { file: loose.map(({ path }) => path.replace('lessons/', '')).join(', ') }),
    );
  visits.push(...folder.visits);
  left.push(...tellLeft(folder.left));
  return { visits, sentences, left };
}
