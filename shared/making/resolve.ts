import type {
  AxeKind,
  Choice,
  Extent,
  Finish,
  Form,
  Grinder,
  MakingFigures,
  Measure,
  Preform,
  Skill,
  Stone,
  Tables,
  Wood,
} from './figures.ts';
import type { MakingRequest, Refusal, Result } from './request.ts';

/** An axe head to be made, everything chosen and within the limits. */
export interface Head {
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly form: Form;
  readonly stone: Stone;
  readonly grinder: Grinder;
  readonly preform: Preform;
  readonly extent: Extent;
  readonly finish: Finish;
  readonly skill: Skill;
  readonly mined: boolean;
}

/** A tree to be felled. */
export interface Tree {
  readonly diameterCm: number;
  readonly wood: Wood;
  readonly axe: AxeKind;
  readonly skill: Skill;
}

function choose<Name extends Choice>(
  figures: MakingFigures,
  request: MakingRequest,
  input: Name,
): Tables[Name][number] | Refusal {
  const received: string = request[input] ?? figures.defaults[input];
  const table: readonly Tables[Name][number][] = figures.tables[input];
  const row = table.find(({ id }) => id === received);
  return row ?? { kind: 'unknown', input, received, known: table.map(({ id }) => id) };
}

/** A number within its limits, or why not. NaN is out of range. */
export function measure(
  figures: MakingFigures,
  input: Measure,
  received: number | undefined,
): number | Refusal {
  if (received === undefined) return { kind: 'missing', input };
  const { from, to, unit } = figures.limits[input];
  return received >= from && received <= to
    ? received
    : { kind: 'out-of-range', input, received, from, to, unit };
}

const isRefusal = (part: object | number): part is Refusal => typeof part === 'object' && 'kind' in part;

type Parts = Readonly<Record<string, object | number>>;
type Kept<Given extends Parts> = { readonly [Key in keyof Given]: Exclude<Given[Key], Refusal> };

/** All the parts, or every refusal among them: a lead hears of all at once. */
export function gather<Given extends Parts>(parts: Given): Result<Kept<Given>> {
  const refusals = Object.values(parts).filter(isRefusal);
  if (refusals.length > 0) return { ok: false, refusals };
  // No part is a refusal: this is the one place that knows it.
  return { ok: true, value: parts as unknown as Kept<Given> };
}

/**
 * Reads what an axe head is asked to be.
 *
 * @example resolveHead(figures, { lengthMm: 120, widthMm: 52, thicknessMm: 27 })
 */
export function resolveHead(figures: MakingFigures, request: MakingRequest): Result<Head> {
  const form = choose(figures, request, 'form');
  const sizeless =
    request.lengthMm === undefined && request.widthMm === undefined && request.thicknessMm === undefined;
  const [length, width, thickness] =
    sizeless && !isRefusal(form) ? form.typicalMm : [request.lengthMm, request.widthMm, request.thicknessMm];
  const gathered = gather({
    lengthMm: measure(figures, 'lengthMm', length),
    widthMm: measure(figures, 'widthMm', width),
    thicknessMm: measure(figures, 'thicknessMm', thickness),
    form,
    stone: choose(figures, request, 'stone'),
    grinder: choose(figures, request, 'grinder'),
    preform: choose(figures, request, 'preform'),
    extent: choose(figures, request, 'extent'),
    finish: choose(figures, request, 'finish'),
    skill: choose(figures, request, 'skill'),
  });
  if (!gathered.ok) return gathered;
  const head = { ...gathered.value, mined: request.mined ?? false };
  if (head.form.knapFactor.middle === 0 && head.stone.shapedBy === 'flaking') {
    return {
      ok: false,
      refusals: [{ kind: 'form-needs-pecking', form: head.form.id, stone: head.stone.id }],
    };
  }
  return { ok: true, value: head };
}

/** Reads what tree is to be felled, with what and by whom. @example resolveTree(figures, { diameterCm: 20, wood: 'oak' }) */
export function resolveTree(figures: MakingFigures, request: MakingRequest): Result<Tree> {
  return gather({
    diameterCm: measure(figures, 'diameterCm', request.diameterCm),
    wood: choose(figures, request, 'wood'),
    axe: choose(figures, request, 'axe'),
    skill: choose(figures, request, 'skill'),
  });
}
