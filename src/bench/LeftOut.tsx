import { benchFinds as words } from '../../shared/words/en/bench-finds.ts';
import { say } from '../../shared/words/index.ts';

interface Props {
  readonly rows: readonly { readonly row: number; readonly reason: string | null }[];
}

/** Rows that are left out, each with its reason: nothing goes without a word. */
export function LeftOut({ rows }: Props) {
  const out = rows.filter(({ reason }) => reason !== null);
  if (out.length === 0) return null;
  return (
    <details>
      <summary>{words.leftOut}</summary>
      <ul class="prose-list small">
        {out.map(({ row, reason }) => (
          <li key={row}>{say(words.leftOutRow, { row, reason: reason ?? '' })}</li>
        ))}
      </ul>
    </details>
  );
}
