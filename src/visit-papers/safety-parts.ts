import { sheetsOf } from '../../shared/activities/index.ts';
import { handlingTables, lessonSetting, type Plan } from '../../shared/compile/index.ts';
import { youngestAge, type Library } from '../../shared/library/index.ts';
import { EXPOSURES } from '../../shared/safety/index.ts';
import { pieceWords } from '../../shared/telling/handle-words.ts';
import { CLASS_SIZES, lessonSafety } from '../../shared/telling/lesson-safety.ts';
import { becauseSentence } from '../../shared/words/en/safety.ts';
import { catalogues, say } from '../../shared/words/index.ts';
import { edgeRows } from '../components/edge-rows.ts';
import { exposureWords } from '../components/exposure-words.ts';
import { frameworkRows } from '../components/framework-rows.ts';
import { visitStationRows } from '../components/visit-station-rows.ts';
import type { GridCell, PrintBlock, PrintPart } from '../printing/print-view.ts';
import { hazardSaid, safetyFirst, safetySources, section, straight, text } from './paper-parts.ts';

const words = catalogues.en.safetyPapers;
const { handlePapers } = catalogues.en;

const number = (count: number | ''): GridCell => ({ text: String(count), isNumber: true });

function edges(plan: Plan, library: Library): PrintPart {
  const rows = edgeRows(plan, library);
  const blocks: readonly PrintBlock[] =
    rows.length === 0
      ? [text(words.edgesNone)]
      : [
          text(handlingTables(plan).length > 0 ? words.edgesLeadHand : words.edgesLead),
          {
            block: 'grid',
            look: 'stacks edges',
            heads: [words.edgeClass, words.edgeFinds, ...EXPOSURES.map(exposureWords)],
            rows: rows.map(({ className, types, ages }) => [
              { text: className },
              { text: types },
              ...ages.map((age): GridCell => ({ text: age, isNumber: true })),
            ]),
          },
          text(library.safety.edgeCheck.text, 'quiet'),
        ];
  return section('edges', words.edgesTitle, blocks);
}

/** The pieces that are met at tables. */
function piecesInHand(plan: Plan, { safety }: Library): readonly PrintPart[] {
  const pieces = plan.activities
    .flatMap(sheetsOf)
    .flatMap((sheet) => (sheet.part === 'handle-notes' ? sheet.pieces : []));
  if (handlingTables(plan).length === 0) return [];
  const { safetyPiece, safetyIs, safetyClass, safetyNear } = handlePapers;
  return [
    section(
      'pieces',
      handlePapers.safetyTitle,
      [
        text(handlePapers.safetyLead),
        {
          block: 'grid',
          look: '',
          heads: [safetyPiece, safetyIs, safetyClass, safetyNear],
          rows: pieces.map((piece) => [
            { text: `${piece.name} △ ${piece.smallFind}` },
            { text: pieceWords(piece).lies },
            { text: safety.edges.find(({ id }) => id === piece.edge)?.name ?? piece.edge },
            { text: pieceWords(piece).near },
          ]),
        },
      ],
      'paper-section keeps',
    ),
  ];
}

function stations(plan: Plan, { safety }: Library): readonly PrintPart[] {
  const visit = {
    setting: lessonSetting(plan),
    stations: [...(plan.visit?.stations ?? []), ...handlingTables(plan)],
  };
  if (visit.stations.length === 0) return [];
  const { station, stationChildren, stationEdge, stationRope, stationEyes, stationPractitioners } = words;
  const setting = visit.setting.replaceAll('-', ' ');
  return [
    section('stations', words.stationsTitle, [
      text(say(words.stationsLead, { setting, age: youngestAge(plan.bands) })),
      {
        block: 'grid',
        look: 'stacks visit-stations',
        heads: [station, stationChildren, stationEdge, stationRope, stationEyes, stationPractitioners],
        rows: visitStationRows(visit, safety).map((row) => [
          { text: row.name },
          number(row.children),
          { text: row.pieces },
          number(row.ropeMetres),
          number(row.eyesMetres),
          number(row.practitioners),
        ]),
      },
    ]),
  ];
}

function adults(plan: Plan, library: Library): PrintPart {
  const { rows, silent } = frameworkRows(plan, library);
  const hasStations = (plan.visit?.stations ?? []).length + handlingTables(plan).length > 0;
  return section('adults', words.adultsTitle, [
    text(hasStations ? words.adultsLeadVisit : words.adultsLead),
    {
      block: 'grid',
      look: 'stacks frameworks',
      heads: [
        words.framework,
        ...CLASS_SIZES.map((pupils) => say(words.adultsFor, { pupils })),
        words.frameworkStanding,
      ],
      rows: rows.map(({ name, isStrictest, adults: counts, standing, mark }) => [
        { text: name, ...(isStrictest ? { standsOut: words.strictest } : {}) },
        ...counts.map(number),
        { text: standing, aside: mark },
      ]),
    },
    ...(silent === null ? [] : [text(silent, 'quiet')]),
    text(words.adultsStrictest),
    {
      block: 'grid',
      look: 'keeps',
      heads: [words.adultsPupils, words.adultsLeast, words.adultsDecided],
      rows: CLASS_SIZES.map((pupils) => {
        const { totalAdults, because } = lessonSafety(plan, library, pupils).adults;
        const decided = because.filter(({ rule }) => rule === 'decided').map(becauseSentence);
        return [number(pupils), number(totalAdults), { text: decided.join(' ') }];
      }),
    },
  ]);
}

/** The safety sheet: edges, pieces in the hand, stations, adults, hazards and what is at hand. */
export function safetyParts(plan: Plan, library: Library): readonly PrintPart[] {
  const { hazards, kit } = lessonSafety(plan, library, CLASS_SIZES[0]);
  return [
    straight('first', [...safetyFirst(library), text(library.safety.caution.full)]),
    edges(plan, library),
    ...piecesInHand(plan, library),
    ...stations(plan, library),
    adults(plan, library),
    section('hazards', words.hazardsTitle, [
      text(words.hazardsLead),
      { block: 'hazards', hazards: hazards.map(hazardSaid) },
    ]),
    section('at-hand', words.kitTitle, [{ block: 'columns', items: kit.flatMap(({ items }) => items) }]),
    section('sources', words.marksTitle, safetySources(library, hazards)),
  ];
}
