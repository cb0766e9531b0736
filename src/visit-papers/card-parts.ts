import type { CardView, PaperView } from '../player/papers/paper-view.ts';
import type { PrintBlock, PrintPart } from '../printing/print-view.ts';
import { cardPages, DRAWN_CARDS, WORD_CARDS } from '../components/card-pages.ts';
import { catalogues } from '../../shared/words/index.ts';
import { section, straight } from './paper-parts.ts';

const words = catalogues.en.printPack;

/** Cards that have backs; those of traders and wishes have none. */
const hasBack = ({ card }: CardView): boolean => card === 'find' || card === 'step';
const isDrawn = (card: CardView): boolean =>
  card.card === 'find' || (card.card === 'step' && card.drawn !== null);

function pagesOf(title: string, site: string, cards: readonly CardView[]): readonly PrintBlock[] {
  const areDrawn = cards.some(isDrawn);
  return cardPages(cards, areDrawn ? DRAWN_CARDS : WORD_CARDS).flatMap((page): readonly PrintBlock[] => [
    { block: 'card-page', title, cards: page },
    {
      block: 'card-backs',
      title,
      site,
      count: page.length,
      isDrawn: areDrawn,
      aside: words.backOf,
      set: words.backSet,
    },
  ]);
}

/** The cards of a pack, sheet by sheet, a back behind each sheet of find or step cards: whoever wants backs prints them. */
export function cardParts({ sections }: PaperView, site: string): readonly PrintPart[] {
  const parted = sections.map(({ id, title, blocks }) => {
    const cards = blocks.flatMap((each) => (each.block === 'cards' ? each.cards : []));
    return { id, title, blocks, cards, isBacked: cards.every(hasBack) };
  });
  const hows = new Set(
    parted
      .filter(({ isBacked }) => isBacked)
      .flatMap(({ blocks }) => blocks.flatMap((each) => (each.block === 'text' ? [each.text] : []))),
  );
  return [
    straight('how', [
      ...[...hows].map((text): PrintBlock => ({ block: 'text', text })),
      { block: 'empty-page', text: words.backsEmpty },
    ]),
    ...parted.map(({ id, title, blocks, cards, isBacked }) =>
      isBacked ? straight(id, pagesOf(title, site, cards)) : section(id, title, blocks),
    ),
  ];
}
