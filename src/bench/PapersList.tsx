import { useStore } from '@nanostores/preact';
import { benchPapers as words, paperPurposes } from '../../shared/words/en/bench-papers.ts';
import { say } from '../../shared/words/index.ts';
import type { PapersDesk } from './papers-desk.ts';
import type { PaperListed } from './protocol.ts';

interface Props {
  readonly desk: PapersDesk;
  readonly listed: readonly PaperListed[];
  /** Sheets are told only where they were counted of this text. */
  readonly text: string;
}

/** The papers, each with what it is for, a press to look at it and one to print it. */
export function PapersList({ desk, listed, text }: Props) {
  const seen = useStore(desk.$seen);
  const counted = useStore(desk.$counted);
  const { size, isLarge } = useStore(desk.$choices);
  const isCounted = counted?.text === text && counted.size === size && counted.isLarge === isLarge;
  return (
    <ul class="papers-list">
      {listed.map(({ path, name, whom, copies }) => {
        const sheets = isCounted ? counted.sheets.get(path) : undefined;
        return (
          <li key={path}>
            <div>
              <h3>{name}</h3>
              <p>{paperPurposes[path]}</p>
              <p class="small quiet">
                {say(words.line, { whom, copies })}
                {sheets !== undefined && ` ${say(words.sheets, { count: sheets })}`}
              </p>
            </div>
            <div class="lead-acts">
              <button
                type="button"
                class="press"
                data-look={path}
                aria-expanded={seen === path}
                onClick={() => {
                  if (seen === path) desk.putAway();
                  else desk.look(path);
                }}
              >
                {words.look}
                <span class="unseen"> {name}</span>
              </button>
              <button type="button" class="press" data-print={path} onClick={() => desk.print(path)}>
                {words.print}
                <span class="unseen"> {name}</span>
              </button>
            </div>
          </li>
        );
      })}
    </ul>
  );
}
