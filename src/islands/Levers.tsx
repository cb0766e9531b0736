import { cellAt } from '../../shared/activities/scorers.ts';
import { say, tellNumber } from '../../shared/words/index.ts';
import type { EstimateStore, EstimateTable } from '../stores/estimate.ts';
import { guessOn } from './guess-on.ts';
import { tellAmount, unitName, type EstimateProps } from './estimate-view.ts';
import { LineScale } from './LineScale.tsx';
import { SpreadRow } from './SpreadRow.tsx';

interface Props extends Pick<EstimateProps, 'activity' | 'words' | 'cells' | 'leverLine'> {
  readonly table: EstimateTable;
  readonly store: EstimateStore;
  readonly onSaid: (text: string) => void;
}

/** Change size, stone, grinder, maker: the spread answers at once, and what was said stays marked. */
export function Levers({ activity, words, cells, leverLine, table, store, onSaid }: Props) {
  const { levers, record } = activity;
  const home = levers.map(({ at }) => at);
  const tell = (places: readonly number[]): string => {
    const cell = cells[cellAt(levers, places)] ?? null;
    if (cell === null) return say(words.leversNone);
    const [low, middle, high] = cell;
    const text = say(words.leversText, {
      low: tellAmount(activity, low),
      middle: tellAmount(activity, middle),
      high: tellAmount(activity, high),
      unit: unitName(activity, words, high),
    });
    const times = middle / record.middle;
    return `${text} ${Math.abs(times - 1) < 0.01 ? say(words.leversSame) : say(words.leversTimes, { times: tellNumber(times) })}`;
  };
  const cell = cells[cellAt(levers, table.levers)] ?? null;
  const guess = guessOn(activity, table);
  const move = (lever: number, option: number): void => {
    store.moveLever(lever, option);
    onSaid(tell(store.$table.get().levers));
  };
  return (
    <section class="levers" aria-labelledby={`${activity.id}-levers`}>
      <h4 id={`${activity.id}-levers`}>{say(words.leversTitle)}</h4>
      <p>{say(words.leversLead)}</p>
      <div class="levers-set">
        {levers.map(({ id, options }, lever) => {
          const place = table.levers[lever] ?? 0;
          const name = say(words[leverWord(id)]);
          const last = options.length - 1;
          return (
            <div key={id} class="lever" role="group" aria-label={name}>
              <span class="lever-name small quiet">{name}</span>
              <button
                type="button"
                class="press"
                aria-label={say(words.leverBefore, { what: name })}
                aria-disabled={place === 0}
                onClick={() => place > 0 && move(lever, place - 1)}
              >
                ◂
              </button>
              <span class="lever-value">{options[place]?.label}</span>
              <button
                type="button"
                class="press"
                aria-label={say(words.leverNext, { what: name })}
                aria-disabled={place === last}
                onClick={() => place < last && move(lever, place + 1)}
              >
                ▸
              </button>
              <svg class="lever-track" width="100%" height="10" aria-hidden="true">
                {options.map((option, index) => (
                  <circle
                    key={option.id}
                    class={index === place ? 'lever-here' : 'lever-there'}
                    cx={`${(100 * (index + 0.5)) / options.length}%`}
                    cy="5"
                    r={index === place ? 4.5 : 2.5}
                  />
                ))}
              </svg>
            </div>
          );
        })}
      </div>
      <p class="levers-text numbers">{tell(table.levers)}</p>
      <figure class="picture">
        <p class="small">{say(words.rowModel)}</p>
        <SpreadRow
          line={leverLine}
          low={record.low}
          high={record.high}
          middle={record.middle}
          guess={guess}
          shape="spread"
        />
        <p class="small">{say(words.rowChanged)}</p>
        <SpreadRow
          line={leverLine}
          low={cell?.[0]}
          high={cell?.[2]}
          middle={cell?.[1]}
          guess={guess}
          shape="spread"
        />
        <LineScale line={leverLine} />
      </figure>
      <button
        type="button"
        class="press"
        aria-disabled={table.levers.every((place, index) => place === home[index])}
        onClick={() => {
          store.change({ levers: home });
          onSaid(tell(home));
        }}
      >
        {say(words.leversReset)}
      </button>
    </section>
  );
}

type LeverName = Props['activity']['levers'][number]['id'];

const leverWord = (id: LeverName): `lever${Capitalize<LeverName>}` =>
  // The words have one entry for each lever.
  `lever${id.charAt(0).toUpperCase()}${id.slice(1)}` as `lever${Capitalize<LeverName>}`;
