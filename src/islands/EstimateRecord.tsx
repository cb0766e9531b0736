import { recordChoice, type EstimateScore, type EstimateWorking } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import type { EstimateTable } from '../stores/estimate.ts';
import { ClassRecord } from './ClassRecord.tsx';
import { EstimatePicture } from './EstimatePicture.tsx';
import { verdictOf, workingOf } from './estimate-verdict.ts';
import { tellAmount, unitName, type EstimateProps } from './estimate-view.ts';

interface Props extends Pick<
  EstimateProps,
  'activity' | 'words' | 'showsWorking' | 'statistics' | 'status' | 'how' | 'strip'
> {
  readonly result: EstimateScore;
  readonly table: EstimateTable;
}

/** What you said, what the model says with its spread, what people measured, and how each number is known. */
export function EstimateRecord(props: Props) {
  const { activity, words, showsWorking, statistics, status, how, strip, result, table } = props;
  const { record, choices } = activity;
  const unit = unitName(activity, words, record.high);
  const working = showsWorking ? workingOf(words, result) : null;
  const nearest = table.how === 'choose' ? choices[recordChoice(activity)] : undefined;
  return (
    <>
      <p class="record-line">{verdictOf(activity, words, result)}</p>
      {table.way === 'class' && (
        <ClassRecord
          activity={activity}
          words={words}
          result={result}
          table={table}
          statistics={statistics}
        />
      )}
      <p class="record-model">
        {say(words.modelSays)}{' '}
        <strong>
          {say(words.modelMiddle, {
            middle: tellAmount(activity, record.middle),
            unit: unitName(activity, words, record.middle),
          })}
        </strong>
        .{' '}
        {say(words.modelSpread, {
          low: tellAmount(activity, record.low),
          lower: tellAmount(activity, record.lowerQuarter),
          upper: tellAmount(activity, record.upperQuarter),
          high: tellAmount(activity, record.high),
          unit,
        })}{' '}
        {nearest !== undefined && say(words.modelNearest, { what: nearest.label })}
      </p>
      <p class="small quiet">
        {say(words.statusLine, { status })}{' '}
        {record.without.length > 0 && say(words.without, { what: record.without.join(', ') })}
      </p>
      <h4>{say(words.pictureTitle)}</h4>
      <EstimatePicture activity={activity} words={words} table={table} median={medianOf(result)} />
      {working !== null && (
        <details class="working">
          <summary>{say(words.workingTitle)}</summary>
          <p class="numbers">{working}</p>
        </details>
      )}
      {how}
      {strip}
    </>
  );
}

function medianOf({ working }: EstimateScore): number | null {
  const told: EstimateWorking = working;
  return told.how === 'numbers' ? told.crowd.median : null;
}
