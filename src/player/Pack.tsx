import { Rod } from '../islands/Rod.tsx';
import { Activity } from './Activity.tsx';
import { PackSafety } from './PackSafety.tsx';
import { Papers } from './papers/Papers.tsx';
import { SaveResults } from './SaveResults.tsx';
import { TitleBlock } from './TitleBlock.tsx';
import type { LessonView } from './lesson-view.ts';

/** A lesson in a pack: what `src/pages/lessons/[id]/index.astro` shows, its papers with it. */
export function Pack(view: LessonView) {
  const { product, skip, foot, rod, drawings, parts, caution, safety, papers, results, ...head } = view;
  return (
    <div class="frame">
      <a class="skip" href="#main">
        {skip}
      </a>
      <header class="frame-head">
        <span class="frame-name">{product}</span>
      </header>
      <main id="main" tabIndex={-1}>
        <svg class="sprite" aria-hidden="true">
          {drawings.map(({ id, viewBox, markup }) => (
            <symbol key={id} id={id} viewBox={viewBox} dangerouslySetInnerHTML={{ __html: markup }} />
          ))}
        </svg>
        <div class="lesson">
          <Rod {...rod} />
          <article class="lesson-sheet">
            <TitleBlock {...head} />
            {parts.map((part) =>
              part.part === 'prose' ? (
                <section
                  key={part.id}
                  class="prose"
                  id={part.id}
                  dangerouslySetInnerHTML={{ __html: part.html }}
                />
              ) : (
                <Activity key={part.activity.id} {...part.activity} />
              ),
            )}
            {caution !== null && (
              <p class="caution" role="note" data-caution>
                <strong>{caution.title}</strong> {caution.text}
              </p>
            )}
            <SaveResults {...results} />
            <PackSafety {...safety} />
            <Papers {...papers} head={head} />
          </article>
        </div>
      </main>
      <footer class="frame-foot small quiet">{foot}</footer>
    </div>
  );
}
