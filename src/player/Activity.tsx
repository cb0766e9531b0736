import type { ComponentType } from 'preact';
import { ClassScreen, GatheringScreen } from './BarterScreens.tsx';
import { ChanceScreen, PlacesScreen } from './CompareScreens.tsx';
import { EstimateScreen } from './EstimateScreen.tsx';
import { HandleScreen } from './HandleScreen.tsx';
import type { ActivityView, Around, ScreenView, Screens } from './lesson-view.ts';
import { OrderScreen } from './OrderScreen.tsx';
import { SortScreen } from './SortScreen.tsx';
import { TalkScreen } from './TalkScreen.tsx';

const screens: { readonly [Name in keyof Screens]: ComponentType<Screens[Name] & Around> } = {
  sort: SortScreen,
  order: OrderScreen,
  estimate: EstimateScreen,
  handle: HandleScreen,
  talk: TalkScreen,
  gathering: GatheringScreen,
  class: ClassScreen,
  places: PlacesScreen,
  chance: ChanceScreen,
};

/** An activity of a pack, under its number and title. */
export function Activity({ id, number, title, minutes, question, view }: ActivityView) {
  // The table pairs each name with its own screen; the type cannot follow a pair through a union.
  const Screen = screens[view.screen] as ComponentType<ScreenView & Around>;
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
      <Screen id={id} question={question} {...view} />
    </section>
  );
}
