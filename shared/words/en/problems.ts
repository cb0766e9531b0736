/** The sentences of problems: what was expected, what stood there, how to put it right. Plain values in, sentences out. */
interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

const SHORT_LIST = 8;

/** What was written, in quotes, cut where it is long. @example quoted('grond') // '"grond"' */
export const quoted = (text: string): string => {
  const flat = text.replace(/\s+/g, ' ').trim();
  return `"${flat.length > 60 ? `${flat.slice(0, 57)}…` : flat}"`;
};

/** "one of: a, b, c", or how many there are where the list is long. */
export const oneOf = (known: readonly string[], where = 'in the help page'): string =>
  known.length <= SHORT_LIST
    ? `one of: ${known.join(', ')}`
    : `one of ${known.length} known words, listed ${where}`;

/** "write ground", or the list to choose from. */
export const writeNearest = (nearest: string | null, known: readonly string[], where?: string): string =>
  nearest === null ? `write ${oneOf(known, where)}` : `write ${quoted(nearest)}`;

/** Any value as a lead would name it. */
export const nameValue = (value: unknown): string => {
  if (value === undefined) return 'nothing';
  if (value === null) return 'an empty value';
  if (Array.isArray(value)) return value.length === 0 ? 'an empty list' : `a list of ${value.length}`;
  if (typeof value === 'string') return quoted(value);
  if (typeof value === 'number' || typeof value === 'boolean') return quoted(String(value));
  return 'keys and values';
};

export const yamlWords = {
  repeated: (text: string): Sentences => ({
    expected: 'each key once in its place',
    received: `${quoted(text)} a second time`,
    mend: 'keep one of the two and remove the other',
  }),
  unreadable: (code: string): Sentences => ({
    expected: 'lines of "key: value" with the same indent for keys that belong together',
    received: `text that does not read so (${code.toLowerCase().replaceAll('_', ' ')})`,
    mend: 'check the indent and the space after each colon here; put quotes round text that holds ": ", "#", "[" or "{"',
  }),
  keyNotText: (): Sentences => ({
    expected: 'a word before the colon',
    received: 'a list or a group of keys before the colon',
    mend: 'write one word, then a colon, then the value',
  }),
  refusedKey: (key: string): Sentences => ({
    expected: 'a key of this file',
    received: quoted(key),
    mend: 'remove this line: the word belongs to programs, not to lessons',
  }),
  alias: (): Sentences => ({
    expected: 'the value itself',
    received: 'a reference to another place ("*" and a name)',
    mend: 'write the value out here',
  }),
  tooMuch: (most: number): Sentences => ({
    expected: `a block of at most ${most} lines, commas, colons, brackets and quotes together`,
    received: 'more than that',
    mend: 'remove the marks that repeat, or split the block in two',
  }),
  tooDeep: (): Sentences => ({
    expected: 'lists and keys nested a few levels deep',
    received: 'nesting deeper than any lesson needs',
    mend: 'close the brackets, or write the lists on lines of their own',
  }),
};

export const shapeWords = {
  missing: (key: string, what: string): Sentences => ({
    expected: `the key "${key}": ${what}`,
    received: 'nothing',
    mend: `add a line "${key}: …" here`,
  }),
  unknownKey: (key: string, nearest: string | null, known: readonly string[]): Sentences => ({
    expected: oneOf(known),
    received: quoted(key),
    mend: nearest === null ? `remove the line, or write ${oneOf(known)}` : `write ${quoted(nearest)}`,
  }),
  unknownWord: (
    written: string,
    nearest: string | null,
    known: readonly string[],
    where?: string,
  ): Sentences => ({
    expected: oneOf(known, where),
    received: quoted(written),
    mend: writeNearest(nearest, known, where),
  }),
  wrongType: (expected: string, value: unknown): Sentences => ({
    expected,
    received: nameValue(value),
    mend: `write ${expected}`,
  }),
  tooSmall: (what: string, value: unknown): Sentences => ({
    expected: `${what} or more`,
    received: nameValue(value),
    mend: `write at least ${what}`,
  }),
  tooBig: (what: string, value: unknown): Sentences => ({
    expected: `${what} or fewer`,
    received: nameValue(value),
    mend: `write at most ${what}`,
  }),
};

