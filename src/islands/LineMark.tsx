import { say, tellNumber } from '../../shared/words/index.ts';
import { saidAs, unitName, type EstimateProps } from './estimate-view.ts';
import { nearestStep, placeOf, stepFrom, valueAt, type ShownLine } from './line-scale.ts';

const FINE = 1000;

interface Props extends Pick<EstimateProps, 'activity' | 'words'> {
  readonly line: ShownLine;
  readonly label: string;
  readonly value: number | null;
  readonly onValue: (value: number) => void;
}

const inside = ({ from, to }: ShownLine, value: number): number => Math.max(from, Math.min(to, value));

/** A mark in numbers: typed, or stepped with two buttons. */
export function MarkField({ activity, words, line, label, value, onValue }: Props) {
  const step = (way: 1 | -1): void =>
    onValue(value === null ? nearestStep(line, valueAt(line, 0.5)) : stepFrom(line, value, way));
  return (
    <div class="mark-field">
      <label>
        <span class="mark-label">{label}</span>
        <input
          class="mark-number numbers"
          type="number"
          inputMode="decimal"
          step="any"
          min={line.from}
          max={line.to}
          value={value ?? ''}
          onChange={({ currentTarget }) => {
            const typed = currentTarget.valueAsNumber;
            if (Number.isFinite(typed) && typed > 0) onValue(inside(line, typed));
            currentTarget.value = value === null ? '' : String(value);
          }}
        />
      </label>
      <span class="mark-unit">{unitName(activity, words, value ?? 2)}</span>
      <span class="mark-steps">
        <button
          type="button"
          class="press"
          aria-label={say(words.fewerFor, { what: label })}
          onClick={() => step(-1)}
        >
          −
        </button>
        <button
          type="button"
          class="press"
          aria-label={say(words.moreFor, { what: label })}
          onClick={() => step(1)}
        >
          +
        </button>
      </span>
    </div>
  );
}

/** The same mark on the line: moved by finger, mouse or arrow keys. */
export function MarkSlider({ activity, words, line, label, value, onValue }: Props) {
  const shown = value ?? valueAt(line, 0.5);
  const text =
    value === null
      ? say(words.noneYet)
      : say(words.amount, { number: saidAs(value), unit: unitName(activity, words, value) });
  return (
    <input
      class="line-range"
      type="range"
      min={0}
      max={FINE}
      step={1}
      value={Math.round(FINE * placeOf(line, shown))}
      data-state={value === null ? 'unset' : 'set'}
      aria-label={`${label} (${tellNumber(line.from)}–${tellNumber(line.to)})`}
      aria-valuetext={text}
      onInput={({ currentTarget }) =>
        onValue(nearestStep(line, valueAt(line, currentTarget.valueAsNumber / FINE)))
      }
      onKeyDown={(event) => {
        const way = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[event.key];
        if (way !== 1 && way !== -1) return;
        event.preventDefault();
        onValue(stepFrom(line, shown, way));
      }}
    />
  );
}
