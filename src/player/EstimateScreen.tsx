import { Estimate } from '../islands/Estimate.tsx';
import { EstimateHow } from './EstimateHow.tsx';
import { EstimateSubject } from './EstimateSubject.tsx';
import type { Around, Screens } from './lesson-view.ts';
import { Question } from './Question.tsx';
import { WorkStrip } from './WorkStrip.tsx';

/** An estimate in a pack: `EstimateOnScreen.astro`. */
export function EstimateScreen({ id, question, props, subject, how, strip }: Screens['estimate'] & Around) {
  return (
    <>
      <Question question={question} />
      <EstimateSubject {...subject} />
      <Estimate
        {...props}
        how={<EstimateHow {...how} />}
        strip={strip === null ? null : <WorkStrip id={id} {...strip} />}
      />
    </>
  );
}
