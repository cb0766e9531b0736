import { visitKit, type Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import { lieWords } from '../../shared/telling/handle-words.ts';
import { CLASS_SIZES, frameworksHeld } from '../../shared/telling/lesson-safety.ts';
import { catalogues, say } from '../../shared/words/index.ts';
import { typeLabel } from '../components/type-label.ts';
import type { GridCell, PrintPart } from '../printing/print-view.ts';
import { section, straight, text } from './paper-parts.ts';

const words = catalogues.en.kitWords;
const TICK: GridCell = { text: '', hasTick: true };
const WRITE: GridCell = { text: '', isWrite: true };

/** The kit list: what is counted, which pieces go out and come back, and the lists of the rules. */
export function kitParts(plan: Plan, library: Library): readonly PrintPart[] {
  const { safety } = library;
  const { counts, pieces, lists } = visitKit(safety, plan, CLASS_SIZES, frameworksHeld(safety));
  return [
    straight('lead', [text(words.lead)]),
    section('counted', words.counted, [
      {
        block: 'grid',
        look: 'kit-counts',
        heads: [
          words.colThing,
          ...CLASS_SIZES.map((pupils) => say(words.colFor, { pupils })),
          words.colPacked,
          words.colBack,
        ],
        rows: counts.map(({ thing, title, cards, counts: each }) => [
          { text: say(words[thing], { title: title ?? '', cards: cards ?? 0 }) },
          ...each.map((count): GridCell => ({ text: String(count), isNumber: true })),
          TICK,
          TICK,
        ]),
      },
    ]),
    ...(pieces.length === 0
      ? []
      : [
          section(
            'pieces',
            words.pieces,
            [
              text(words.piecesLead),
              {
                block: 'grid',
                look: 'stacks kit-pieces',
                heads: [words.colPieces, words.colStation, words.colEdge, words.colOut, words.colBack],
                rows: pieces.flatMap(({ station, types, edge, is }) =>
                  types.map((type): readonly GridCell[] => [
                    {
                      text: typeLabel(library, type),
                      ...(is === undefined ? {} : { aside: lieWords(is) }),
                    },
                    { text: station },
                    { text: safety.edges.find(({ id }) => id === edge)?.name ?? '' },
                    WRITE,
                    WRITE,
                  ]),
                ),
              },
            ],
            'paper-section keeps',
          ),
        ]),
    straight('lists', [
      {
        block: 'lists',
        lists: lists.map((list) => ({
          title: say(words.list, { what: list.for }),
          aside: say(words.listMark, { status: list.status, source: list.source }),
          items: list.items,
        })),
      },
    ]),
  ];
}
