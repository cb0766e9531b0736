import { derive, pick } from '../chance/index.ts';
import type { Band } from '../library/index.ts';
import { axeSteps, draftingWords as words } from '../words/en/drafting.ts';
import { axesOf } from './axes.ts';
import { meritOf, type DraftContext, type Drafted, type MeritPart } from './draft.ts';

type StepName = keyof typeof axeSteps;

/** The steps each band is given; never more than it can hold in mind. ASM. */
const STEPS: Readonly<Record<Band, readonly StepName[]>> = {
  '4-5': ['find', 'shape', 'smooth'],
  '5-7': ['find', 'shape', 'smooth', 'haft', 'join'],
  '7-9': ['find', 'test', 'shape', 'smooth', 'haft', 'join', 'bind'],
  '9-11': ['find', 'test', 'shape', 'wet', 'smooth', 'haft', 'join', 'bind'],
  '11-14': ['find', 'test', 'shape', 'wet', 'smooth', 'haft', 'join', 'bind'],
  '14-16': ['find', 'test', 'shape', 'wet', 'smooth', 'haft', 'join', 'bind'],
};

/** A step must follow those given that it follows; where one of them is not given, what that one follows stands in. */
function mustFollow(step: StepName, given: readonly StepName[]): readonly StepName[] {
  const after: readonly StepName[] = axeSteps[step].after;
  const direct = after.flatMap((name) => (given.includes(name) ? [name] : mustFollow(name, given)));
  return [...new Set(direct)];
}

/** The steps of an axe, for an axe of the site. */
export function* draftOrder(context: DraftContext): Generator<void, Drafted, void> {
  yield;
  const axes = axesOf(context);
  const [best] = axes;
  if (best === undefined) return { candidates: [], lacking: [words.lackAxe()] };
  const alike = axes.filter(
    ({ id, attributes }) =>
      attributes['object-type'] === best.attributes['object-type'] &&
      attributes.state === best.attributes.state &&
      context.pins.has(id) === context.pins.has(best.id),
  );
  const axe = pick(derive(context.chance, 'axe'), alike);
  const given = STEPS[context.limits.band];
  const minutes = Math.min(given.length + 4, context.limits.minutesPerActivity);
  if (minutes > context.minutesMost)
    return { candidates: [], lacking: [words.lackTime(context.minutesMost, minutes)] };
  const name =
    context.library.vocabulary.objectTypes.find(({ id }) => id === axe.attributes['object-type'])?.label ??
    '';
  const isAxe = axe.attributes['object-type'] === 'polished-axe';
  const parts: readonly MeritPart[] = [
    { name: 'evidence', weight: 0.6, value: isAxe ? 1 : 0.6, told: words.evidenceAxe(name) },
    { name: 'fullness', weight: 0.4, value: given.length / 8, told: words.fullness(given.length, 8) },
  ];
  const steps = given.map((step) => {
    const { name: shown, why } = axeSteps[step];
    const after = mustFollow(step, given);
    const follows = after.length === 0 ? '' : `, must-follow: [${after.join(', ')}]`;
    return `  - { id: ${step}, name: ${JSON.stringify(shown)}${follows}${why === null || after.length === 0 ? '' : `, why: ${JSON.stringify(why)}`} }`;
  });
  return {
    candidates: [
      {
        place: 3,
        title: words.orderTitle(),
        minutes,
        lines: [`of: ${axe.id}`, 'steps:', ...steps],
        merit: meritOf(parts),
        parts,
        finds: [axe.id],
        summary: words.orderSummary(given.length, name, axe.id),
      },
    ],
    lacking: [],
  };
}
