type Why =
  | { readonly what: 'sentence'; readonly words: number; readonly most: number }
  | { readonly what: 'word'; readonly syllables: number };

const names: Readonly<Record<string, string>> = {
  fleschReadingEase: 'Flesch reading ease (higher is easier)',
  fleschKincaidGrade: 'Flesch–Kincaid grade',
  daleChall: 'Dale–Chall',
  spache1953: 'Spache, 1953',
  spacheRevised: 'Spache, revised',
  colemanLiau: 'Coleman–Liau',
  automatedReadabilityIndex: 'Automated readability index',
  smog: 'SMOG',
  smogByHand: 'SMOG by hand',
  linsearWrite: 'Linsear Write',
};

/** What the command line says of reading. */
export const readingWords = {
  why: (why: Why): string =>
    why.what === 'sentence'
      ? `${why.words} words in one sentence; at most ${why.most} here`
      : `${why.syllables} syllables, and not a word most readers of this age know`,
  head: (words: number, sentences: number, syllables: number): string =>
    `${words} words, ${sentences} sentences, ${syllables} syllables\n`,
  measure: (name: string, value: number | null): string =>
    value === null ? '' : `  ${names[name] ?? name}: ${value.toFixed(1)}\n`,
  tooShort: (least: number): string => `  fewer than ${least} words: no measure says anything of so little\n`,
  readAloud: (band: string): string => `  ages ${band}: an adult reads this aloud\n`,
  target: (most: number, isWithin: boolean): string =>
    `  Flesch–Kincaid grade ${most} at most for this band (our judgement): ${isWithin ? 'within it' : 'above it'}\n`,
  hard: (file: string, line: number, column: number, text: string, why: string): string =>
    `${file}:${line}:${column}: ${text} (${why})\n`,
  trade: (words: readonly string[]): string =>
    words.length === 0 ? '' : `  words of the trade, for the glossary: ${words.join(', ')}\n`,
  honest: (): string => '  A formula counts; it sees no sense. Read it to a child.\n',
  needsBand: (bands: readonly string[]): string =>
    `reading needs a file and a band (${bands.join(', ')}): pitlore reading FILE --band 7-9`,
};
