import type { PlanPlace } from '../../shared/drawing/index.ts';
import { say } from '../../shared/words/index.ts';
import type { SortProps } from './sort-view.ts';
import { drawingId } from './drawing-id.ts';
import { isKeyPress } from './key-press.ts';

interface Props extends Pick<SortProps, 'activity' | 'words' | 'plan'> {
  readonly hand: string | null;
  readonly gone: ReadonlySet<string>;
  /** Hands up: finds already counted stay pressable. */
  readonly isHands: boolean;
  /** `byKey` is true where the press came from a keyboard or a switch: focus then moves on. */
  readonly onLift: (find: string, byKey: boolean) => void;
}

/** Room around a find that can be pressed, in mm of the plan: at least 44 px on a narrow screen. */
const REACH_MM = 82;

/** The pit in plan with its finds; what is lifted leaves a dashed trace. */
export function PitView({ activity, words, plan, hand, gone, isHands, onLift }: Props) {
  if (plan === null) return null;
  return (
    <svg
      class="pit"
      viewBox={`0 0 ${plan.widthMm} ${plan.heightMm}`}
      role="group"
      aria-label={say(words.findsLabel)}
    >
      <use href={`#${plan.groundId}`} />
      {plan.places.map((place) => {
        const find = activity.finds.find(({ id }) => id === place.id);
        if (find === undefined) return null;
        const state =
          place.id === hand ? 'held' : gone.has(place.id) ? (isHands ? 'counted' : 'gone') : 'here';
        const isPressable = state !== 'gone';
        const lift = (byKey: boolean): void => {
          if (isPressable) onLift(place.id, byKey);
        };
        return (
          <g
            key={place.id}
            class="pit-find"
            data-find={place.id}
            data-state={state}
            role={isPressable ? 'button' : undefined}
            // Lower case: in SVG the name is set as it stands, and only this one can be focused.
            tabindex={isPressable ? 0 : undefined}
            aria-pressed={isPressable ? state === 'held' : undefined}
            aria-hidden={isPressable ? undefined : true}
            aria-label={say(words.findName, { number: find.smallFind, plain: find.plain })}
            onClick={() => lift(false)}
            onKeyDown={(event) => {
              if (!isKeyPress(event)) return;
              event.preventDefault();
              lift(true);
            }}
          >
            <circle class="pit-reach" cx={place.xMm} cy={place.yMm} r={REACH_MM} />
            {state === 'held' && <circle class="pit-halo" cx={place.xMm} cy={place.yMm} r={REACH_MM} />}
            {state === 'gone' && <circle class="pit-trace" cx={place.xMm} cy={place.yMm} r={REACH_MM / 3} />}
            <g
              class="pit-drawing"
              transform={`translate(${place.xMm} ${place.yMm}) rotate(${place.turnDegrees})`}
            >
              <use
                href={`#${drawingId(place.id)}`}
                x={-place.boxWidthMm / 2}
                y={-place.boxHeightMm / 2}
                width={place.boxWidthMm}
                height={place.boxHeightMm}
              />
            </g>
            <Tag number={find.smallFind} place={place} sideMm={plan.tagSideMm} />
          </g>
        );
      })}
    </svg>
  );
}

interface TagProps {
  readonly number: number;
  readonly place: PlanPlace;
  readonly sideMm: number;
}

/** A small-find number in its triangle, as on a plan, with a leader to the find. */
function Tag({ number, place, sideMm }: TagProps) {
  const { xMm, yMm } = place.tag;
  // An equilateral triangle about its middle: two thirds of the height above it, one third below.
  const heightMm = (sideMm * Math.sqrt(3)) / 2;
  return (
    <g class="pit-tag">
      <path class="pit-leader" d={`M${place.xMm} ${place.yMm}L${xMm} ${yMm}`} />
      <path
        class="pit-triangle"
        d={`M${xMm} ${yMm - (2 * heightMm) / 3}l${sideMm / 2} ${heightMm}h${-sideMm}z`}
      />
      <text x={xMm} y={yMm + heightMm / 4} text-anchor="middle">
        {number}
      </text>
    </g>
  );
}
