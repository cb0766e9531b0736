import { stationCards, type Plan, type StationCard } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { inOrder } from '../../shared/safety/index.ts';
import { duringLine } from '../../shared/telling/notes-line.ts';
import { catalogues } from '../../shared/words/index.ts';
import { setOut, stationFacts, stationName } from '../components/station-facts.ts';
import { runSteps } from '../components/station-run.ts';
import type { PrintBlock, PrintPart } from '../printing/print-view.ts';
import { controlSaid, heading, safetySources, section, straight, text } from './paper-parts.ts';

const words = catalogues.en.stationWords;

function cardBlocks(card: StationCard, library: Library): readonly PrintBlock[] {
  const { activity, hazards } = card;
  // Left out or changed for something milder is decided before the day, not at the station.
  const watched = hazards.map(({ name, controls }) => ({
    name,
    who: null,
    controls: inOrder(controls)
      .filter(({ level }) => level !== 'eliminate' && level !== 'substitute')
      .map(controlSaid),
    never: null,
    decides: null,
  }));
  return [
    { block: 'facts', facts: stationFacts(card, library) },
    {
      block: 'never',
      title: words.never,
      lines: [library.safety.caution.neverLine, ...new Set(hazards.flatMap(({ never }) => never))],
      after: hazards.length === 0 ? words.watchNothing : null,
    },
    {
      block: 'station',
      setOut: { title: words.setOut, items: setOut(card) },
      run: {
        title: words.run,
        steps: [...runSteps(card), `${words.close}: ${words.closeCount}`],
        after: activity === null ? null : duringLine(activity.kind),
        note: words.runNote,
      },
    },
    ...(watched.length === 0
      ? []
      : [
          heading(words.watch),
          text(words.watchLead),
          { block: 'hazards', hazards: watched, isForHelper: true } as const,
        ]),
  ];
}

/** A card for each station, as its helper reads it. */
export function stationParts(plan: Plan, library: Library): readonly PrintPart[] {
  const cards = stationCards(library.safety, plan);
  const hazards = [...new Set(cards.flatMap((card) => card.hazards))];
  return [
    straight('lead', [text(words.lead)]),
    ...cards.map((card, index) =>
      section(
        `station-${index + 1}`,
        stationName(card),
        cardBlocks(card, library),
        'paper-section station-card',
      ),
    ),
    ...(hazards.length === 0
      ? []
      : [section('sources', catalogues.en.safetyPapers.marksTitle, safetySources(library, hazards))]),
  ];
}
