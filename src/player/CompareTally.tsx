import type { TallyView } from './beside-view.ts';
import { DrawnHere } from './DrawnHere.tsx';

type Cell = TallyView['rows'][number]['cells'][number];

/** What each pit holds: `CompareTally.astro` in a pack. */
export function CompareTally({ title, how, kind, none, pits, rows }: TallyView) {
  return (
    <div class="compare-scroll" tabIndex={0} role="group" aria-label={title}>
      <table class="tally">
        <caption>
          {title}
          {how !== null && <span class="tally-how quiet small">{how}</span>}
        </caption>
        <thead>
          <tr>
            <th scope="col">{kind}</th>
            {pits.map((pit) => (
              <th key={pit} scope="col" class="numbers">
                {pit}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ name, drawn, cells }) => (
            <tr key={name}>
              <th scope="row">
                <span class="tally-kind">
                  <DrawnHere {...drawn} />
                  {name}
                </span>
              </th>
              {cells.map((cell, index) => (
                <td key={pits[index]} class="numbers">
                  <Strokes {...cell} none={none} />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Strokes({ count, strokes, none }: Cell & { readonly none: string }) {
  if (strokes === null) return <>{count === 0 ? '·' : count}</>;
  if (count === 0) return <span class="quiet">{none}</span>;
  const { width, height, path } = strokes;
  return (
    <span class="tally-strokes">
      <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} aria-hidden="true">
        <path d={path} />
      </svg>
      <span>{count}</span>
    </span>
  );
}
