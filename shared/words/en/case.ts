interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

const many = (count: number, one: string, other: string): string => `${count} ${count === 1 ? one : other}`;

/** What a CASE package of ours says of itself, and what is said of one that is read. */
export const caseWords = {
  creator: 'Pitlore summaries',
  stage: 'Stage',
  outcome: 'Outcome',
  notes: (publisher: string, licence: string): string =>
    `Statements are summaries in our own words of what ${publisher} asks, not its wording, and only of what lessons about making and pits can meet. The publisher’s terms: ${licence}. Under extensions: how each outcome is known (RF found again in the work named, FM from memory, DER worked out here) and where it stands.`,
  identifier: 'a UUID such as 2ed6657d-e927-568b-95e1-2665a8aea6a2',
  dateTime: 'a date and time such as 2026-11-29T08:00:00Z',
  packageCitation: (creator: string, title: string, identifier: string): string =>
    `${creator}, ${title}, CASE package of document ${identifier}`,
  packageSeen: 'RF, machine-readable package',
  packageNote:
    'Read from a CASE package. Nothing here is evidence yet: say under "evidence" what would show an outcome.',
  gradesKnown: 'FM grades to ages',
  grade: (from: string, to: string): string => (from === to ? `Grade ${from}` : `Grades ${from}-${to}`),
  fileHead: '# Made from a CASE package. Look it over, then keep it in content/curricula.\n',
  identifierRepeated: (title: string): Sentences => ({
    expected: 'an identifier of its own for each item',
    received: `the identifier of ${title} a second time`,
    mend: 'give one of the two another identifier, or remove it',
  }),
  outcomeRepeated: (id: string): Sentences => ({
    expected: 'each outcome once',
    received: `${id} a second time`,
    mend: 'give one of the two another code, or remove it',
  }),
  endUnknown: (title: string): Sentences => ({
    expected: 'an item of this package, or its document',
    received: `${title}, which this package does not hold`,
    mend: 'ask for the whole package, or remove this association',
  }),
  circle: (title: string): Sentences => ({
    expected: 'a tree of items',
    received: `${title}, which is below itself`,
    mend: 'remove one of the associations of the circle',
  }),
  ageless: (count: number, title: string): Sentences => ({
    expected: 'an educationLevel whose ages are known (PK, KG, 01 to 12) on an item or above it',
    received: `${many(count, 'item', 'items')} without, the first ${title}`,
    mend: 'give them an educationLevel; they are left out',
  }),
  noOutcomes: (): Sentences => ({
    expected: 'at least one item with nothing below it and known ages',
    received: 'none',
    mend: 'ask for a package with its items, associations and education levels',
  }),
  anothersWords: (count: number): Sentences => ({
    expected: 'summaries in your own words',
    received: `${many(count, 'statement', 'statements')} in the publisher’s words`,
    mend: 'check the publisher’s licence, and write each summary in your own words',
  }),
};

/** What the command line says of frameworks and packages. */
export const frameworkCommandWords = {
  needs: (): string =>
    'framework needs a framework file or a CASE package: pitlore framework FILE.yaml [--to-case], or FILE.json [--from-case]',
  bothWays: (): string => 'framework goes one way at a time: --to-case or --from-case',
  dateUnfit: (written: string): string => `expected ${caseWords.dateTime}; received "${written}"`,
};
