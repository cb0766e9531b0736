import { useLayoutEffect, useState } from 'preact/hooks';
import type { Head } from '../TitleBlock.tsx';
import { Paper } from './Paper.tsx';
import type { PapersView } from './paper-view.ts';

/** The papers of a pack: each opens here, and one press prints it alone. */
export function Papers({
  title,
  lead,
  show,
  hide,
  print: printWord,
  large,
  date,
  papers,
  head,
}: PapersView & { readonly head: Head }) {
  const [opened, setOpened] = useState<readonly string[]>([]);
  const [printed, setPrinted] = useState<string | null>(null);
  useLayoutEffect(() => {
    if (printed === null) return undefined;
    // Where printing waits for the answer and where it does not, what was hidden for it comes back when it is over.
    const done = (): void => setPrinted(null);
    addEventListener('afterprint', done, { once: true });
    print();
    return () => removeEventListener('afterprint', done);
  }, [printed]);
  return (
    <section class="pack-papers" aria-labelledby="papers-title" data-alone={printed !== null}>
      <h2 id="papers-title" class="not-printed">
        {title}
      </h2>
      <p class="small not-printed">{lead}</p>
      <p class="paper-switches not-printed">
        <label>
          <input type="checkbox" data-large autocomplete="off" />
          {large}
        </label>
      </p>
      {papers.map((paper) => {
        const { path, name, whom } = paper;
        const isOpen = opened.includes(path);
        return (
          <div key={path} class="pack-paper" data-alone={printed === path}>
            <div class="pack-paper-head not-printed">
              <h3>
                {name} <span class="paper-aside">{whom}</span>
              </h3>
              <button
                type="button"
                class="press"
                aria-expanded={isOpen}
                onClick={() => setOpened(isOpen ? opened.filter((each) => each !== path) : [...opened, path])}
              >
                {isOpen ? hide : show}
                <span class="unseen"> {name}</span>
              </button>
              <button type="button" class="press" data-print={path} onClick={() => setPrinted(path)}>
                {printWord}
                <span class="unseen"> {name}</span>
              </button>
            </div>
            {(isOpen || printed === path) && <Paper {...paper} head={head} date={date} />}
          </div>
        );
      })}
    </section>
  );
}
