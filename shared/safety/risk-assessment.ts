import { inOrder } from './arising.ts';
import type { SafetyReport } from './report.ts';
import type { SafetyRules } from './rules.ts';

/** A cell of the draft: what the product knows, or a blank for the responsible person. */
export type Cell =
  { readonly fill: 'product'; readonly lines: readonly string[] } | { readonly fill: 'blank' };

export interface DraftRow {
  readonly hazard: string;
  readonly cells: readonly Cell[];
}

/** A risk assessment draft as data. Not valid until a named responsible person completes and signs it. */
export interface RiskDraft {
  readonly columns: readonly { readonly id: string; readonly heading: string }[];
  readonly rows: readonly DraftRow[];
  /** Rows left empty for what only the site knows. */
  readonly blankRows: number;
}

/** At least this many rows are left for the site's own hazards: ours (ASM). */
const BLANK_ROWS = 5;

/** The rows of a draft: known facts filled with their mark, judgements and site-specific boxes blank. */
export function riskDraft(rules: SafetyRules, report: Pick<SafetyReport, 'hazards'>): RiskDraft {
  const { columns } = rules.assessment;
  return {
    columns: columns.map(({ id, heading }) => ({ id, heading })),
    rows: report.hazards.map((hazard): DraftRow => {
      const known: Readonly<Record<string, readonly string[]>> = {
        hazard: [hazard.name],
        who: [hazard.who.join(', '), hazard.worst],
        usual: inOrder(hazard.controls).map(({ text, status, source }) => `${text} (${status}: ${source})`),
      };
      return {
        hazard: hazard.id,
        cells: columns.map(({ id, fill }) =>
          fill === 'blank' ? { fill } : { fill, lines: known[id] ?? [] },
        ),
      };
    }),
    blankRows: BLANK_ROWS,
  };
}

/** A cell as RFC 4180 writes it; one that a spreadsheet would take for a formula is kept as text. */
function csvCell(text: string): string {
  const safe = /^[=+\-@\t\r]/.test(text) ? `'${text}` : text;
  return /[",\r\n]/.test(safe) ? `"${safe.replaceAll('"', '""')}"` : safe;
}

/** A draft as a table for the employer's own form (RFC 4180, CRLF); lines above it are given as rows of one cell. */
export function riskCsv(draft: RiskDraft, above: readonly string[]): string {
  const blank = draft.columns.map(() => '');
  const rows = [
    ...above.map((line) => [line]),
    draft.columns.map(({ heading }) => heading),
    ...draft.rows.map(({ cells }) =>
      cells.map((cell) => (cell.fill === 'blank' ? '' : cell.lines.join('\n'))),
    ),
    ...Array.from({ length: draft.blankRows }, () => blank),
  ];
  return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('');
}
