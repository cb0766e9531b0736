import {
  FIELDS,
  UNITS,
  type ColumnGuess,
  type Field,
  type RowIn,
  type Unit,
} from '../../shared/finds-in/index.ts';
import { benchFinds as words } from '../../shared/words/en/bench-finds.ts';
import { findsInWords } from '../../shared/words/en/finds-in.ts';
import { say } from '../../shared/words/index.ts';

interface Props {
  readonly columns: readonly ColumnGuess[];
  readonly rows: readonly RowIn[];
  readonly giveColumn: (column: number, field: Field | null) => void;
  readonly giveUnit: (column: number, unit: Unit) => void;
}

const SAMPLES = 3;
const units = Object.keys(UNITS);

/** The columns of a finds list: how each begins, what it is taken to hold, and why; each guess can be put right. */
export function ColumnsTable({ columns, rows, giveColumn, giveUnit }: Props) {
  const samplesOf = (index: number): string =>
    rows
      .filter(({ outcome }) => outcome !== 'left-out')
      .map(({ cells }) => cells[index] ?? '')
      .filter((cell) => cell !== '')
      .slice(0, SAMPLES)
      .join(' · ');
  return (
    <div class="wide-table" tabIndex={0} role="region" aria-label={words.columns}>
      <table class="columns-table">
        <caption>{words.columns}</caption>
        <thead>
          <tr>
            <th scope="col">{words.column}</th>
            <th scope="col">{words.columnFirst}</th>
            <th scope="col">{words.columnHolds}</th>
            <th scope="col">{words.columnUnit}</th>
            <th scope="col">{words.columnWhy}</th>
          </tr>
        </thead>
        <tbody>
          {columns.map(({ index, header, guess, unit, why }) => {
            const named = header === '' ? words.columnNameless : header;
            return (
              <tr key={index}>
                <td>{named}</td>
                <td class="small">{samplesOf(index)}</td>
                <td>
                  <select
                    aria-label={say(words.columnSelect, { header: named })}
                    value={guess ?? ''}
                    onChange={({ currentTarget }) => {
                      giveColumn(index, FIELDS.find((field) => field === currentTarget.value) ?? null);
                    }}
                  >
                    <option value="">{words.columnUnused}</option>
                    {FIELDS.map((field) => (
                      <option key={field} value={field}>
                        {findsInWords.fieldName(field)}
                      </option>
                    ))}
                  </select>
                </td>
                <td>
                  {unit !== null && (
                    <select
                      aria-label={say(words.columnUnitSelect, { header: named })}
                      value={unit}
                      onChange={({ currentTarget }) => {
                        // The options are the units.
                        giveUnit(index, currentTarget.value as Unit);
                      }}
                    >
                      {units.map((each) => (
                        <option key={each} value={each}>
                          {each}
                        </option>
                      ))}
                    </select>
                  )}
                </td>
                <td class="small">{findsInWords.column(why)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
