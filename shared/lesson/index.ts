export { readLesson, LONGEST_LESSON, type Lesson, type LessonBlock, type LessonPart } from './read-lesson.ts';
export { lessonHead, type LessonHead } from './lesson-head.ts';
export type { WrittenNotes } from './notes-schema.ts';
export { PUPILS_DO, type WrittenStation, type WrittenVisit } from './visit-schema.ts';
export { lineMap, type LineMap, type Point } from './point.ts';
export { nearest } from './nearest.ts';
export { READ_KEYS, type Passage } from './passages.ts';
export { readPassages } from './read-passages.ts';
export { numeralsOf } from './numerals.ts';
export { placeFaults, problemAt, type Locate, type SourceText } from './place-faults.ts';
export {
  byPlace,
  hasErrors,
  PROBLEM_CODES,
  type Fault,
  type Path,
  type Problem,
  type ProblemCode,
} from './problem.ts';
export { readYaml } from './read-yaml.ts';
export { rememberYaml, type ReadYaml } from './remember-yaml.ts';
export { shape } from './shape-faults.ts';
