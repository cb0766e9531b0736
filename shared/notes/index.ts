export { lessonWords, wordsBefore, wordsByStretch } from './lesson-words.ts';
