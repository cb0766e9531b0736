import type { NotesBlock, NotesCell, NotesPicture } from '../../../shared/notes/index.ts';
import { catalogues } from '../../../shared/words/index.ts';
import { drawnPlan, drawnSection } from '../../components/drawn.ts';
import type { Drawn } from '../../player/drawn.ts';
import type { BlockView, CellView } from '../../player/papers/paper-view.ts';
import type { Drawings } from '../drawings.ts';

/** More columns than these do not fit a phone. */
const MOST_COLUMNS = 3;

const drawnOf = (picture: NotesPicture, drawings: Drawings): Drawn | null =>
  'find' in picture ? drawings.find(picture.find, 'face') : drawings.step(picture.step);

function cellOf({ picture, ...cell }: NotesCell, drawings: Drawings): CellView {
  const drawn = picture === undefined ? null : drawnOf(picture, drawings);
  return drawn === null ? cell : { ...cell, drawn };
}

/** A pit in plan and cut through: its finds are pointed to where they lie. */
function pitOf(
  { pit, finds, planCaption, sectionCaption }: Extract<NotesBlock, { readonly block: 'pit' }>,
  drawings: Drawings,
): BlockView {
  // Laid out by id: alike however the finds were dealt.
  const plan = drawnPlan(
    pit,
    finds.toSorted((a, b) => (a.id < b.id ? -1 : 1)),
  );
  const { widthMm: width, heightMm: height, markup } = plan;
  return {
    block: 'pit',
    plan: drawings.drawing({ viewBox: { x: 0, y: 0, width, height }, markup }),
    finds: plan.places.flatMap(({ id, xMm, yMm, turnDegrees, enlarged }) => {
      const find = finds.find((each) => each.id === id);
      return find === undefined
        ? []
        : [{ drawn: drawings.find(find, 'face'), xMm, yMm, turnDegrees, enlarged }];
    }),
    planCaption,
    section: drawings.drawing(drawnSection(pit)),
    sectionCaption,
  };
}

/** A block of the teacher notes for a pack: the same words, its drawings pointed to. */
export function blockOfNotes(block: NotesBlock, drawings: Drawings): BlockView {
  switch (block.block) {
    case 'text': {
      const { text, isQuiet, isStrong } = block;
      return {
        block: 'text',
        text,
        ...(isStrong === true ? { look: 'strong' } : isQuiet === true ? { look: 'quiet' } : {}),
      };
    }
    case 'table':
      return {
        ...block,
        rows: block.rows.map((row) => row.map((cell) => cellOf(cell, drawings))),
        ...(block.heads.length > MOST_COLUMNS ? { wide: catalogues.en.notes.wideTable } : {}),
      };
    case 'pit':
      return pitOf(block, drawings);
    case 'heading':
    case 'list':
    case 'terms':
      return block;
    default:
      return block satisfies never;
  }
}
