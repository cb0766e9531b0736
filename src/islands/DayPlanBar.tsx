import type { PlanAim } from '../../shared/day/index.ts';
import { say, type Template } from '../../shared/words/index.ts';
import type { SheetWords } from './day-view.ts';
import type { Planning } from './use-day-planner.ts';

interface Props {
  readonly words: SheetWords;
  readonly canPlan: boolean;
  readonly hasPlan: boolean;
  readonly isWet: boolean;
  readonly seconds: number;
  readonly planning: Planning;
  readonly onSeconds: (seconds: number) => void;
  readonly onWet: (isWet: boolean) => void;
  readonly onPlan: () => void;
  readonly onStop: () => void;
}

const MOST_SECONDS = 600;

type Work = Extract<Planning, { readonly kind: 'work' }>;

/** How far it is, in one or two sentences. */
function tellWork(words: SheetWords, { seconds, progress }: Work): string {
  if (progress === null) return say(words.workingFirst, { seconds });
  const aims: Readonly<Record<PlanAim, Template>> = {
    moved: words.aimMoved,
    idle: words.aimIdle,
    uneven: words.aimUneven,
    walking: words.aimWalking,
    changes: words.aimChanges,
  };
  const { aim, minutes, bound } = progress;
  const working = say(words.working, { aim: say(aims[aim]), seconds });
  if (minutes === null) return working;
  const bounds = {
    idle: say(words.boundIdle, { minutes: bound.idleMinutes }),
    uneven: say(words.boundUneven, { minutes: bound.unevenMinutes }),
    walking: say(words.boundWalking, { minutes: bound.walkingMinutes }),
  };
  const least = aim === 'idle' || aim === 'uneven' ? bounds[aim] : bounds.walking;
  const best = say(words.bestSoFar, {
    idle: minutes.idleMinutes,
    uneven: minutes.unevenMinutes,
    walking: minutes.walkingMinutes,
    bound: least,
  });
  return `${working} ${best}`;
}

/** Make the plan, stop it, and how far it is. */
export function DayPlanBar(props: Props) {
  const { words, canPlan, hasPlan, isWet, seconds, planning } = props;
  const isAtWork = planning.kind === 'work';
  return (
    <div class="day-bar">
      <label class="day-check">
        <input
          type="checkbox"
          checked={isWet}
          onChange={(event) => props.onWet(event.currentTarget.checked)}
        />
        <span>{say(words.wet)}</span>
      </label>
      <label class="day-seconds">
        <span>{say(words.seconds)}</span>
        <input
          type="number"
          min={1}
          max={MOST_SECONDS}
          value={seconds}
          onChange={(event) => {
            const said = Math.round(event.currentTarget.valueAsNumber);
            if (said >= 1 && said <= MOST_SECONDS) props.onSeconds(said);
          }}
        />
      </label>
      <button
        type="button"
        class="press"
        data-weight="main"
        data-move={isAtWork ? 'stop' : 'plan'}
        aria-disabled={!isAtWork && !canPlan}
        onClick={() => (isAtWork ? props.onStop() : canPlan && props.onPlan())}
      >
        {say(isAtWork ? words.stop : hasPlan ? words.makeAgain : words.make)}
      </button>
      {isAtWork && <p class="day-work numbers">{tellWork(words, planning)}</p>}
      {planning.kind === 'unknown' && <p role="alert">{say(words.unknown)}</p>}
      {planning.kind === 'failed' && <p role="alert">{say(words.failed, { message: planning.message })}</p>}
    </div>
  );
}
