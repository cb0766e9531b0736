export { define, isYounger, type GlossaryWord } from './glossary.ts';
export { wordsUsed } from './words-used.ts';
