import { render } from 'preact';
import type { LessonView } from './lesson-view.ts';
import { Pack } from './Pack.tsx';

// Runs in a pack: the lesson stands in the page as data, written by src/packs/make-pack.ts.
const lesson = document.querySelector('[data-lesson]')?.textContent;
const mount = document.querySelector('[data-mount]');
if (mount !== null && lesson) render(<Pack {...(JSON.parse(lesson) as LessonView)} />, mount);
