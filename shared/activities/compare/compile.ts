import { countFinds, kindsOfTwo, KIND_PLACES, recordedPlaces, type Counts } from '../../assemblage/index.ts';
import { derive, shuffle } from '../../chance/index.ts';
import { nearest } from '../../lesson/nearest.ts';
import type { Fault } from '../../lesson/problem.ts';
import { drawable } from '../../library/drawable.ts';
import type { Find, Pit } from '../../library/library.ts';
import { compareProblems } from '../../words/en/compare-problems.ts';
import type { CompileContext, Compiled } from '../kind.ts';
import type { AskedPlaces, CompareActivity } from './activity.ts';
import { askChance } from './ask-chance.ts';
import type { CompareBlock } from './schema.ts';

const FEWEST_FOR_CHANCE = 3;

const kindOf = (find: Find): string => find.attributes['object-type'];

/** What was put into a pit when it was open: later and natural things say nothing of its makers. */
const evidenceOf = (pit: Pit): readonly Find[] => pit.finds.filter(({ role }) => role === 'evidence');

/** The pits a block names. */
function readPits({ pits: written }: CompareBlock, { site }: CompileContext) {
  const faults: Fault[] = [];
  const known = site.pits.map(({ id }) => id);
  const pits = written.flatMap((name, index): readonly Pit[] => {
    const pit = site.pits.find(({ id }) => id === name);
    const path = ['pits', index];
    if (pit === undefined) {
      const near = nearest(name, known);
      const replacement = near === null ? {} : { replacement: near };
      const words = compareProblems.pitUnknown(name, near, known);
      faults.push({ code: 'find-unknown', grade: 'error', path, ...words, ...replacement });
      return [];
    }
    if (written.indexOf(name) < index)
      faults.push({ code: 'pit-repeated', grade: 'error', path, ...compareProblems.pitRepeated(name) });
    return [pit];
  });
  return { pits, faults };
}

/** The kinds a block names, or all that its pits hold. */
function readKinds({ kinds: written }: CompareBlock, pits: readonly Pit[], { site }: CompileContext) {
  const held = [...new Set(pits.flatMap(evidenceOf).map(kindOf))];
  const known = [...new Set(site.pits.flatMap(evidenceOf).map(kindOf))].toSorted();
  const faults = (written ?? []).flatMap((name, index): readonly Fault[] => {
    if (known.includes(name)) return [];
    const near = nearest(name, known);
    const replacement = near === null ? {} : { replacement: near };
    const words = compareProblems.kindUnknown(name, near, known);
    return [{ code: 'word-unknown', grade: 'error', path: ['kinds', index], ...words, ...replacement }];
  });
  return { kinds: [...new Set(written ?? held)], faults };
}

function limitFaults(block: CompareBlock, kinds: number, context: CompileContext): readonly Fault[] {
  const youngest = context.library.bands.find(({ band }) => context.bands.includes(band));
  if (youngest === undefined || block.ask === 'chance') return [];
  const faults: Fault[] = [];
  if (kinds > youngest.finds) {
    const words = compareProblems.kindsTooMany(kinds, youngest.finds, youngest.band);
    const path = block.kinds === undefined ? ['pits'] : ['kinds'];
    faults.push({ code: 'kinds-too-many', grade: 'caution', path, ...words });
  }
  const leastMinutes = Math.ceil((kinds * youngest.secondsPerFind) / 60);
  if (block.minutes < leastMinutes) {
    const words = compareProblems.minutesUnder(block.minutes, leastMinutes, kinds);
    faults.push({ code: 'minutes-under', grade: 'caution', path: ['minutes'], ...words });
  }
  return faults;
}

function sizeFaults({ ask, pits }: CompareBlock): readonly Fault[] {
  const isFit = ask === 'places' ? pits.length === 2 : pits.length >= FEWEST_FOR_CHANCE;
  return isFit
    ? []
    : [
        {
          code: 'value-unfit',
          grade: 'error',
          path: ['pits'],
          ...compareProblems.pitsUnfit(ask, pits.length),
        },
      ];
}

function askPlaces(counts: Counts): AskedPlaces | null {
  const [first = '', second = ''] = counts.pits;
  const places = recordedPlaces(kindsOfTwo(counts, first, second));
  const offered = KIND_PLACES.filter((place) => [...places.values()].includes(place));
  return offered.length < 2 ? null : { record: Object.fromEntries(places), offered };
}

const pitToCut = ({ finds: _finds, centre: _centre, ...pit }: Pit): CompareActivity['pits'][number]['cut'] =>
  pit;

/** Compiles a comparison: what the pits hold is counted from their finds, and a question with one answer throughout is refused. */
export function compileCompare(
  id: string,
  block: CompareBlock,
  context: CompileContext,
): Compiled<CompareActivity> {
  const { pits, faults: pitFaults } = readPits(block, context);
  const { kinds, faults: kindFaults } = readKinds(block, pits, context);
  const faults = [...pitFaults, ...kindFaults, ...sizeFaults(block)];
  if (faults.length > 0) return { activity: null, faults };
  const all = pits.flatMap(evidenceOf).filter((find) => kinds.includes(kindOf(find)));
  const counts = countFinds(
    all.map((find) => ({ pit: find.pit, kind: kindOf(find), count: find.count })),
    pits.map((pit) => pit.id),
    kinds,
  );
  const places = block.ask === 'places' ? askPlaces(counts) : null;
  const chance =
    block.ask === 'chance'
      ? askChance(counts, block.by ?? 'jaccard', derive(context.chance, 'chance'))
      : null;
  if (places === null && chance === null) {
    const words = compareProblems.oneAnswer(block.ask);
    return {
      activity: null,
      faults: [{ code: 'pits-one-answer', grade: 'error', path: ['pits'], ...words }],
    };
  }
  const { objectTypes } = context.library.vocabulary;
  const onSite = context.site.pits.flatMap(evidenceOf);
  const activity: CompareActivity = {
    id,
    kind: 'compare',
    title: block.title,
    minutes: block.minutes,
    question: block.question ?? null,
    pits: pits.map((pit) => ({
      cut: pitToCut(pit),
      finds: evidenceOf(pit)
        .filter((find) => kinds.includes(kindOf(find)))
        .map(drawable),
    })),
    // A table of many pits is read, not dealt: its kinds keep the order in which they are met.
    kinds: (block.ask === 'places' ? shuffle(context.chance, kinds) : kinds).flatMap((kind) => {
      const example = [...all, ...onSite].find((find) => kindOf(find) === kind);
      const column = kinds.indexOf(kind);
      return example === undefined
        ? []
        : [
            {
              id: kind,
              name: objectTypes.find((type) => type.id === kind)?.label ?? kind,
              number: example.smallFind,
              drawing: drawable(example),
              counts: counts.rows.map((row) => row[column] ?? 0),
            },
          ];
    }),
    places,
    chance,
    reading: block.reading ?? null,
    doubts: block.doubts ?? [],
    seed: context.chance.seed,
  };
  return { activity, faults: limitFaults(block, kinds.length, context) };
}
