import { stationCards, type Plan, type StationCard } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { edgeAtStation, standsAt } from '../../shared/safety/index.ts';
import { catalogues, say, signWords } from '../../shared/words/index.ts';
import { lessonSafety } from '../../shared/telling/lesson-safety.ts';
import { stationName } from './station-facts.ts';

const words = catalogues.en.stationWords;

/** Words to hang: what they say large, a line beneath, where, and the registered sign they do not replace. */
export interface SignToHang {
  readonly large: string;
  readonly beneath: string | null;
  readonly where: string;
  readonly number: string | null;
}

function beneathStation(card: StationCard, library: Library): string {
  const { activity, rule, station } = card;
  if (activity !== null) return say(words.signMinutes, { minutes: activity.minutes });
  if (standsAt(rule, station) > 0) return `${words.signRope}. ${words.signOnlyExpert}`;
  const edge = edgeAtStation(library.safety, station);
  if (edge !== null && edge !== 'E0') return words.signSharp;
  return rule.kit.includes('kit-wash') ? words.signHands : words.signTable;
}

/** One for each station, then one for each registered sign the hazards call for that words can say. */
export function signsOf(plan: Plan, library: Library): readonly SignToHang[] {
  const { signs } = lessonSafety(plan, library, 30);
  return [
    ...stationCards(library.safety, plan).map((card) => ({
      large: stationName(card),
      beneath: beneathStation(card, library),
      where: words.signStation,
      number: null,
    })),
    ...signs.flatMap(({ id, useFor }) => {
      const large = signWords[id];
      return large === undefined ? [] : [{ large, beneath: null, where: useFor, number: id }];
    }),
  ];
}
