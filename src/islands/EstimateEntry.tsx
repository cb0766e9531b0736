import { say } from '../../shared/words/index.ts';
import { ClassEntry } from './ClassEntry.tsx';
import { Countable } from './Countable.tsx';
import { saidAs, tellTime, unitName, type EntryProps, type EstimateProps } from './estimate-view.ts';
import { percentOf, valueAt } from './line-scale.ts';
import { LineScale } from './LineScale.tsx';
import { MarkField, MarkSlider } from './LineMark.tsx';

/** Where the answer is given, in the way that is asked. */
export function EstimateEntry(props: EntryProps) {
  const { how, way } = props.table;
  if (how === 'choose') return <ChooseAmong {...props} />;
  if (way === 'class') return <ClassEntry {...props} />;
  return how === 'number' ? <OneNumber {...props} /> : <LeastAndMost {...props} />;
}

function ChooseAmong({ activity, words, table, store, onSaid }: EntryProps) {
  return (
    <ul class="choices">
      {activity.choices.map(({ id, label, hours }) => (
        <li key={id}>
          {table.way === 'class' ? (
            <div class="choice">
              <span class="choice-name">{label}</span>
              <Countable
                words={words}
                what={label}
                count={table.hands[id] ?? 0}
                onCount={(count) => store.countHands(id, count)}
              />
            </div>
          ) : (
            <button
              type="button"
              class="choice"
              aria-pressed={table.choice === id}
              onClick={() => {
                store.change({ choice: id });
                onSaid(say(words.saidChosen, { what: label }));
              }}
            >
              <span class="choice-name">{label}</span>
              {hours <= (activity.wholeTo ?? hours) && (
                <span class="small numbers choice-hours">{tellTime(words, activity, hours)}</span>
              )}
            </button>
          )}
        </li>
      ))}
    </ul>
  );
}

function OneNumber({ activity, words, table, store, onSaid }: EntryProps) {
  const { line } = activity;
  const { number } = table;
  const mark = {
    activity,
    words,
    line,
    value: number,
    label: say(words.numberLabel, { unit: unitName(activity, words, 2) }),
    onValue: (value: number) => {
      store.change({ number: value });
      onSaid(say(words.saidNumber, { number: saidAs(value), unit: unitName(activity, words, value) }));
    },
  };
  return (
    <div class="line-entry">
      <MarkField {...mark} />
      <div class="line-rail">
        <MarkSlider {...mark} />
        <LineScale line={line}>
          {number !== null && (
            <line
              class="line-said"
              x1={percentOf(line, number)}
              x2={percentOf(line, number)}
              y1="0"
              y2="20"
            />
          )}
        </LineScale>
      </div>
      <Landmarks activity={activity} words={words} />
    </div>
  );
}

function LeastAndMost({ activity, words, table, store, onSaid }: EntryProps) {
  const { line } = activity;
  const { lower, upper } = table;
  const put = (next: { readonly lower: number | null; readonly upper: number | null }): void => {
    store.change(next);
    if (next.lower === null || next.upper === null) return;
    onSaid(
      say(next.lower > next.upper ? words.crossed : words.saidInterval, {
        low: saidAs(next.lower),
        high: saidAs(next.upper),
        unit: unitName(activity, words, next.upper),
      }),
    );
  };
  const least = {
    activity,
    words,
    line,
    value: lower,
    label: say(words.leastLabel),
    onValue: (value: number) => put({ lower: value, upper }),
  };
  const most = {
    ...least,
    value: upper,
    label: say(words.mostLabel),
    onValue: (value: number) => put({ lower, upper: value }),
  };
  const from = lower ?? valueAt(line, 0.5);
  const to = upper ?? valueAt(line, 0.5);
  return (
    <div class="line-entry">
      <div class="mark-pair">
        <MarkField {...least} />
        <MarkField {...most} />
      </div>
      <div class="line-rail">
        <MarkSlider {...least} />
        <LineScale line={line}>
          {from < to && (
            <line class="line-span" x1={percentOf(line, from)} x2={percentOf(line, to)} y1="14" y2="14" />
          )}
        </LineScale>
        <MarkSlider {...most} />
      </div>
      {lower !== null && upper !== null && lower > upper && <p class="small">{say(words.crossed)}</p>}
      <Landmarks activity={activity} words={words} />
    </div>
  );
}

/** Comparisons along the line, in words. */
function Landmarks({ activity, words }: Pick<EstimateProps, 'activity' | 'words'>) {
  if (activity.landmarks.length === 0) return null;
  return (
    <ul class="landmarks small quiet">
      {activity.landmarks.map(({ id, label, hours }) => (
        <li key={id}>{say(words.landmarkLine, { label, time: tellTime(words, activity, hours) })}</li>
      ))}
    </ul>
  );
}
