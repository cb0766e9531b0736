import { useStore } from '@nanostores/preact';
import { useEffect, useRef } from 'preact/hooks';
import { benchPapers as words } from '../../shared/words/en/bench-papers.ts';
import type { PapersDesk, VisitText } from './papers-desk.ts';
import { PapersChoices } from './PapersChoices.tsx';
import { PapersFrame } from './PapersFrame.tsx';
import { PapersList } from './PapersList.tsx';
import type { PaperListed } from './protocol.ts';

interface Props {
  /** Where the page of the papers is served. */
  readonly address: string;
  readonly desk: PapersDesk;
  readonly visit: VisitText;
  /** What can be printed; [] where an error stands in the way, null before the first check. */
  readonly listed: readonly PaperListed[] | null;
  /** The list is of this very text. */
  readonly isFresh: boolean;
}

/** The papers of the visit: which there are, looked at, counted and printed. */
export function PapersPanel({ address, desk, visit, listed, isFresh }: Props) {
  const { name, text, files } = visit;
  const ask = useStore(desk.$ask);
  const seen = useStore(desk.$seen);
  const told = useStore(desk.$told);
  const head = useRef<HTMLHeadingElement>(null);
  const isSound = isFresh && listed !== null && listed.length > 0;
  useEffect(() => {
    desk.take({ name, text, files }, isSound);
  }, [desk, name, text, files, isSound]);
  useEffect(() => {
    if (seen !== null) head.current?.focus();
  }, [seen]);
  const shown = listed?.find(({ path }) => path === seen) ?? null;
  const putAway = (): void => {
    desk.putAway();
    // Back where it was asked for.
    document.querySelector<HTMLElement>(`[data-look="${seen ?? ''}"]`)?.focus();
  };
  return (
    <>
      <p class="small quiet">{words.lead}</p>
      {listed === null && <p>{words.opening}</p>}
      {listed?.length === 0 && <p>{words.not}</p>}
      {listed !== null && listed.length > 0 && (
        <>
          <PapersChoices desk={desk} hasCards={listed.some(({ path }) => path === 'cards')} />
          <PapersList desk={desk} listed={listed} text={text} />
        </>
      )}
      <p role="status">{told}</p>
      {shown !== null && (
        <div class="papers-head">
          <h3 ref={head} tabIndex={-1}>
            {shown.name}
          </h3>
          <button type="button" class="press" onClick={() => desk.print(shown.path)}>
            {words.print}
            <span class="unseen"> {shown.name}</span>
          </button>
          <button type="button" class="press" onClick={putAway}>
            {words.away}
            <span class="unseen"> {shown.name}</span>
          </button>
        </div>
      )}
      {ask !== null && (
        <PapersFrame
          address={address}
          ask={ask}
          isSeen={shown !== null}
          answered={desk.answered}
          failed={desk.failed}
        />
      )}
    </>
  );
}
