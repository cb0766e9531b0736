import { useStore } from '@nanostores/preact';
import { benchPapers as words } from '../../shared/words/en/bench-papers.ts';
import { PAPER_SIZES } from '../printing/print-view.ts';
import type { PapersDesk } from './papers-desk.ts';

interface Props {
  readonly desk: PapersDesk;
  readonly hasCards: boolean;
}

/** How the papers are printed, and the presses for all of them. */
export function PapersChoices({ desk, hasCards }: Props) {
  const { size, isLarge, hasBacks } = useStore(desk.$choices);
  return (
    <>
      <ul class="paper-switches">
        <li class="papers-size">
          <label for="papers-size">{words.size}</label>
          <select
            id="papers-size"
            value={size}
            onChange={({ currentTarget }) => {
              const chosen = PAPER_SIZES.find((each) => each === currentTarget.value);
              if (chosen !== undefined) desk.choose({ size: chosen });
            }}
          >
            {PAPER_SIZES.map((each) => (
              <option key={each} value={each}>
                {each}
              </option>
            ))}
          </select>
        </li>
        <li>
          <label>
            <input
              type="checkbox"
              checked={isLarge}
              onChange={({ currentTarget }) => {
                desk.choose({ isLarge: currentTarget.checked });
              }}
            />
            <span>
              {words.large} <span class="small quiet">{words.largeHow}</span>
            </span>
          </label>
        </li>
        {hasCards && (
          <li>
            <label>
              <input
                type="checkbox"
                checked={hasBacks}
                onChange={({ currentTarget }) => {
                  desk.choose({ hasBacks: currentTarget.checked });
                }}
              />
              <span>
                {words.backs} <span class="small quiet">{words.backsHow}</span>
              </span>
            </label>
          </li>
        )}
      </ul>
      <div class="lead-acts">
        <button type="button" class="press" onClick={() => desk.print(null)}>
          {words.all}
        </button>
        <button type="button" class="press" onClick={desk.count}>
          {words.count}
        </button>
        <span class="small quiet">{words.allHow}</span>
      </div>
    </>
  );
}
