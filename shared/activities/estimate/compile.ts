import { uniformBelow } from '../../chance/index.ts';
import { fromEnds, recordInterval, scoreInterval, scoreNumber } from '../../estimating/index.ts';
import { numberLimits } from '../../curriculum/index.ts';
import type { Fault } from '../../lesson/problem.ts';
import { youngest } from '../../library/bands.ts';
import { drawable } from '../../library/drawable.ts';
import type { MakingEvidence } from '../../library/making-evidence.ts';
import type { Find } from '../../library/library.ts';
import {
  QUANTITIES,
  reckonQuantity,
  resolveHead,
  workingLifeStrip,
  type MakingFigures,
  type MakingRequest,
  type QuantityId,
  type Reckoning,
} from '../../making/index.ts';
import { estimateProblems } from '../../words/en/estimate-problems.ts';
import { estimateQuestions } from '../../words/en/estimate-questions.ts';
import type { CompileContext, Compiled } from '../kind.ts';
import type { EstimateActivity, EstimateFind, EstimateRecord, EstimateStrip } from './activity.ts';
import { asAsked, lineForUnit } from './line-for-unit.ts';
import { pickLevers } from './pick-levers.ts';
import { readAsks } from './read-asks.ts';
import { landmarksOn, readChoices } from './read-choices.ts';
import { readRequest } from './read-request.ts';
import { refusalFault } from './refusals.ts';
import type { EstimateBlock } from './schema.ts';
import { MISSED_SHARE } from './score.ts';
import { tellGiven } from './tell-given.ts';
import { trialsOf } from './trials.ts';

const sixDigits = (value: number): number => Number(value.toPrecision(6));

const recordOf = (reckoned: Reckoning): EstimateRecord => ({
  low: sixDigits(asAsked(reckoned.low, reckoned.unit)),
  lowerQuarter: sixDigits(asAsked(reckoned.lowerQuarter, reckoned.unit)),
  middle: sixDigits(asAsked(reckoned.middle, reckoned.unit)),
  upperQuarter: sixDigits(asAsked(reckoned.upperQuarter, reckoned.unit)),
  high: sixDigits(asAsked(reckoned.high, reckoned.unit)),
  status: reckoned.status,
  without: reckoned.without,
});

function describeFind(find: Find, { library }: CompileContext): EstimateFind {
  const type = library.vocabulary.objectTypes.find(({ id }) => id === find.attributes['object-type']);
  return {
    id: find.id,
    smallFind: find.smallFind,
    pit: find.pit,
    name: type?.label ?? find.attributes['object-type'],
    note: find.note ?? null,
    drawing: drawable(find),
  };
}

/** The strip of a working life, for what is about the making of an axe head. */
function stripOf(figures: MakingFigures, quantity: QuantityId, request: MakingRequest): EstimateStrip | null {
  const needs: readonly string[] = QUANTITIES[quantity].needs;
  const head = resolveHead(figures, request);
  if (!needs.includes('head') || !head.ok) return null;
  const { segments, hours, marks, grindingPerShaping } = workingLifeStrip(figures, head.value);
  return {
    segments: segments.map((segment) => ({
      ...segment,
      fromHours: sixDigits(segment.fromHours),
      toHours: sixDigits(segment.toHours),
      hours: sixDigits(segment.hours),
      share: sixDigits(segment.share),
    })),
    hours: sixDigits(hours),
    marks,
    grindingPerShaping: grindingPerShaping === null ? null : sixDigits(grindingPerShaping),
  };
}

/** The sizes a head is reckoned with, where the block leaves them to the form. */
function withSizes(figures: MakingFigures, quantity: QuantityId, request: MakingRequest): MakingRequest {
  const needs: readonly string[] = QUANTITIES[quantity].needs;
  if (!needs.includes('head')) return request;
  const head = resolveHead(figures, request);
  if (!head.ok) return request;
  const { lengthMm, widthMm, thicknessMm } = head.value;
  return { ...request, lengthMm, widthMm, thicknessMm };
}

const citationsFor = (making: MakingEvidence, sources: readonly string[]): EstimateActivity['citations'] =>
  Object.fromEntries(
    making.sources.filter(({ id }) => sources.includes(id)).map(({ id, citation }) => [id, citation]),
  );

