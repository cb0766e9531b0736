export { answerBlocks, unscoredBlocks } from './answers.ts';
export type { NotesBlock, NotesCell, NotesDocument, NotesPicture, NotesSection } from './blocks.ts';
export { lessonWords, wordsBefore, wordsByStretch } from './lesson-words.ts';
export { teacherNotes } from './notes-of.ts';
export { writeMarkdown } from './write-markdown.ts';
