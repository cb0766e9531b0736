import type { Plan } from '../../shared/compile/index.ts';
import type { MakingEvidence } from '../../shared/library/index.ts';

type Figure = MakingEvidence['figures']['coefficients']['knap-base'];

/** Every figure of the making model: the single ones, the spreads, then those of each table's rows. */
export function makingFigures({ figures }: MakingEvidence): readonly Figure[] {
  const ofTables = Object.values(figures.tables).flatMap((rows: readonly object[]) =>
    rows.flatMap((row) => Object.values(row).filter(isFigure)),
  );
  return [...Object.values(figures.coefficients), ...Object.values(figures.spreads), ...ofTables];
}

const isFigure = (value: unknown): value is Figure =>
  typeof value === 'object' && value !== null && 'middle' in value && 'sources' in value;

/** The lessons that stand on each figure, by the figure's id. */
export function lessonsByFigure(
  lessons: readonly { readonly id: string; readonly plan: Plan | null }[],
): ReadonlyMap<string, readonly { readonly id: string; readonly title: string }[]> {
  const uses = new Map<string, { id: string; title: string }[]>();
  for (const { id, plan } of lessons) {
    const used = new Set(
      (plan?.activities ?? []).flatMap((activity) =>
        'used' in activity ? activity.used.map((figure) => figure.id) : [],
      ),
    );
    for (const figure of used) {
      const before = uses.get(figure) ?? [];
      uses.set(figure, [...before, { id, title: plan?.title ?? id }]);
    }
  }
  return uses;
}
