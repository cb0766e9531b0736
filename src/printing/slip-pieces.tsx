import type { PrintBlocks } from './print-view.ts';

/** The teacher's slip, to be cut off and handed back. */
export function TeacherSlip(slip: PrintBlocks['teacher-slip']) {
  return (
    <section class="slip slip-teacher">
      <h2>{slip.title}</h2>
      <p>{slip.what}</p>
      <p class="slip-line">{slip.counted}</p>
      <h3>{slip.outcomesTitle}</h3>
      <ul class="ticks">
        {slip.outcomes.map(({ summary, from }) => (
          <li key={summary}>
            <span class="tick" />
            <span>
              {summary} <span class="quiet small">{from}</span>
            </span>
          </li>
        ))}
      </ul>
      <h3>{slip.rateTitle}</h3>
      <ul class="slip-rates">
        {slip.rates.map(({ asked, answers }) => (
          <li key={asked}>
            <span>{asked}</span>
            {answers.map((answer) => (
              <span key={answer}>
                <span class="tick" /> {answer}
              </span>
            ))}
          </li>
        ))}
      </ul>
      {slip.asks.map((ask) => (
        <p key={ask} class="slip-ask">
          {ask}
        </p>
      ))}
      <p class="small">{slip.safe}</p>
    </section>
  );
}

function PupilSlip({ title, of, how, statement, scale, statements, ask }: PrintBlocks['pupil-slips']) {
  return (
    <section class="slip">
      <p class="slip-title">
        <strong>{title}</strong> <span class="small">{of}</span>
      </p>
      <p class="small">{how}</p>
      <table class="slip-scale">
        <thead>
          <tr>
            <th scope="col">
              <span class="unseen">{statement}</span>
            </th>
            {scale.map((word) => (
              <th key={word} scope="col">
                {word}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {statements.map((said) => (
            <tr key={said}>
              <th scope="row">{said}</th>
              {scale.map((word) => (
                <td key={word}>
                  <span class="tick" />
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      <p class="slip-ask">{ask}</p>
    </section>
  );
}

/** Two slips on a sheet, to be cut apart. */
export function PupilSlips(slip: PrintBlocks['pupil-slips']) {
  return (
    <div class="slips">
      <PupilSlip {...slip} />
      <PupilSlip {...slip} />
    </div>
  );
}