/** An answer that every way of asking can score. */
function canBeScored({ asks, line, record }: Pick<EstimateActivity, 'asks' | 'line' | 'record'>): boolean {
  const range = { low: record.lowerQuarter, high: record.upperQuarter };
  return asks.every(({ how }) => {
    if (how === 'number') return scoreNumber(record.middle, range, line).value !== null;
    if (how === 'choose') return true;
    const own = fromEnds(record);
    return scoreInterval(recordInterval(own, MISSED_SHARE), own, line, MISSED_SHARE).value !== null;
  });
}

/** How far the youngest band counts, where it has met whole numbers only. */
function wholeTo({ library, bands }: CompileContext): Pick<EstimateActivity, 'wholeTo'> {
  const limits = numberLimits(library.curricula, youngest(bands));
  return limits === null || limits.ideas.has('decimals') ? {} : { wholeTo: limits.wholeNumbersTo };
}

/** Compiles an estimate: the answer is worked out by the making model, with its spread and all it stands on. */
export function compileEstimate(
  id: string,
  block: EstimateBlock,
  context: CompileContext,
): Compiled<EstimateActivity> {
  const { making, comparisons } = context.library;
  if (making === null) {
    const words = estimateProblems.figuresMissing();
    return { activity: null, faults: [{ code: 'figures-missing', grade: 'error', path: ['of'], ...words }] };
  }
  const { figures } = making;
  const quantity = QUANTITIES[block.of];
  const isTime = quantity.unit === 'h' || quantity.unit === 'min';
  const { asks, faults: askFaults } = readAsks(block, context.bands, isTime);
  const asked = readRequest(block, context.site, figures);
  const faults: Fault[] = [...askFaults, ...asked.faults];
  const stop = (): Compiled<EstimateActivity> => ({ activity: null, faults });
  if (faults.some(({ grade }) => grade === 'error')) return stop();
  const reckoned = reckonQuantity(figures, block.of, asked.request);
  if (!reckoned.ok) {
    faults.push(...reckoned.refusals.map((refusal) => refusalFault(refusal, block)));
    return stop();
  }
  if (!(reckoned.value.low > 0)) {
    faults.push({ code: 'ask-unfit', grade: 'error', path: ['of'], ...estimateProblems.isNothing(block.of) });
    return stop();
  }
  const request = withSizes(figures, block.of, asked.request);
  const record = recordOf(reckoned.value);
  const hours = quantity.unit === 'min' ? record.middle / 60 : record.middle;
  const side = uniformBelow(context.chance, 2) === 0 ? 'low' : 'high';
  const line = lineForUnit(reckoned.value, side);
  const chooses = asks.find(({ how }) => how === 'choose');
  const [firstBand = '4-5'] = chooses?.bands ?? [];
  const { choices, faults: choiceFaults } =
    chooses === undefined
      ? { choices: [], faults: [] }
      : readChoices(block, hours, comparisons, firstBand, context.chance);
  faults.push(...choiceFaults);
  if (!canBeScored({ asks, line, record })) {
    faults.push({ code: 'ask-unfit', grade: 'error', path: ['of'], ...estimateProblems.middleOfLine() });
  }
  if (faults.some(({ grade }) => grade === 'error')) return stop();
  const perHour = quantity.unit === 'min' ? 60 : 1;
  const used = reckoned.value.used.map(({ id: figure, label, low, middle, high, unit, status, sources }) => ({
    id: figure,
    label,
    low,
    middle,
    high,
    unit,
    status,
    sources,
  }));
  const trials = trialsOf(making, block.of);
  const activity: EstimateActivity = {
    id,
    kind: 'estimate',
    title: block.title,
    minutes: block.minutes,
    question: block.question ?? estimateQuestions[block.of] ?? quantity.label,
    of: block.of,
    quantity: quantity.label,
    unit: quantity.unit,
    find: asked.find === null ? null : describeFind(asked.find, context),
    request,
    given: tellGiven(figures, block.of, request, reckoned.value.used),
    asks,
    choices,
    line,
    landmarks: isTime ? landmarksOn({ from: line.from / perHour, to: line.to / perHour }, comparisons) : [],
    record,
    used,
    trials,
    citations: citationsFor(
      making,
      [...used, ...trials].flatMap(({ sources }) => sources),
    ),
    levers: pickLevers(figures, block.of, request, block.levers),
    strip: stripOf(figures, block.of, request),
    ...wholeTo(context),
    aboutMaking: true,
  };
  return { activity, faults };
}
