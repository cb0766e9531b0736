import { findsInWords as words } from '../words/en/finds-in.ts';
import { isFormula } from './read-number.ts';
import { answered, ask, type OpenRow, type Reading } from './reading.ts';
import { plain } from './plain.ts';

/** A capital with a point before a word, a title before a name, an address: what commonly is a person. CP. */
const NAMED =
  /\b(?:Mr|Mrs|Ms|Miss|Dr|Prof|Sir|Herr|Frau|Mme|Mlle|Dhr|Mevr|Sra?|Dra?)\.?\s+\p{Lu}\p{L}+|(?<![\p{L}.])\p{Lu}\.\s?(?:\p{Lu}\.\s?)?\p{L}{2,}|[\w.+-]+@[\w-]+\.\w+/u;

const PARTS = /(?<=[;,.?!])\s+|\s*[;|\n]+\s*/;

/** True for a part of a note that may name a person. */
function mayName(part: string, people: readonly string[]): boolean {
  const tokens = `-${plain(part)}-`;
  return NAMED.test(part) || people.some((saying) => tokens.includes(`-${saying}-`));
}

/** What a spreadsheet would take for a formula must not begin a cell of ours. */
const harmless = (text: string): string => text.replace(/^[\s=+@-]+/, '').trim();

/** The note without the parts that may name a person: from "found by" to the end of its sentence or clause. */
export function withoutNames(note: string, people: readonly string[]): string {
  const kept: string[] = [];
  let isName = false;
  let before = '';
  for (const part of note.split(PARTS)) {
    // "P. volunteer? check": an initial's point ends no sentence, so the part after it belongs to the name.
    isName = mayName(part, people) || (isName && /(?:^|\s)\p{Lu}\.$/u.test(before));
    if (!isName) kept.push(part);
    before = part;
  }
  return harmless(kept.join(' ').replace(/[\s;,]+$/, ''));
}

/** The note of a row; names are asked about and meanwhile left out, formulas never kept. '' where there is none. */
export function readNote(reading: Reading, open: OpenRow): string {
  const written = open.textOf('note');
  const given = answered(reading, open, 'note');
  if (given !== undefined) return harmless(given);
  if (written === '' || reading.isNotRecorded(written)) return '';
  if (isFormula(written)) {
    const kept = harmless(written);
    ask(open, 'note', {
      reason: 'formula',
      asked: words.formula('note', written),
      proposals: [
        { value: '', label: words.leaveOut() },
        { value: kept, label: words.keepNote(kept) },
      ],
      taken: '',
      isShared: true,
    });
    return '';
  }
  if (!mayName(written, reading.people)) return harmless(written);
  const bare = withoutNames(written, reading.people);
  ask(open, 'note', {
    reason: 'person-named',
    asked: words.personNamed(written),
    proposals: [
      { value: bare, label: words.withoutName(bare) },
      { value: harmless(written), label: words.keepNote(written) },
    ],
    taken: bare,
    isShared: true,
  });
  return bare;
}

const COUNTED: Readonly<Record<string, number>> = {
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  '2': 2,
  '3': 3,
  '4': 4,
  '5': 5,
};

/** How many pieces a note says there are: "two, joining". Null where it says nothing of it. */
export function piecesInNote(note: string): number | null {
  const said =
    /\b(two|three|four|five|[2-5])\b(?=[^.]{0,12}\b(?:join|joining|pieces?|frags?|fragments?|bits|parts)\b)/i.exec(
      note,
    )?.[1];
  return said === undefined ? null : (COUNTED[said.toLowerCase()] ?? null);
}
