import type { DayEdit } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import type { Made } from '../stores/day-schema.ts';
import { DayCrewGrid } from './DayCrewGrid.tsx';
import { DayGrid } from './DayGrid.tsx';
import { DayLate } from './DayLate.tsx';
import { DayLinks } from './DayLinks.tsx';
import type { SheetWords } from './day-view.ts';

interface Props {
  readonly words: SheetWords;
  readonly made: Made;
  readonly isStale: boolean;
  readonly links: { readonly sheets: string; readonly now: string; readonly dropIn: string };
  readonly onPin: (edits: readonly DayEdit[]) => void;
  readonly onLate: (edits: readonly DayEdit[], fromSlot: number) => void;
}

/** How good the plan is, and how good a rotation made by hand would be. */
function Worth({ words, made }: Pick<Props, 'words' | 'made'>) {
  const { status, minutes, bound, movedCells, leftOut, rotation } = made;
  const totals = {
    idle: minutes.idleMinutes,
    uneven: minutes.unevenMinutes,
    walking: minutes.walkingMinutes,
  };
  return (
    <div class="day-worth numbers">
      {leftOut.length > 0 && <p>{say(words.leftOut, { names: leftOut.join(', ') })}</p>}
      <p>{say(words.totals, totals)}</p>
      <p>{say(words[status], { idle: bound.idleMinutes, walking: bound.walkingMinutes })}</p>
      {movedCells !== null && <p>{say(words.moved, { count: movedCells })}</p>}
      {rotation !== null && <p>{tellRotation(words, made, rotation)}</p>}
    </div>
  );
}

function tellRotation(words: SheetWords, { minutes }: Made, rotation: NonNullable<Made['rotation']>): string {
  if (rotation.kind !== 'keeps')
    return say(rotation.kind === 'too-few-slots' ? words.rotationSlots : words.rotationBreaks);
  const hand = rotation.minutes;
  const waits = hand.idleMinutes - minutes.idleMinutes;
  const walks = hand.walkingMinutes - minutes.walkingMinutes;
  if (waits === 0 && walks <= 0 && hand.unevenMinutes === minutes.unevenMinutes)
    return say(words.rotationSame, { walking: hand.walkingMinutes });
  const saved =
    waits > 0 ? say(words.rotationWaits, { minutes: waits }) : say(words.rotationWalks, { minutes: walks });
  return say(words.rotationBeats, { idle: hand.idleMinutes, walking: hand.walkingMinutes, saved });
}

/** A finished plan: its tables, what it comes to, and everything that may be done with it. */
export function DayOutcome({ words, made, isStale, links, onPin, onLate }: Props) {
  return (
    <>
      {isStale && <p class="day-stale">{say(words.stale)}</p>}
      <Worth words={words} made={made} />
      <p class="small quiet">{say(words.aboutPlans)}</p>
      <DayGrid words={words} made={made} onPin={onPin} />
      {made.day.adults.length > 0 && <DayCrewGrid words={words} made={made} />}
      <DayLate words={words} made={made} onLate={onLate} />
      <DayLinks words={words} made={made} links={links} />
    </>
  );
}
