import type { Sheet } from '../../../shared/activities/index.ts';
import type { Band } from '../../../shared/library/index.ts';
import { catalogues } from '../../../shared/words/index.ts';
import type { BlockView } from '../../player/papers/paper-view.ts';
import { cardBlocks } from './card-sections.ts';
import type { Drawings } from '../drawings.ts';
import { compareSheet, estimateSheet, estimateTally } from './number-blocks.ts';
import { classSheet, ledger, piecesSheet, stepLine, talkSheet, traysSheet } from './pupil-blocks.ts';

/** What a sheet gives to the papers of a pack; the teacher notes hold its answers. */
export interface SheetPlaces {
  readonly cards?: readonly BlockView[];
  readonly pupils?: readonly BlockView[];
  readonly aside?: string;
  /** The teacher notes tell it. */
  readonly isInNotes?: true;
}

/** What sheets are made with. */
export interface SheetSetting {
  readonly band: Band;
  readonly drawings: Drawings;
  /** Names an empty strip in the page; null where another sheet of the lesson has the same. */
  readonly stripId: string | null;
}

/** Where a sheet stands in the papers of a pack: every part has a place, or this does not compile. */
export function placesOf(sheet: Sheet, { band, drawings, stripId }: SheetSetting): SheetPlaces {
  switch (sheet.part) {
    case 'cards':
    case 'step-cards':
    case 'trader-cards':
    case 'want-cards':
      return { cards: cardBlocks(sheet, drawings) };
    case 'pupil-sheet':
      return { pupils: traysSheet(sheet) };
    case 'step-line':
      return { pupils: stepLine(sheet, band) };
    case 'ledger':
      return { pupils: ledger(sheet) };
    case 'estimate-sheet':
      return { pupils: estimateSheet(sheet, stripId, drawings) };
    case 'estimate-tally':
      return { pupils: estimateTally(sheet), aside: catalogues.en.estimatePapers.paperTally };
    case 'compare-sheet':
      return { pupils: compareSheet(sheet, band, drawings) };
    case 'handle-sheet':
      return { pupils: piecesSheet(sheet, band, drawings) };
    case 'talk-sheet':
      return { pupils: talkSheet(sheet, band) };
    case 'class-answer':
      return { pupils: classSheet(sheet), isInNotes: true };
    case 'answers':
    case 'step-answers':
    case 'compare-answers':
    case 'estimate-answer':
    case 'chain-answer':
    case 'handle-notes':
    case 'talk-notes':
      return { isInNotes: true };
    default:
      return sheet satisfies never;
  }
}
