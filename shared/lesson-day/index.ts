export { lessonDay, type LessonDay, type LessonDayAsked } from './lesson-day.ts';
