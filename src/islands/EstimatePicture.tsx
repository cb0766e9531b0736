import type { EstimateTrial } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import type { EstimateTable } from '../stores/estimate.ts';
import { DotPile } from './DotPile.tsx';
import { guessOn } from './guess-on.ts';
import { saidAs, tellAmount, unitName, type EstimateProps, type EstimateWords } from './estimate-view.ts';
import { LineScale } from './LineScale.tsx';
import { SpreadRow } from './SpreadRow.tsx';

interface Props extends Pick<EstimateProps, 'activity' | 'words'> {
  readonly table: EstimateTable;
  /** The middle of a class's numbers. */
  readonly median: number | null;
}

/** The model, what was said and every published trial on one scale; each row says in words what it draws. */
export function EstimatePicture({ activity, words, table, median }: Props) {
  const { line, record, trials } = activity;
  const own = guessOn(activity, table);
  const guess = own ?? median;
  const chosen = table.how === 'choose' ? activity.choices.find(({ id }) => id === table.choice) : undefined;
  const isPile = table.way === 'class' && table.how !== 'choose' && table.classBy === 'numbers';
  return (
    <figure class="picture" aria-label={say(words.pictureTitle)}>
      <ul class="picture-rows">
        {own !== null && (
          <li>
            <p>
              {say(words.rowYou)}: {chosen?.label ?? amountOf(activity, words, own)}
            </p>
            {typeof own === 'number' ? (
              <SpreadRow line={line} middle={own} guess={own} shape="said" />
            ) : (
              <SpreadRow line={line} low={own[0]} high={own[1]} guess={own} shape="said" />
            )}
          </li>
        )}
        {isPile && (
          <li>
            <p>{say(words.rowClass)}</p>
            <DotPile line={line} numbers={table.numbers} />
            {median !== null && <SpreadRow line={line} middle={median} guess={median} shape="said" />}
          </li>
        )}
        <li>
          <p>
            {say(words.textModel, {
              low: tellAmount(activity, record.low),
              high: tellAmount(activity, record.high),
              middle: tellAmount(activity, record.middle),
              unit: unitName(activity, words, record.high),
            })}
          </p>
          <SpreadRow
            line={line}
            low={record.low}
            high={record.high}
            quarters={[record.lowerQuarter, record.upperQuarter]}
            middle={record.middle}
            guess={guess}
            shape="spread"
          />
        </li>
        {trials.map((trial) => (
          <li key={trial.id}>
            <p>
              {trial.about}: {trialAmount(activity, words, trial)}
              <span class="quiet">
                ; {say(placeWords(words, trial))}
                {trial.assumed !== null && `; ${say(words.trialAssumed, { what: trial.assumed })}`}
              </span>
            </p>
            <SpreadRow
              line={line}
              {...endsOf(trial)}
              guess={guess}
              shape={trial.place === 'above' || trial.place === 'below' ? 'outside' : 'trial'}
            />
          </li>
        ))}
      </ul>
      <LineScale line={line} />
      {trials.length === 0 && <figcaption class="small quiet">{say(words.trialsNone)}</figcaption>}
    </figure>
  );
}

function amountOf(
  activity: Props['activity'],
  words: EstimateWords,
  guess: number | readonly [number, number],
): string {
  return typeof guess === 'number'
    ? say(words.amount, { number: saidAs(guess), unit: unitName(activity, words, guess) })
    : say(words.fromTo, {
        low: saidAs(guess[0]),
        high: saidAs(guess[1]),
        unit: unitName(activity, words, guess[1]),
      });
}

function endsOf({ low, value, high }: EstimateTrial): {
  readonly low?: number;
  readonly high?: number;
  readonly middle?: number;
} {
  const only = value ?? (low === null || high === null ? (low ?? high) : null);
  return {
    ...(low !== null && high !== null ? { low, high } : {}),
    ...(only === null ? {} : { middle: only }),
  };
}

function trialAmount(
  activity: Props['activity'],
  words: EstimateWords,
  { low, value, high }: EstimateTrial,
): string {
  const unit = unitName(activity, words, high ?? value ?? low ?? 2);
  if (low !== null && high !== null)
    return say(words.trialBetween, { low: saidAs(low), high: saidAs(high), unit });
  if (value !== null) return say(words.trialAbout, { value: saidAs(value), unit });
  return high === null
    ? say(words.trialAtLeast, { value: saidAs(low ?? 0), unit })
    : say(words.trialUpTo, { value: saidAs(high), unit });
}

const placeWords = (words: EstimateWords, { place }: EstimateTrial): EstimateWords['trialInside'] =>
  place === null
    ? words.trialUnplaced
    : { inside: words.trialInside, above: words.trialAbove, below: words.trialBelow }[place];
