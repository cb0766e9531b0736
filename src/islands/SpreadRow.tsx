import { percentOf, type ShownLine } from './line-scale.ts';

interface Props {
  readonly line: ShownLine;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  /** Where the likeliest half lies. */
  readonly quarters?: readonly [lower: number, upper: number] | undefined;
  readonly middle?: number | undefined;
  /** What was said, drawn through every row. */
  readonly guess?: number | readonly [number, number] | null | undefined;
  readonly shape: 'spread' | 'said' | 'trial' | 'outside';
}

/** One row of a picture: a spread, a guess or a trial on the line. The words beside it say the same. */
export function SpreadRow({ line, low, high, quarters, middle, guess, shape }: Props) {
  const at = (value: number): string => percentOf(line, value);
  const guesses = guess === null || guess === undefined ? [] : typeof guess === 'number' ? [guess] : guess;
  return (
    <svg class="spread-row" width="100%" height="26" data-shape={shape} aria-hidden="true">
      {guesses.map((each) => (
        <line key={each} class="spread-guess" x1={at(each)} x2={at(each)} y1="0" y2="26" />
      ))}
      {low !== undefined && high !== undefined && (
        <line class="spread-whole" x1={at(low)} x2={at(high)} y1="13" y2="13" />
      )}
      {quarters !== undefined && (
        // The width is the share of the line between the two, as SVG writes it.
        <rect
          class="spread-half"
          x={at(quarters[0])}
          y="5"
          width={`${Math.max(0, Number.parseFloat(at(quarters[1])) - Number.parseFloat(at(quarters[0])))}%`}
          height="16"
        />
      )}
      {middle !== undefined && <Mark x={at(middle)} shape={shape} />}
    </svg>
  );
}

function Mark({ x, shape }: { readonly x: string; readonly shape: Props['shape'] }) {
  if (shape === 'spread') return <line class="spread-middle" x1={x} x2={x} y1="2" y2="24" />;
  if (shape === 'outside') {
    return (
      <svg x={x} y="13" overflow="visible">
        <path class="spread-outside" d="M0 -8 L8 0 L0 8 L-8 0 Z" />
      </svg>
    );
  }
  return <circle class={shape === 'said' ? 'spread-said' : 'spread-trial'} cx={x} cy="13" r="6" />;
}
