import { scoreClassPlay } from '../../shared/activities/scorers.ts';
import { say } from '../../shared/words/index.ts';
import type { ClassTable } from '../stores/barter-class.ts';
import type { ClassProps } from './barter-class-view.ts';
import { noted } from '../stores/plays.ts';

interface Props extends Pick<ClassProps, 'activity' | 'words' | 'showsWorking'> {
  readonly table: ClassTable;
}

const twoPlaces = (value: number): string => value.toFixed(2).replace('-', '−');

/** What the class gained of what was possible, or why nothing can be said. */
export function BarterClassRecord({ activity, words, showsWorking, table }: Props) {
  const { pupils, gains } = table;
  const { score, guess, working } = scoreClassPlay(activity, noted({ activity: activity.id, pupils, gains }));
  if ('why' in working) {
    const reasons = {
      'more-than-pupils': words.classTooMany,
      'more-than-possible': words.classTooMuch,
    } as const;
    return (
      <p class="record-line">
        {say(
          working.why === 'more-than-pupils' || working.why === 'more-than-possible'
            ? reasons[working.why]
            : words.classNone,
        )}
      </p>
    );
  }
  const { total, bestTotal, betterOff } = working;
  return (
    <>
      <p class="record-line">
        {say(words.classLine, { total, best: bestTotal })}{' '}
        {say(words.classBetter, { better: betterOff, pupils })}
      </p>
      {showsWorking && score !== null && guess !== null && (
        <details class="working">
          <summary>{say(words.workingTitle)}</summary>
          <p class="numbers">
            {say(words.classWorking, {
              total,
              best: bestTotal,
              share: twoPlaces(total / bestTotal),
              guess: twoPlaces(guess),
              score: twoPlaces(score),
            })}
          </p>
        </details>
      )}
    </>
  );
}
