import { DrawnHere } from '../DrawnHere.tsx';
import type { Blocks } from './paper-view.ts';

/** A pit in plan, with its finds where they lay, and cut through: `PitDrawings.astro` in a pack. */
export function PitDrawn({ plan, finds, planCaption, section, sectionCaption }: Blocks['pit']) {
  return (
    <div class="pit-drawings">
      <figure>
        <svg viewBox={`0 0 ${plan.width} ${plan.height}`} aria-hidden="true">
          <use href={`#${plan.id}`} width={plan.width} height={plan.height} />
          {finds.map(({ drawn: { id, width, height }, xMm, yMm, turnDegrees, enlarged }) => (
            <g
              key={`${xMm} ${yMm}`}
              transform={`translate(${xMm} ${yMm}) rotate(${turnDegrees}) scale(${enlarged}) translate(${-width / 2} ${-height / 2})`}
            >
              <use href={`#${id}`} width={width} height={height} />
            </g>
          ))}
        </svg>
        <figcaption class="small">{planCaption}</figcaption>
      </figure>
      <figure>
        <DrawnHere {...section} className="pit-section" />
        <figcaption class="small">{sectionCaption}</figcaption>
      </figure>
    </div>
  );
}
