import { useRef } from 'preact/hooks';
import { barLength, moveEnd, type LengthBar, type Spot } from '../../../shared/photo/index.ts';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { say } from '../../../shared/words/index.ts';
import type { PictureShown } from './address-of.ts';

interface Props {
  readonly picture: PictureShown;
  readonly bar: LengthBar | null;
  /** What the record says; null where no find is chosen yet. */
  readonly findLengthMm: number | null;
  readonly setBar: (bar: LengthBar) => void;
  readonly describedBy: string;
}

const STEPS: Readonly<Record<string, Spot>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};
/** A press of an arrow key moves by this share of the picture's longer side. */
const STEP_SHARE = 0.01;

const part = (value: number, whole: number): string => `${(value / whole) * 100}%`;

/** How long the bar is; with the find's own length, what the whole picture shows: so that a wrong end is noticed. */
function tellLength(bar: LengthBar, widthPx: number, findLengthMm: number | null): string {
  const points = barLength(bar);
  if (findLengthMm === null) return say(words.barLength, { points });
  const width = Math.round((widthPx * findLengthMm) / points);
  return say(words.barLengthKnown, { points, width });
}

/** A picture with a bar over it, whose two ends are dragged, or moved by arrow keys, to the ends of the find. */
export function LengthOver({ picture, bar, findLengthMm, setBar, describedBy }: Props) {
  const over = useRef<HTMLDivElement>(null);
  /** From the pointer to the middle of the ring it holds, in picture points. */
  const hold = useRef<Spot | null>(null);
  const { widthPx, heightPx } = picture;
  const spotUnder = ({ clientX, clientY }: PointerEvent): Spot => {
    const box = over.current?.getBoundingClientRect();
    if (box === undefined || box.width === 0) return { x: 0, y: 0 };
    const scale = widthPx / box.width;
    return { x: (clientX - box.left) * scale, y: (clientY - box.top) * scale };
  };
  return (
    <div class="photo-picture" style={{ '--wide': widthPx / heightPx }}>
      <div class="photo-over" ref={over}>
        <img src={picture.address} width={widthPx} height={heightPx} alt="" draggable={false} />
        {bar !== null && (
          <>
            <svg viewBox={`0 0 ${widthPx} ${heightPx}`} aria-hidden="true" class="photo-bar">
              {['under', 'over'].map((which) => (
                <line key={which} data-line={which} x1={bar[0].x} y1={bar[0].y} x2={bar[1].x} y2={bar[1].y} />
              ))}
            </svg>
            {bar.map((spot, index) => {
              const end = index === 0 ? 0 : 1;
              return (
                <button
                  key={end}
                  type="button"
                  class="photo-ring"
                  role="slider"
                  aria-label={end === 0 ? words.barFirst : words.barSecond}
                  aria-describedby={describedBy}
                  aria-valuemin={0}
                  aria-valuemax={widthPx}
                  aria-valuenow={Math.round(spot.x)}
                  aria-valuetext={say(words.barPlace, { x: Math.round(spot.x), y: Math.round(spot.y) })}
                  style={{ left: part(spot.x, widthPx), top: part(spot.y, heightPx) }}
                  onKeyDown={(event) => {
                    const step = STEPS[event.key];
                    if (step === undefined) return;
                    event.preventDefault();
                    const by = event.shiftKey ? 1 : Math.max(1, Math.max(widthPx, heightPx) * STEP_SHARE);
                    setBar(moveEnd(bar, end, { x: spot.x + step.x * by, y: spot.y + step.y * by }, picture));
                  }}
                  onPointerDown={(event) => {
                    const under = spotUnder(event);
                    hold.current = { x: spot.x - under.x, y: spot.y - under.y };
                    event.currentTarget.setPointerCapture(event.pointerId);
                  }}
                  onPointerMove={(event) => {
                    if (hold.current === null) return;
                    const under = spotUnder(event);
                    const to = { x: under.x + hold.current.x, y: under.y + hold.current.y };
                    setBar(moveEnd(bar, end, to, picture));
                  }}
                  onPointerUp={() => {
                    hold.current = null;
                  }}
                  onPointerCancel={() => {
                    hold.current = null;
                  }}
                />
              );
            })}
          </>
        )}
      </div>
      {bar !== null && <p class="small">{tellLength(bar, widthPx, findLengthMm)}</p>}
    </div>
  );
}
