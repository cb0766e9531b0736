import { TitleBlock, type Head } from '../player/TitleBlock.tsx';
import { Block } from '../player/papers/Block.tsx';
import { Paper } from '../player/papers/Paper.tsx';
import { isMore, MoreBlock } from './MoreBlock.tsx';
import type { PrintBlock, PrintedPaper, PrintPart, VisitPaper } from './print-view.ts';

interface Around {
  readonly head: Head;
  readonly date: string;
}

/** What is left to be written in by hand. */
const BLANK = ' '.repeat(12);

const Any = (block: PrintBlock) => (isMore(block) ? <MoreBlock {...block} /> : <Block {...block} />);

function Part({ look, title, blocks }: PrintPart) {
  const pieces = blocks.map((block, index) => <Any key={`${block.block}-${index}`} {...block} />);
  if (look === null)
    return (
      <>
        {title !== null && <h2>{title}</h2>}
        {pieces}
      </>
    );
  return (
    <section class={look}>
      {title !== null && <h2>{title}</h2>}
      {pieces}
    </section>
  );
}

/** A paper that packs do not have, as its page on the site: `PaperSheet.astro`. */
function Beyond({ path, name, caution, parts, head, date }: VisitPaper & Around) {
  return (
    <article class="paper" data-part={path} aria-label={name}>
      <TitleBlock {...head} particulars={[...head.particulars, { name: date, value: BLANK }]} part={name} />
      {caution !== null &&
        (caution.title === null ? (
          <p class="quiet">{caution.text}</p>
        ) : (
          <p class="caution" role="note" data-caution>
            <strong>{caution.title}</strong> {caution.text}
          </p>
        ))}
      {parts.map((part) => (
        <Part key={part.id} {...part} />
      ))}
    </article>
  );
}

/** One paper of a visit. */
export function PrintPaper({ printed, ...around }: Around & { readonly printed: PrintedPaper }) {
  return printed.is === 'pack' ? (
    <Paper {...printed.paper} {...around} />
  ) : (
    <Beyond {...printed.paper} {...around} />
  );
}
