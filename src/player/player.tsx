import { render } from 'preact';
import type { LessonTold, LessonView } from './lesson-view.ts';
import { Pack } from './Pack.tsx';

// Runs in a pack: the lesson stands in the page as data, written by src/packs/pack-page.ts. The Bench opens the same
// page with no lesson in it, shut off from everything, and tells it the lesson as it is written.
const lesson = document.querySelector('[data-lesson]')?.textContent;
const mount = document.querySelector('[data-mount]');
const show = (view: LessonView | null): void => {
  if (mount === null || view === null) return;
  render(null, mount);
  render(<Pack {...view} />, mount);
};
if (lesson === 'null')
  addEventListener('message', ({ source, data }: MessageEvent<LessonTold>) => {
    if (source !== parent) return;
    const feet = new CSSStyleSheet();
    feet.replaceSync(data.feet);
    document.adoptedStyleSheets = [feet];
    show(data.lesson);
  });
else if (lesson) show(JSON.parse(lesson) as LessonView);
