import { CARD_PARTS, PUPIL_PARTS, sheetsOf } from '../../shared/activities/index.ts';
import type { StationCard } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { nearestAt, standsAt } from '../../shared/safety/index.ts';
import { catalogues, say } from '../../shared/words/index.ts';
import { exposureWords } from './exposure-words.ts';
import { typeLabel } from './type-label.ts';

const words = catalogues.en.stationWords;

/** A station's name: the activity's own, or what the rules call it. */
export const stationName = ({ activity, rule }: StationCard): string => activity?.title ?? rule.name;

/** What stands at the head of a station card, in rows of a name and what it is. */
export function stationFacts(
  card: StationCard,
  library: Library,
): readonly { readonly name: string; readonly value: string }[] {
  const { activity, station, rule, supervisors } = card;
  const { safety } = library;
  const row = (name: string, value: string | null) => (value === null ? [] : [{ name, value }]);
  const metres = standsAt(rule, station);
  const { edge, exposure } = nearestAt(safety, station);
  const supervised = say(words.supervisorsFor, {
    supervisors: say(words.supervisors, { count: supervisors }),
    children: station.childrenAtOnce,
  });
  return [
    ...row(
      words.time,
      activity === null ? words.timeDay : say(catalogues.en.site.minutesLong, { minutes: activity.minutes }),
    ),
    ...row(words.atOnce, say(words.atOnceChildren, { children: station.childrenAtOnce })),
    ...row(words.leads, rule.practitioners > 0 ? words.leadsPractitioner : words.leadsHelper),
    ...row(words.beside, supervised),
    ...row(words.frontRow, metres > 0 ? say(words.frontRowMetres, { metres }) : null),
    ...row(words.eyes, rule.eyeZoneM > 0 ? say(words.eyesMetres, { metres: rule.eyeZoneM }) : null),
    ...row(
      words.pieces,
      edge === null
        ? null
        : say(words.piecesLine, {
            types: (station.finds ?? []).map((type) => typeLabel(library, type)).join(', ') || rule.name,
            edge: safety.edges.find(({ id }) => id === edge)?.name ?? edge,
            exposure: exposureWords(exposure),
          }),
    ),
  ];
}

/** What is set out at a station: its papers, or the lists the rules ask for. */
export function setOut({ activity, kit }: StationCard): readonly string[] {
  if (activity === null) return kit.flatMap(({ items }) => items);
  const parts = sheetsOf(activity).map(({ part }) => part);
  const has = (list: readonly string[]): boolean => parts.some((part) => list.includes(part));
  return [
    ...kit.flatMap(({ items }) => items),
    ...(has(CARD_PARTS) ? [words.setOutCards] : []),
    ...(has(PUPIL_PARTS) ? [words.setOutSheets] : []),
    words.setOutAnswers,
  ];
}
