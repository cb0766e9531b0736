import type { ComponentChildren } from 'preact';
import { tellNumber } from '../../shared/words/index.ts';
import { marksOn, percentOf, type ShownLine } from './line-scale.ts';

interface Props {
  readonly line: ShownLine;
  /** Marks of its own, drawn over the scale. */
  readonly children?: ComponentChildren;
}

/** The scale itself: a rule with its numbers. What it says stands in words beside it. */
export function LineScale({ line, children }: Props) {
  return (
    <svg class="line-scale" width="100%" height="44" aria-hidden="true">
      <line class="line-rule" x1="0" x2="100%" y1="14" y2="14" />
      {marksOn(line).map(({ value, isNumbered }) => (
        <g key={value}>
          <line
            class="line-mark"
            x1={percentOf(line, value)}
            x2={percentOf(line, value)}
            y1={isNumbered ? 6 : 10}
            y2={isNumbered ? 22 : 18}
          />
          {isNumbered && (
            <text class="line-number" x={percentOf(line, value)} y="38" text-anchor={anchorOf(line, value)}>
              {tellNumber(value)}
            </text>
          )}
        </g>
      ))}
      {children}
    </svg>
  );
}

/** Numbers at the very ends stay inside the drawing. */
const anchorOf = ({ from, to }: ShownLine, mark: number): 'start' | 'middle' | 'end' =>
  mark <= from * 1.01 ? 'start' : mark >= to * 0.99 ? 'end' : 'middle';
