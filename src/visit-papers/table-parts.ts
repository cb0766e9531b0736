import { sheetsOf, type Sheet } from '../../shared/activities/index.ts';
import type { Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { cautionWords } from '../../shared/telling/caution-words.ts';
import { holdSentences } from '../../shared/telling/handle-hold.ts';
import { pieceWords } from '../../shared/telling/handle-words.ts';
import { catalogues, say } from '../../shared/words/index.ts';
import { tableAdults } from '../components/table-adults.ts';
import type { Drawings } from '../packs/drawings.ts';
import type { PrintBlock, PrintPart } from '../printing/print-view.ts';
import { straight } from './paper-parts.ts';

type TableSheet = Extract<Sheet, { readonly part: 'handle-notes' }>;

const words = catalogues.en.handlePapers;
const near = { look: words.posterLook, 'touch-held': words.posterTouch, handle: '' };

const tablesOf = (plan: Plan): readonly TableSheet[] =>
  plan.activities.flatMap(sheetsOf).flatMap((sheet) => (sheet.part === 'handle-notes' ? [sheet] : []));

const hasEdges = ({ pieces }: TableSheet): boolean =>
  pieces.some(({ edge, exposure }) => edge !== 'E0' && exposure !== 'look');

function helperCard(sheet: TableSheet, plan: Plan, library: Library, drawings: Drawings): PrintBlock {
  const { safety } = library;
  const { age, practitioners, supervisors } = tableAdults(plan, library, sheet.table);
  const brief = safety.hazards.flatMap(({ controls }) => controls).find(({ id }) => id === 'sharp-brief');
  const edges = hasEdges(sheet) ? (brief?.text ?? '') : words.edgesNone;
  return {
    block: 'helper',
    title: sheet.title,
    aside: words.helperCard,
    count: say(words.count, { count: sheet.pieces.length }),
    order: words.order,
    pieces: sheet.pieces.map((piece) => ({
      drawn: drawings.find(piece.drawing, 'face'),
      name: piece.name,
      lies: pieceWords(piece).lies,
      holds: holdSentences(piece.hold),
    })),
    who: {
      title: words.who,
      lines: [
        practitioners === 0 ? words.whoNone : say(words.whoPractitioner, { count: practitioners }),
        say(words.whoSupervisors, { count: supervisors }),
        say(words.whoChildren, { count: sheet.table.childrenAtOnce }),
      ],
      mark: say(words.whoMark, { age }),
    },
    rules: [
      { title: words.edges, text: `${edges} ${safety.edgeCheck.text}` },
      { title: words.broken, text: words.brokenSteps },
      { title: words.wash, text: words.washSteps },
    ],
    mark: `${words.washMark} ${words.practiceMark}`,
    never: safety.caution.neverLine,
  };
}

/** A card for the helper at each table of pieces. */
export const helperParts = (plan: Plan, library: Library, drawings: Drawings): readonly PrintPart[] => [
  straight(
    'helper',
    tablesOf(plan).map((sheet) => helperCard(sheet, plan, library, drawings)),
  ),
];

/** A poster for each table of pieces. */
export function posterParts(plan: Plan, { safety }: Library, drawings: Drawings): readonly PrintPart[] {
  const caution = cautionWords(safety, plan, { isPaper: true });
  return [
    straight(
      'poster',
      tablesOf(plan).map((sheet): PrintBlock => ({
        block: 'poster',
        title: sheet.title,
        pieces: sheet.pieces.map((piece) => ({
          drawn: drawings.find(piece.drawing, 'face'),
          near: near[piece.exposure],
        })),
        rules: [
          words.posterTray,
          words.posterOne,
          ...(hasEdges(sheet) ? [words.posterEdge] : []),
          words.posterPass,
          words.posterBreak,
          words.posterWash,
        ],
        caution: { strong: caution?.title ?? '', text: caution?.text ?? safety.caution.neverLine },
      })),
    ),
  ];
}
