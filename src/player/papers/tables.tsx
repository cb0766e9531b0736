import type { ComponentChildren } from 'preact';
import { DrawnHere } from '../DrawnHere.tsx';
import type { Blocks, CellView } from './paper-view.ts';

/** A table of more rows may go on over the page, between rows and under its heads again. */
const MOST_KEPT_WHOLE = 7;
/** A table of more columns is one of figures, and stays a table on a phone. */
const MOST_STACKED = 3;

/** A table of the teacher notes: `NotesTable.astro` in a pack. */
export function Table({ heads, rows, narrow = [], isNameWide = false, wide }: Blocks['table']) {
  const isNarrow = (column: number): boolean => narrow.includes(column);
  const table = (
    <table
      class={`answers notes-table${heads.length <= MOST_STACKED ? ' stacks' : ''}`}
      data-columns={heads.length}
      data-wide={isNameWide}
      data-whole={rows.length <= MOST_KEPT_WHOLE}
    >
      <thead>
        <tr>
          {heads.map((head, column) =>
            head === '' ? (
              <td key={column} />
            ) : (
              <th key={column} scope="col" data-narrow={isNarrow(column)}>
                {head}
              </th>
            ),
          )}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...cells], row) => (
          <tr key={row}>
            <th scope="row" data-narrow={isNarrow(0)}>
              {name !== undefined && <Name {...name} />}
            </th>
            {cells.map(({ text, more = [] }, index) => (
              <td
                key={index}
                class={isNarrow(index + 1) ? 'numbers' : undefined}
                data-narrow={isNarrow(index + 1)}
                data-label={text === '' ? undefined : heads[index + 1]}
              >
                {text}
                {more.map((line) => (
                  <span key={line} class="answers-also">
                    {line}
                  </span>
                ))}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
  return <Framed wide={wide}>{table}</Framed>;
}

/** A table too wide for a phone is moved sideways in a frame of its own. */
function Framed({
  wide,
  children,
}: {
  readonly wide: string | undefined;
  readonly children: ComponentChildren;
}) {
  return wide === undefined ? (
    <>{children}</>
  ) : (
    <div class="notes-scroll" tabIndex={0} role="group" aria-label={wide}>
      {children}
    </div>
  );
}

function Name({ text, more = [], drawn }: CellView) {
  return (
    <span class={drawn === undefined ? undefined : 'answers-find'}>
      {drawn !== undefined && <DrawnHere {...drawn} />}
      <span>
        <strong>{text}</strong>
        {more.map((line) => (
          <span key={line}>
            {' '}
            <span class="answers-number numbers">{line}</span>
          </span>
        ))}
      </span>
    </span>
  );
}

/** A table to fill in by hand. */
export function Blanks({ look, heads, isFirstUnseen = false, rows, wide }: Blocks['blanks']) {
  const table = (
    <table class={look}>
      <thead>
        <tr>
          {heads.map((head, column) => (
            <th key={head} scope="col">
              {isFirstUnseen && column === 0 ? <span class="unseen">{head}</span> : head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, cells }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {cells.map((cell, column) => (
              <td key={column}>{cell}</td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
  return <Framed wide={wide}>{table}</Framed>;
}
