import type { GridCell, PrintBlocks } from './print-view.ts';

export function Caution({ strong, text }: PrintBlocks['caution']) {
  return (
    <p class="caution" role="note" data-caution>
      <strong>{strong}</strong> {text}
    </p>
  );
}

function Said({ text, aside, standsOut, hasTick }: GridCell) {
  return (
    <>
      {hasTick === true && <span class="tick" />}
      {hasTick === true && ' '}
      {text}
      {standsOut !== undefined && <strong class="strictest">{standsOut}</strong>}
      {aside !== undefined && <span class="quiet small"> {aside}</span>}
    </>
  );
}

const lookOf = ({ isNumber, isWrite }: GridCell): string | undefined =>
  isNumber === true ? 'numbers' : isWrite === true ? 'write' : undefined;

/** A table with the names of its rows in the first column; on a narrow sheet each cell stands under its head. */
export function Grid({ look, heads, rows }: PrintBlocks['grid']) {
  return (
    <table class={`answers ${look}`.trim()}>
      <thead>
        <tr>
          {heads.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(([name, ...cells], row) => (
          <tr key={row}>
            {name !== undefined && (
              <th scope="row" class={lookOf(name)}>
                <Said {...name} />
              </th>
            )}
            {cells.map((cell, column) => (
              <td key={column} class={lookOf(cell)} data-label={heads[column + 1]}>
                <Said {...cell} />
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Names with room beside each, to be completed by hand. */
export function Form({ names, blank }: PrintBlocks['form']) {
  return (
    <table class="answers blanks keeps">
      <tbody>
        {names.map((name) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            <td class="quiet small">{blank}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}

export function Marked({ items }: PrintBlocks['marked']) {
  return (
    <ul>
      {items.map(({ strong, text }) => (
        <li key={strong}>
          <strong>{strong}</strong> {text}
        </li>
      ))}
    </ul>
  );
}

export function Columns({ items }: PrintBlocks['columns']) {
  return (
    <ul class="kit-columns">
      {items.map((item, index) => (
        <li key={index}>{item}</li>
      ))}
    </ul>
  );
}

export function Facts({ facts }: PrintBlocks['facts']) {
  return (
    <dl class="station-facts">
      {facts.map(({ name, value }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

/** Each with a box to tick. */
export function Ticks({ items }: { readonly items: readonly string[] }) {
  return (
    <ul class="ticks">
      {items.map((item, index) => (
        <li key={index}>
          <span class="tick" />
          <span>{item}</span>
        </li>
      ))}
    </ul>
  );
}

export function Lists({ lists }: PrintBlocks['lists']) {
  return (
    <div class="kit-lists">
      {lists.map(({ title, aside, items }) => (
        <section key={title} class="kit-list">
          <h2>
            {title} <span class="paper-aside">{aside}</span>
          </h2>
          <Ticks items={items} />
        </section>
      ))}
    </div>
  );
}