export const fileWords = {
  empty: (): Sentences => ({
    expected: 'a lesson: a head between two lines of "---", then text and activity blocks',
    received: 'an empty file',
    mend: 'start from a new lesson: pitlore new NAME',
  }),
  tooLong: (characters: number, most: number): Sentences => ({
    expected: `a file of at most ${most} characters`,
    received: `${characters} characters`,
    mend: 'split the lesson in two files',
  }),
  headMissing: (): Sentences => ({
    expected: 'a first line of "---" that opens the head',
    received: 'text without a head',
    mend: 'put a line "---" first, then title, site, bands and minutes, then another line "---"',
  }),
  headUnclosed: (): Sentences => ({
    expected: 'a line of "---" that closes the head',
    received: 'the end of the file',
    mend: 'put a line "---" after the last key of the head',
  }),
  html: (received: string): Sentences => ({
    expected: 'Markdown: headings, lists, links, emphasis',
    received: quoted(received),
    mend: 'remove the tag; write *text* for emphasis, and "\\<" for a plain "<"',
  }),
  link: (url: string): Sentences => ({
    expected: 'a link that begins with https:, http: or mailto:, or a place on this site',
    received: quoted(url),
    mend: 'write the full address, or keep the words and remove the link',
  }),
  picture: (url: string): Sentences => ({
    expected: 'drawings made from the finds',
    received: `a picture from elsewhere, ${quoted(url)}`,
    mend: 'remove the picture; name the find in an activity and it is drawn',
  }),
  tooDeep: (): Sentences => ({
    expected: 'lists and quotations nested a few levels deep',
    received: 'nesting deeper than any lesson needs',
    mend: 'remove the repeated ">" or "-" at the start of the line',
  }),
  tangled: (): Sentences => ({
    expected: 'paragraphs and lists of a few lines, with an empty line between them',
    received: 'hundreds of lines, or of marks such as [ * _ ` < &, without a pause',
    mend: 'remove the marks that repeat, or put an empty line between paragraphs',
  }),
  blockEmpty: (kind: string): Sentences => ({
    expected: `keys and values of a ${kind} block`,
    received: 'an empty block',
    mend: 'fill the block, or remove it',
  }),
  blockNested: (): Sentences => ({
    expected: 'activity blocks at the start of the line',
    received: 'a block inside a list or a quotation',
    mend: 'move the three back-ticks to the start of the line, with an empty line before',
  }),
  idRepeated: (id: string): Sentences => ({
    expected: 'an id of its own for each activity',
    received: `${quoted(id)} a second time`,
    mend: 'give this activity another id, or remove the line',
  }),
  blockUnclosed: (kind: string): Sentences => ({
    expected: `a line of three back-ticks that closes the ${kind} block`,
    received: 'the end of the file',
    mend: 'put ``` on a line of its own after the last key of the block',
  }),
  kindUnknown: (written: string, nearest: string | null, known: readonly string[]): Sentences => ({
    expected: `an activity of a known kind: ${known.join(', ')}`,
    received: written === '' ? 'a block without a kind' : quoted(written),
    mend: nearest === null ? `write ${oneOf(known)} after the three back-ticks` : `write ${quoted(nearest)}`,
  }),
  siteUnknown: (written: string, nearest: string | null, known: readonly string[]): Sentences => ({
    expected: known.length === 0 ? 'a site file in content/sites' : oneOf(known, 'in content/sites'),
    received: quoted(written),
    mend:
      known.length === 0
        ? 'put a site file into content/sites and write its id here'
        : writeNearest(nearest, known, 'in content/sites'),
  }),
  minutesOver: (sum: number, minutes: number): Sentences => ({
    expected: `activities of at most ${minutes} minutes together`,
    received: `${sum} minutes`,
    mend: `shorten an activity, leave one out, or write "minutes: ${sum}"`,
  }),
  minutesLong: (minutes: number, most: number, band: string): Sentences => ({
    expected: `at most ${most} minutes for one activity at ages ${band}`,
    received: `${minutes} minutes`,
    mend: `write "minutes: ${most}", or split the activity in two`,
  }),
  minutesShort: (minutes: number, least: number, band: string): Sentences => ({
    expected: `about ${least} minutes for this much at ages ${band}`,
    received: `${minutes} minutes`,
    mend: `write "minutes: ${least}", or use fewer finds`,
  }),
};
