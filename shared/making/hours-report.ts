import { makeAxe } from './axe.ts';
import { felling } from './felling.ts';
import type { Choice, MakingFigures } from './figures.ts';
import { QUANTITIES, quantityIds } from './quantities.ts';
import { type Reckoning, type ReckonedUnit, reckonPart } from './reckoning.ts';
import type { MakingRequest, Refusal } from './request.ts';
import { resolveHead, resolveTree } from './resolve.ts';
import type { Standing } from './standing.ts';

/** What the command was asked. */
export interface HoursQuestion {
  readonly kind: 'list' | 'fell' | 'make';
  readonly request: MakingRequest;
}

/** A result as the command tells it: six digits, no more than the figures bear. */
export interface ReportedFigure {
  readonly low: number;
  readonly middle: number;
  readonly high: number;
  readonly unit: ReckonedUnit;
  readonly status: Standing;
  readonly sources: readonly string[];
  /** What is not in it; left out when nothing is missing. */
  readonly without?: readonly string[];
}

/** What can be named on the command line, and what can be asked. */
export interface HoursList {
  readonly ids: { readonly [Name in Choice]: readonly { readonly id: string; readonly label: string }[] };
  readonly defaults: MakingFigures['defaults'];
  readonly limits: MakingFigures['limits'];
  readonly quantities: readonly {
    readonly id: string;
    readonly label: string;
    readonly unit: ReckonedUnit;
  }[];
}

export type HoursReport =
  | { readonly kind: 'list'; readonly list: HoursList }
  | { readonly kind: 'figures'; readonly figures: Readonly<Record<string, ReportedFigure>> }
  | { readonly kind: 'refused'; readonly refusals: readonly Refusal[] };

const sixDigits = (value: number): number => Number(value.toPrecision(6));

const told = (figure: Reckoning): ReportedFigure => ({
  low: sixDigits(figure.low),
  middle: sixDigits(figure.middle),
  high: sixDigits(figure.high),
  unit: figure.unit,
  status: figure.status,
  sources: figure.sources,
  ...(figure.without.length > 0 ? { without: figure.without } : {}),
});

function listOf(figures: MakingFigures): HoursList {
  const rows = (name: Choice): readonly { id: string; label: string }[] =>
    figures.tables[name].map(({ id, label }) => ({ id, label }));
  return {
    ids: {
      form: rows('form'),
      stone: rows('stone'),
      grinder: rows('grinder'),
      preform: rows('preform'),
      extent: rows('extent'),
      finish: rows('finish'),
      skill: rows('skill'),
      wood: rows('wood'),
      axe: rows('axe'),
    },
    defaults: figures.defaults,
    limits: figures.limits,
    quantities: quantityIds.map((id) => ({ id, label: QUANTITIES[id].label, unit: QUANTITIES[id].unit })),
  };
}

/**
 * The answer of the command `pitlore hours`, before it is written as text or JSON.
 *
 * An axe is reckoned for the sizes given only: a size left out is refused, not guessed. Pecking hours are told for
 * stones that are pecked.
 * @example hoursReport(figures, { kind: 'make', request: { lengthMm: 120, widthMm: 52, thicknessMm: 27 } })
 */
export function hoursReport(figures: MakingFigures, { kind, request }: HoursQuestion): HoursReport {
  switch (kind) {
    case 'list':
      return { kind: 'list', list: listOf(figures) };
    case 'fell': {
      const tree = resolveTree(figures, request);
      if (!tree.ok) return { kind: 'refused', refusals: tree.refusals };
      return {
        kind: 'figures',
        figures: { fellingMinutes: told(reckonPart(felling(figures, tree.value), 'min')) },
      };
    }
    case 'make': {
      const sizes = (['lengthMm', 'widthMm', 'thicknessMm'] as const).filter(
        (input) => request[input] === undefined,
      );
      const head = resolveHead(figures, request);
      if (sizes.length === 3)
        return { kind: 'refused', refusals: sizes.map((input) => ({ kind: 'missing', input })) };
      if (!head.ok) return { kind: 'refused', refusals: head.refusals };
      const made = makeAxe(figures, head.value);
      return {
        kind: 'figures',
        figures: {
          massGrams: told(made.massGrams),
          knappingMinutes: told(made.knappingMinutes),
          knappingMinutesWithFailures: told(made.knappingMinutesWithFailures),
          ...(head.value.stone.shapedBy === 'pecking' ? { peckingHours: told(made.peckingHours) } : {}),
          grindingHours: told(made.grindingHours),
          haftingHours: told(made.haftingHours),
          totalHours: told(made.totalHours),
        },
      };
    }
    default:
      return kind satisfies never;
  }
}
