import { nearest } from '../../lesson/nearest.ts';
import type { Fault } from '../../lesson/problem.ts';
import { BANDS, youngestAge } from '../../library/bands.ts';
import { drawable } from '../../library/drawable.ts';
import type { Find } from '../../library/library.ts';
import {
  edgeOfPiece,
  handlingTable,
  stationRule,
  USUAL_EXPOSURE,
  type StationUse,
} from '../../safety/index.ts';
import { handleProblems } from '../../words/en/handle-problems.ts';
import type { CompileContext, Compiled } from '../kind.ts';
import { SESSION_EXPOSURES, type HandleActivity, type HandlePiece } from './activity.ts';
import { tableFaults } from './check-table.ts';
import { holdLines, promptsFor } from './prompts.ts';
import type { HandleBlock, WrittenPiece } from './schema.ts';

const SIGNS_SOURCE = 'trade-signs';
/** Stuff that cuts wherever it breaks. */
const BREAKS_SHARP = ['flint', 'glass'];
const OF_ANIMALS = ['bone', 'antler'];
/** A tray between two: each piece is held twice. ASM: our judgement. */
const HOLDS = 2;
/** The type that stands for any copy without an edge. */
const BLUNT_COPY = 'blunt-replica';

/** A copy in flint or glass has edges as they broke, unless all of it was ground. */
const isNewlyStruck = ({ attributes: { material, 'made-by': madeBy, state } }: Find): boolean =>
  BREAKS_SHARP.includes(material) && !(madeBy === 'ground' && state !== 'broken');

/** Bone or antler that a child touches: a cast of it is neither. */
const isOfAnimal = ({ is, exposure, drawing }: HandlePiece): boolean =>
  is !== 'blunt-replica' && exposure !== 'look' && OF_ANIMALS.includes(drawing.material);

function readPiece(find: Find, written: WrittenPiece, { library, bands }: CompileContext): HandlePiece {
  const { vocabulary, safety } = library;
  const objectType = find.attributes['object-type'];
  const type = vocabulary.objectTypes.find(({ id }) => id === objectType);
  const met = {
    is: written.is,
    edge: edgeOfPiece(
      safety,
      written.is === 'blunt-replica' ? BLUNT_COPY : objectType,
      written.is === 'replica' && isNewlyStruck(find),
      written.edge,
    ),
    exposure: written.exposure ?? SESSION_EXPOSURES.find((exposure) => exposure === USUAL_EXPOSURE) ?? 'look',
  };
  const inOrder = BANDS.filter((band) => bands.includes(band));
  const material = vocabulary.materials.find(({ id }) => id === find.attributes.material);
  return {
    id: find.id,
    smallFind: find.smallFind,
    pit: find.pit,
    plain: type?.plain ?? objectType,
    name: type?.label ?? objectType,
    material: material?.label ?? find.attributes.material,
    sign: type?.sign ?? '',
    note: find.note ?? null,
    ...met,
    hold: holdLines(find, met, written.hold, inOrder),
    prompts: promptsFor(find, met, written, inOrder),
    drawing: drawable(find),
  };
}

function limitFaults(block: HandleBlock, { library, bands }: CompileContext): readonly Fault[] {
  const limits = library.bands.find(({ band }) => bands.includes(band));
  if (limits === undefined) return [];
  const faults: Fault[] = [];
  const pieces = block.pieces.length;
  if (pieces > limits.finds) {
    const words = handleProblems.tooMany(pieces, limits.finds, limits.band);
    faults.push({ code: 'finds-too-many', grade: 'caution', path: ['pieces'], ...words });
  }
  const least = Math.ceil((pieces * HOLDS * limits.secondsPerFind) / 60);
  if (block.minutes < least) {
    const words = handleProblems.minutesUnder(block.minutes, least, pieces);
    faults.push({ code: 'minutes-under', grade: 'caution', path: ['minutes'], ...words });
  }
  return faults;
}

/** Compiles a handling session: what the safety rules refuse of any piece in the hand is refused here, at the piece. */
export function compileHandle(
  id: string,
  block: HandleBlock,
  context: CompileContext,
): Compiled<HandleActivity> {
  const { site, library, bands, setting } = context;
  const finds = site.pits.flatMap((pit) => pit.finds);
  const faults: Fault[] = [];
  const read = block.pieces.flatMap((written, index): readonly HandlePiece[] => {
    const find = finds.find((each) => each.id === written.find);
    const path = ['pieces', index, 'find'];
    if (find === undefined) {
      const near = nearest(
        written.find,
        finds.map((each) => each.id),
      );
      const replacement = near === null ? {} : { replacement: near };
      const words = handleProblems.findUnknown(written.find, near, site.name);
      faults.push({ code: 'find-unknown', grade: 'error', path, ...words, ...replacement });
      return [];
    }
    if (block.pieces.findIndex((piece) => piece.find === written.find) < index) {
      faults.push({
        code: 'find-repeated',
        grade: 'error',
        path,
        ...handleProblems.repeated(written.find),
      });
    }
    return [readPiece(find, written, context)];
  });
  const met = read.map(({ edge, exposure }) => ({ edge, exposure }));
  const kind = handlingTable(met, read.some(isOfAnimal));
  const table: StationUse = {
    kind,
    childrenAtOnce: block.children ?? stationRule(library.safety, kind).maximumAtOnce,
    pieces: met,
  };
  // With a piece that nobody knows, the places of the others no longer fit.
  if (read.length === block.pieces.length) {
    faults.push(...tableFaults(library.safety, block, read, table, setting, youngestAge(bands)));
  }
  faults.push(...limitFaults(block, context));
  if (faults.some(({ grade }) => grade === 'error')) return { activity: null, faults };
  const activity: HandleActivity = {
    id,
    kind: 'handle',
    title: block.title,
    minutes: block.minutes,
    question: block.question ?? null,
    pieces: read,
    table,
    signsSource: library.sources.find((source) => source.id === SIGNS_SOURCE)?.citation ?? '',
  };
  return { activity, faults };
}
