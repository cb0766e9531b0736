import { nearest } from '../../lesson/nearest.ts';
import type { Fault } from '../../lesson/problem.ts';
import type { Find, Vocabulary } from '../../library/library.ts';
import {
  countForJson,
  countOrders,
  dealSteps,
  listedOrder,
  orderedPairs,
  readSteps,
  stepRooms,
} from '../../ordering/index.ts';
import { orderProblems } from '../../words/en/order-problems.ts';
import type { CompileContext, Compiled } from '../kind.ts';
import type { OrderActivity } from './activity.ts';
import { freeGroups } from './free-groups.ts';
import { MOST_STEPS } from './limits.ts';
import type { OrderBlock } from './schema.ts';

const USUAL_SOURCE = 'making-order';

/** Steps named twice, cards that read alike, and steps that wait for one that is not there. */
function stepFaults({ steps }: OrderBlock): readonly Fault[] {
  const known = [...new Set(steps.map(({ id }) => id))];
  const isEarlier = (index: number, same: (step: OrderBlock['steps'][number]) => boolean): boolean =>
    steps.findIndex(same) < index;
  return steps.flatMap(({ id, name, 'must-follow': mustFollow = [] }, index): readonly Fault[] => {
    const faults: Fault[] = [];
    if (isEarlier(index, (step) => step.id === id)) {
      faults.push({
        code: 'id-repeated',
        grade: 'error',
        path: ['steps', index, 'id'],
        ...orderProblems.repeated(id),
      });
    } else if (isEarlier(index, (step) => step.name.toLowerCase() === name.toLowerCase())) {
      faults.push({
        code: 'steps-alike',
        grade: 'error',
        path: ['steps', index, 'name'],
        ...orderProblems.alike(name),
      });
    }
    for (const [place, before] of mustFollow.entries()) {
      if (known.includes(before)) continue;
      const near = nearest(before, known);
      const replacement = near === null ? {} : { replacement: near };
      const path = ['steps', index, 'must-follow', place];
      faults.push({
        code: 'word-unknown',
        grade: 'error',
        path,
        ...orderProblems.unknown(before, near, known),
        ...replacement,
      });
    }
    return faults;
  });
}

function limitFaults(block: OrderBlock, context: CompileContext): readonly Fault[] {
  const youngest = context.library.bands.find(({ band }) => context.bands.includes(band));
  if (youngest === undefined) return [];
  const faults: Fault[] = [];
  const { band, secondsPerFind } = youngest;
  const steps = block.steps.length;
  if (steps > MOST_STEPS[band]) {
    const words = orderProblems.tooMany(steps, MOST_STEPS[band], band);
    faults.push({ code: 'steps-too-many', grade: 'caution', path: ['steps'], ...words });
  }
  const leastMinutes = Math.ceil((steps * secondsPerFind) / 60);
  if (block.minutes < leastMinutes) {
    const words = orderProblems.minutesUnder(block.minutes, leastMinutes, steps);
    faults.push({ code: 'minutes-under', grade: 'caution', path: ['minutes'], ...words });
  }
  return faults;
}

const describe = (find: Find, { objectTypes }: Vocabulary): OrderActivity['of'] => {
  const { id, smallFind, attributes, lengthMm, widthMm, thicknessMm, count, side, decoration } = find;
  const objectType = attributes['object-type'];
  return {
    number: smallFind,
    name: objectTypes.find((type) => type.id === objectType)?.label ?? objectType,
    drawing: {
      id,
      objectType,
      material: attributes.material,
      state: attributes.state,
      lengthMm,
      widthMm,
      thicknessMm,
      count,
      ...(side === undefined ? {} : { side }),
      ...(decoration === undefined ? {} : { decoration }),
    },
  };
};

/** What the block points to outside itself: the find it is about, and how its order is known. */
function readPointers(block: OrderBlock, { site, library }: CompileContext) {
  const faults: Fault[] = [];
  const finds = site.pits.flatMap((pit) => pit.finds);
  const find = finds.find(({ id }) => id === block.of);
  if (block.of !== undefined && find === undefined) {
    const near = nearest(
      block.of,
      finds.map(({ id }) => id),
    );
    const replacement = near === null ? {} : { replacement: near };
    faults.push({
      code: 'find-unknown',
      grade: 'error',
      path: ['of'],
      ...orderProblems.findUnknown(block.of, near, site.name),
      ...replacement,
    });
  }
  const known = library.sources.map(({ id }) => id);
  const source = library.sources.find(({ id }) => id === (block.source ?? USUAL_SOURCE));
  if (block.source !== undefined && source === undefined) {
    const near = nearest(block.source, known);
    const replacement = near === null ? {} : { replacement: near };
    faults.push({
      code: 'source-unknown',
      grade: 'error',
      path: ['source'],
      ...orderProblems.sourceUnknown(block.source, near, known),
      ...replacement,
    });
  }
  const of = find === undefined ? null : describe(find, library.vocabulary);
  return { of, source: source?.citation ?? '', faults };
}

/** Compiles an order: every order that keeps to `must-follow` is right, and steps that wait for each other are refused by name. */
export function compileOrder(
  id: string,
  block: OrderBlock,
  context: CompileContext,
): Compiled<OrderActivity> {
  const { of, source, faults: pointerFaults } = readPointers(block, context);
  const faults = [...stepFaults(block), ...pointerFaults, ...limitFaults(block, context)];
  if (faults.some(({ grade }) => grade === 'error')) return { activity: null, faults };
  const { precedence, cycle } = readSteps(
    block.steps.map((step) => ({ id: step.id, mustFollow: step['must-follow'] ?? [] })),
  );
  const stepOf = (wanted: string) => block.steps.find((step) => step.id === wanted);
  if (precedence === null) {
    const first = block.steps.findIndex((step) => step.id === cycle[0]);
    const words = orderProblems.circular(cycle);
    return {
      activity: null,
      faults: [
        ...faults,
        { code: 'steps-circular', grade: 'error', path: ['steps', first, 'must-follow'], ...words },
      ],
    };
  }
  if (orderedPairs(precedence).length === 0) {
    return {
      activity: null,
      faults: [
        ...faults,
        { code: 'steps-unordered', grade: 'error', path: ['steps'], ...orderProblems.unordered() },
      ],
    };
  }
  const rooms = stepRooms(precedence);
  const { count } = countOrders(precedence);
  const steps = dealSteps(precedence, context.chance).map((step, place) => {
    const room = rooms.find((each) => each.id === step);
    const written = stepOf(step);
    return {
      id: step,
      letter: String.fromCodePoint(65 + place),
      name: written?.name ?? step,
      mustFollow: written?.['must-follow'] ?? [],
      why: written?.why ?? null,
      drawing: written?.drawing ?? null,
      earliest: room?.earliest ?? 1,
      latest: room?.latest ?? rooms.length,
    };
  });
  const activity: OrderActivity = {
    id,
    kind: 'order',
    title: block.title,
    minutes: block.minutes,
    question: block.question ?? null,
    steps,
    recorded: listedOrder(precedence),
    validOrders: count === null ? null : countForJson(count),
    free: freeGroups(precedence),
    of,
    source,
  };
  return { activity, faults };
}
