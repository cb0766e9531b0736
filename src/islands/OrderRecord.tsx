import type { LaidScore, OrderStep } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import { laidCards, type Line } from '../stores/order.ts';
import { freeSentence, quotedList } from '../../shared/telling/free-sentence.ts';
import type { OrderProps } from './order-view.ts';
import { StepFace } from './StepFace.tsx';

interface Props extends Pick<OrderProps, 'activity' | 'words' | 'drawn' | 'showsWorking'> {
  readonly line: Line;
  readonly result: LaidScore;
}

/** Longer lists of what may change places are folded away. */
const SHORT_LIST = 4;

/** What you laid, where the record lets each step lie, why; then which steps may change places. */
export function OrderRecord({ activity, words, drawn, showsWorking, line, result }: Props) {
  const { pairs, kept, broken, brokenPairs, toMove } = result.working;
  const nameOf = (id: string): string => activity.steps.find((step) => step.id === id)?.name ?? id;
  const namesOf = (ids: readonly string[]): readonly string[] => ids.map(nameOf);
  const [firstBroken] = brokenPairs;
  const { validOrders, free } = activity;
  const orders =
    validOrders === null ? words.ordersMany : validOrders === 1 ? words.ordersAlone : words.orders;
  return (
    <>
      <p class="record-line">
        {broken === 0
          ? say(words.allRight, { count: pairs })
          : say(words.toMove, { count: toMove.length, kept, pairs })}{' '}
        {say(words.guessLine)}
      </p>
      {firstBroken !== undefined && (
        <p>{say(words.firstBroken, { early: nameOf(firstBroken[0]), late: nameOf(firstBroken[1]) })}</p>
      )}
      <table class="record">
        <thead>
          <tr>
            {[words.colCard, words.colYou, words.colRecord, words.colHow].map((column) => (
              <th key={say(column)} scope="col">
                {say(column)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {laidCards(line).map((card, index) => {
            const step = activity.steps.find(({ id }) => id === card);
            return step === undefined ? null : (
              <Row
                key={card}
                step={step}
                place={index + 1}
                after={namesOf(step.mustFollow)}
                isRight={!toMove.includes(card)}
                {...{ activity, words, drawn }}
              />
            );
          })}
        </tbody>
      </table>
      {showsWorking && <p>{say(orders, { count: validOrders ?? 0 })}</p>}
      <details class="working" open={free.length < SHORT_LIST}>
        <summary>{say(words.freeTitle)}</summary>
        {free.length === 0 && <p>{say(words.freeNone)}</p>}
        <ul class="free">
          {free.map(({ step, others, bothAfter, bothBefore }) => (
            <li key={`${step} ${others[0] ?? ''}`}>
              {freeSentence(words, {
                step: nameOf(step),
                others: namesOf(others),
                bothAfter: namesOf(bothAfter),
                bothBefore: namesOf(bothBefore),
              })}
            </li>
          ))}
        </ul>
      </details>
      {showsWorking && result.score !== null && (
        <details class="working">
          <summary>{say(words.workingTitle)}</summary>
          <p class="numbers">
            {say(words.workingLine, {
              pairs,
              kept,
              broken,
              score: result.score.toFixed(2).replace('-', '−'),
            })}
          </p>
        </details>
      )}
      <p class="small quiet">{say(words.sourceLine, { source: activity.source })}</p>
    </>
  );
}

interface RowProps extends Pick<OrderProps, 'activity' | 'words' | 'drawn'> {
  readonly step: OrderStep;
  readonly place: number;
  readonly after: readonly string[];
  readonly isRight: boolean;
}

function Row({ activity, words, drawn, step, place, after, isRight }: RowProps) {
  const { earliest, latest } = step;
  return (
    <tr>
      <th scope="row" class="record-find">
        <StepFace activity={activity.id} step={step} isDrawn={drawn.includes(step.id)} />
      </th>
      <td data-label={say(words.colYou)} class="numbers">
        {place}
      </td>
      <td data-label={say(words.colRecord)}>
        <div class="record-said">
          <span class="mark" data-mark={isRight ? 'same' : 'other'}>
            <span aria-hidden="true">{isRight ? '=' : '≠'}</span>
            <span class="unseen">{say(isRight ? words.same : words.other)}: </span>
          </span>
          <span>
            {say(earliest === latest ? words.roomOne : words.room, { earliest, latest })}
            <span class="record-also">
              {after.length === 0 ? say(words.anytime) : say(words.after, { steps: quotedList(after) })}
            </span>
          </span>
        </div>
      </td>
      <td data-label={say(words.colHow)}>{step.why}</td>
    </tr>
  );
}
