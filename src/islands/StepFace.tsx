import type { OrderStep } from '../../shared/activities/scorers.ts';
import { stepDrawingId } from './order-view.ts';

interface Props {
  readonly activity: string;
  readonly step: OrderStep;
  readonly isDrawn: boolean;
}

/** What stands on a step's card: its letter, its drawing where there is one, its words. */
export function StepFace({ activity, step, isDrawn }: Props) {
  return (
    <>
      <span class="step-letter">{step.letter}</span>
      {isDrawn && (
        <svg class="step-drawing" aria-hidden="true" focusable="false">
          <use href={`#${stepDrawingId(activity, step.id)}`} />
        </svg>
      )}
      <span class="step-name">{step.name}</span>
    </>
  );
}
