import { TitleBlock, type Head } from '../TitleBlock.tsx';
import { Block } from './Block.tsx';
import type { PaperView, SectionView } from './paper-view.ts';

/** What is left to be written in by hand. */
const BLANK = ' '.repeat(12);

/** One paper of a pack, as its page on the site: `PaperSheet.astro`. */
export function Paper({
  path,
  name,
  caution,
  sections,
  head,
  date,
}: PaperView & { readonly head: Head; readonly date: string }) {
  const particulars = [...head.particulars, { name: date, value: BLANK }];
  return (
    <article class="paper" data-part={path} aria-label={name}>
      <TitleBlock {...head} particulars={particulars} part={name} />
      {caution.title === null ? (
        <p class="quiet">{caution.text}</p>
      ) : (
        <p class="caution" role="note">
          <strong>{caution.title}</strong> {caution.text}
        </p>
      )}
      {sections.map((section) => (
        <Section key={section.id} paper={path} {...section} />
      ))}
    </article>
  );
}

/** How a section prints: on a sheet of its own, as notes, or as words kept together. */
function lookOf(paper: string, id: string, isSheet: boolean): string {
  if (isSheet) return 'sheet';
  if (paper === 'teacher-notes') return 'notes-section';
  return id === 'words' ? 'sheet-words' : '';
}

function Section({
  id,
  paper,
  title,
  aside,
  isSheet = false,
  blocks,
}: SectionView & { readonly paper: string }) {
  return (
    <section class={`paper-section ${lookOf(paper, id, isSheet)}`} data-section={id}>
      <h2>
        {title} {aside !== undefined && <span class="paper-aside">{aside}</span>}
      </h2>
      {blocks.map((block, index) => (
        <Block key={`${block.block}-${index}`} {...block} />
      ))}
    </section>
  );
}
