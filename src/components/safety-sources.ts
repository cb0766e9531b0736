import type { Hazard, SafetyReport, SafetyRules } from '../../shared/safety/index.ts';

type Cited = SafetyRules['sources'][number];

/** The sources that hazards and further rows name, each once, in the order of the rules. */
export function sourcesCited(
  rules: SafetyRules,
  hazards: readonly Hazard[],
  rows: readonly { readonly source: string }[],
): readonly Cited[] {
  const ids = new Set([...hazards.flatMap(({ controls }) => controls), ...rows].map(({ source }) => source));
  return rules.sources.filter(({ id }) => ids.has(id));
}

/** What a safety sheet cites beside its hazards: kit, signs, clauses, ratios. */
export const rowsOfSheet = (
  rules: SafetyRules,
  report: SafetyReport,
): readonly { readonly source: string }[] => [
  ...report.kit,
  ...report.signs,
  ...rules.clauses,
  ...rules.ratios,
  rules.edgeCheck,
];
