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
      {marksOn(line).map((mark) => (
        <g key={mark}>
          <line class="line-mark" x1={percentOf(line, mark)} x2={percentOf(line, mark)} y1="8" y2="20" />
          <text class="line-number" x={percentOf(line, mark)} y="38" text-anchor={anchorOf(line, mark)}>
            {tellNumber(mark)}
          </text>
        </g>
      ))}
      {children}
    </svg>
  );
}

/** Numbers at the very ends stay inside the drawing. */
const anchorOf = ({ from, to }: ShownLine, mark: number): 'start' | 'middle' | 'end' =>
  mark <= from * 1.01 ? 'start' : mark >= to * 0.99 ? 'end' : 'middle';
