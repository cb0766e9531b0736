import { Barter } from '../islands/Barter.tsx';
import { BarterClass } from '../islands/BarterClass.tsx';
import { CompareChance } from '../islands/CompareChance.tsx';
import { ComparePlaces } from '../islands/ComparePlaces.tsx';
import { Estimate } from '../islands/Estimate.tsx';
import { Order } from '../islands/Order.tsx';
import { Sort } from '../islands/Sort.tsx';
import { BarterTalk } from './BarterTalk.tsx';
import { CompareTally } from './CompareTally.tsx';
import { EstimateHow } from './EstimateHow.tsx';
import { EstimateSubject } from './EstimateSubject.tsx';
import type { ActivityView, ScreenView } from './lesson-view.ts';
import { Shown } from './Shown.tsx';
import { WorkStrip } from './WorkStrip.tsx';

/** An activity of a pack, under its number and title. */
export function Activity({ id, number, title, minutes, question, view }: ActivityView) {
  const asked = question !== null && <p class="activity-question">{question}</p>;
  return (
    <section class="activity" id={id} aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>
        <span class="activity-number" aria-hidden="true">
          {number}
        </span>
        <span>
          {title}
          <span class="activity-minutes numbers">{minutes}</span>
        </span>
      </h2>
      {view.screen === 'order' ? (
        <div class="order-of">
          {asked}
          {view.of !== null && (
            <p class="order-find small quiet">
              <Shown {...view.of.picture} />
              <span>
                {view.of.text}{' '}
                <span class="numbers">
                  <span class="triangle">△</span> {view.of.number}
                </span>
              </span>
            </p>
          )}
        </div>
      ) : (
        asked
      )}
      <Screen id={id} view={view} />
    </section>
  );
}

function Screen({ id, view }: { readonly id: string; readonly view: ScreenView }) {
  if (view.screen === 'sort') return <Sort {...view.props} />;
  if (view.screen === 'order') return <Order {...view.props} />;
  if (view.screen === 'estimate')
    return (
      <>
        <EstimateSubject {...view.subject} />
        <Estimate
          {...view.props}
          how={<EstimateHow {...view.how} />}
          strip={view.strip === null ? null : <WorkStrip id={id} {...view.strip} />}
        />
      </>
    );
  if (view.screen === 'gathering' || view.screen === 'class')
    return (
      <>
        {view.screen === 'gathering' ? <Barter {...view.props} /> : <BarterClass {...view.props} />}
        <BarterTalk {...view.talk} />
      </>
    );
  return (
    <>
      {view.screen === 'places' && (
        <div class="compare-plans">
          {view.plans.map(({ picture, caption }) => (
            <figure key={caption} class="compare-plan">
              <Shown className="ink" {...picture} />
              <figcaption>{caption}</figcaption>
            </figure>
          ))}
        </div>
      )}
      <CompareTally {...view.tally} />
      {view.screen === 'places' ? <ComparePlaces {...view.props} /> : <CompareChance {...view.props} />}
    </>
  );
}
