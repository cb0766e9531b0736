import type { ActivityOf } from '../../shared/activities/index.ts';
import { catalogues, say, tellNumber } from '../../shared/words/index.ts';

export type Strip = NonNullable<ActivityOf<'estimate'>['strip']>;
type Segment = Strip['segments'][number];

const { estimate } = catalogues.en;

/** A stretch of work in the unit one would say it in: minutes under two hours. */
export const tellWork = (hours: number): string => {
  const isShort = hours < 2;
  const amount = isShort
    ? Math.max(1, Math.round(hours * 60))
    : Number(tellNumber(hours).replaceAll(',', ''));
  return say(estimate.amount, {
    number: isShort ? amount : tellNumber(hours),
    unit: say(isShort ? estimate.unit_min : estimate.unit_h, { count: amount }),
  });
};

/** Patterns that stay apart on a photocopy, by the kind of work. */
export const patternOf = ({ id, branch }: Segment): 'get' | 'flake' | 'grind' | 'haft' =>
  branch === 'stone'
    ? 'get'
    : branch === 'haft'
      ? 'haft'
      : id === 'grind' || id === 'polish'
        ? 'grind'
        : 'flake';

/** A share of the strip as SVG writes it. */
export const percent = (share: number): string => `${Number((100 * share).toFixed(3))}%`;

/** The stretch that is too thin to see at the strip's own scale: all before the grinding. */
export function beforeGrinding(
  strip: Strip,
): { readonly segments: readonly Segment[]; readonly hours: number } | null {
  const first = strip.segments.find(({ id }) => id === 'grind' || id === 'polish');
  if (first === undefined || first.fromHours === 0 || first.fromHours / strip.hours > 0.2) return null;
  return {
    segments: strip.segments.filter(({ fromHours }) => fromHours < first.fromHours),
    hours: first.fromHours,
  };
}
