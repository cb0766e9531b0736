import type { HowView } from './lesson-view.ts';

/** The figures behind an answer, each with how it is known: `EstimateFigures.astro` and `WorksList.astro` in a pack. */
export function EstimateHow({ title, lead, heads, rows, trials, works }: HowView) {
  return (
    <details class="working">
      <summary>{title}</summary>
      <p>{lead}</p>
      <table class="answers used-figures">
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
          {rows.map(({ label, value, status, works: numbers }) => (
            <tr key={label}>
              <th scope="row">{label}</th>
              <td class="numbers">{value}</td>
              <td>{status}</td>
              <td class="numbers">{numbers}</td>
            </tr>
          ))}
        </tbody>
      </table>
      {trials.length > 0 && (
        <ul class="trials">
          {trials.map((trial) => (
            <li key={trial}>{trial}</li>
          ))}
        </ul>
      )}
      <ol class="works small">
        {works.map((work) => (
          <li key={work}>{work}</li>
        ))}
      </ol>
    </details>
  );
}
