import { Ticks } from './plain-pieces.tsx';
import type { ControlSaid, HazardSaid, PrintBlocks } from './print-view.ts';

function Controls({
  controls,
  isSmall = false,
}: {
  readonly controls: readonly ControlSaid[];
  readonly isSmall?: boolean;
}) {
  return (
    <ul>
      {controls.map(({ text, mark }) => (
        <li key={text}>
          {text} <span class={isSmall ? 'quiet small' : 'quiet'}>{mark}</span>
        </li>
      ))}
    </ul>
  );
}

function Hazard({ name, who, controls, never, decides }: HazardSaid) {
  return (
    <div class="hazard">
      {who === null ? <p class="hazard-name">{name}</p> : <h3>{name}</h3>}
      {who !== null && <p>{who}</p>}
      <Controls controls={controls} isSmall={who !== null} />
      {never !== null && <p>{never}</p>}
      {decides !== null && <p class="quiet">{decides}</p>}
    </div>
  );
}

/** Hazards, each with what is usually done; on a helper's card only what is done on the day. */
export function Hazards({ hazards }: PrintBlocks['hazards']) {
  return (
    <div class="hazards">
      {hazards.map((hazard) => (
        <Hazard key={hazard.name} {...hazard} />
      ))}
    </div>
  );
}

export function Never({ title, lines, after }: PrintBlocks['never']) {
  return (
    <div class="never">
      <h3>{title}</h3>
      <ul>
        {lines.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {after !== null && <p>{after}</p>}
    </div>
  );
}

/** What is set out at a station, and how it is run. */
export function Station({ setOut, run }: PrintBlocks['station']) {
  return (
    <div class="paper-columns">
      <div>
        <h3>{setOut.title}</h3>
        <Ticks items={setOut.items} />
      </div>
      <div>
        <h3>{run.title}</h3>
        <ol class="run-steps">
          {run.steps.map((step) => (
            <li key={step}>{step}</li>
          ))}
        </ol>
        {run.after !== null && <p>{run.after}</p>}
        <p class="quiet small">{run.note}</p>
      </div>
    </div>
  );
}

type RiskView = PrintBlocks['risk'];

function Completed({ wide, short }: { readonly wide: readonly string[]; readonly short: readonly string[] }) {
  return (
    <>
      {wide.map((head) => (
        <td key={head} class="write" data-label={head} />
      ))}
      <td>
        <span class="risk-blanks">
          {short.map((head) => (
            <span key={head}>{head}</span>
          ))}
        </span>
      </td>
    </>
  );
}

function RiskRow({
  hazard,
  heads,
  short,
}: Pick<RiskView, 'heads' | 'short'> & { readonly hazard: HazardSaid }) {
  return (
    <tr>
      <th scope="row">
        <strong>{hazard.name}</strong>
        <span class="risk-who">{hazard.who}</span>
        <span class="risk-who">{hazard.decides}</span>
      </th>
      <td data-label={heads.usual}>
        <Controls controls={hazard.controls} />
        {hazard.never !== null && <p>{hazard.never}</p>}
      </td>
      <Completed wide={heads.wide} short={short} />
    </tr>
  );
}

/** The draft of a risk assessment: what is known is filled in, what only the place knows is left to complete. */
export function Risk({ heads, short, hazards, siteRows, blank }: RiskView) {
  return (
    <table class="answers stacks risk-table">
      <thead>
        <tr>
          <th scope="col" data-column="hazard">
            {heads.hazard}
          </th>
          <th scope="col" data-column="usual">
            {heads.usual}
          </th>
          {heads.wide.map((head) => (
            <th key={head} scope="col">
              {head}
            </th>
          ))}
          <th scope="col" data-column="person">
            {heads.person}
          </th>
        </tr>
      </thead>
      <tbody>
        {hazards.map((hazard) => (
          <RiskRow key={hazard.name} hazard={hazard} heads={heads} short={short} />
        ))}
        {siteRows.map((row) => (
          <tr key={row}>
            <th scope="row">
              <strong>{row}</strong>
              <span class="risk-who">{blank}</span>
            </th>
            <td class="write" data-label={heads.usual} />
            <Completed wide={heads.wide} short={short} />
          </tr>
        ))}
      </tbody>
    </table>
  );
}

/** Words to hang, on a page of their own. */
export function Sign({ large, beneath }: PrintBlocks['sign']) {
  return (
    <section class="sign" aria-label={large}>
      <p class="sign-large">{large}</p>
      {beneath !== null && <p class="sign-beneath">{beneath}</p>}
    </section>
  );
}
