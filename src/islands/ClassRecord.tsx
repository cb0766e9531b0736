import type { EstimateScore, EstimateWorking } from '../../shared/activities/scorers.ts';
import { say, tellNumber } from '../../shared/words/index.ts';
import type { EstimateTable } from '../stores/estimate.ts';
import { saidAs, unitName, type EstimateProps } from './estimate-view.ts';

interface Props extends Pick<EstimateProps, 'activity' | 'words' | 'statistics'> {
  readonly result: EstimateScore;
  readonly table: EstimateTable;
}

/** What a class said together: its middle and spread by the words its school knows, and its middle against its best guess. */
export function ClassRecord({ activity, words, statistics, result, table }: Props) {
  const told: EstimateWorking = result.working;
  if (told.how === 'hands') {
    const counts = activity.choices.map(({ id, label }) => ({ label, count: table.hands[id] ?? 0 }));
    return <CountBars rows={counts} />;
  }
  if (told.how === 'bins') {
    const rows = told.bins.map(({ from, to }, index) => ({
      label: `${tellNumber(from)}–${tellNumber(to)}`,
      count: told.counts[index] ?? 0,
    }));
    return <CountBars rows={rows} />;
  }
  if (told.how !== 'numbers') return null;
  const { crowd } = told;
  const unit = unitName(activity, words, 2);
  const lines = [
    say(words.classMiddle, { middle: saidAs(crowd.median), unit }),
    ...(statistics === 'middle' ? [] : [say(words.classMean, { mean: tellNumber(crowd.mean, 3), unit })]),
    say(words.classLeastMost, { least: saidAs(crowd.least), greatest: saidAs(crowd.greatest), unit }),
    ...(statistics === 'range' || statistics === 'quartiles'
      ? [say(words.classRange, { range: saidAs(crowd.greatest - crowd.least), unit })]
      : []),
    ...(statistics === 'quartiles' && crowd.quartiles !== null
      ? [
          say(words.classQuarters, {
            lower: saidAs(crowd.quartiles.lower),
            upper: saidAs(crowd.quartiles.upper),
            range: saidAs(crowd.quartiles.upper - crowd.quartiles.lower),
            unit,
          }),
        ]
      : []),
    say(words.classBetter, { count: crowd.nearerThanMedian, all: crowd.count }),
    crowd.bestDoublingsOff < crowd.medianDoublingsOff
      ? say(words.classBest, { best: saidAs(crowd.bestGuess), unit })
      : say(words.classBestNone),
  ];
  return (
    <ul class="class-lines">
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}

/** Hands as bars with their counts written on them. */
function CountBars({
  rows,
}: {
  readonly rows: readonly { readonly label: string; readonly count: number }[];
}) {
  const most = Math.max(1, ...rows.map(({ count }) => count));
  return (
    <ul class="count-bars">
      {rows.map(({ label, count }) => (
        <li key={label}>
          <span>{label}</span>
          <svg width="100%" height="22" aria-hidden="true">
            <rect class="count-bar" x="0" y="3" width={`${(100 * count) / most}%`} height="16" />
          </svg>
          <span class="numbers">{count}</span>
        </li>
      ))}
    </ul>
  );
}
