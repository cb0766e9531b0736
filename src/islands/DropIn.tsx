import { useState } from 'preact/hooks';
import { dropIn, placesForWait } from '../../shared/day/index.ts';
import type { dropInPage } from '../../shared/words/en/day-papers.ts';
import { say, type Template } from '../../shared/words/index.ts';

type Words = Readonly<Record<keyof typeof dropInPage, Template>>;

/** What each number may be; more than this is no table at an open day. ASM. */
const NUMBERS = [
  { key: 'perHour', least: 0.1, most: 1000, step: 'any' },
  { key: 'minutes', least: 0.1, most: 240, step: 'any' },
  { key: 'places', least: 1, most: 100, step: '1' },
  { key: 'most', least: 0, most: 240, step: 'any' },
] as const;
type Key = (typeof NUMBERS)[number]['key'];

const START: Readonly<Record<Key, string>> = { perHour: '20', minutes: '8', places: '3', most: '5' };

/** A wait as a band: a mean to the second would promise too much. */
const band = (words: Words, minutes: number): Template =>
  minutes < 1 ? words.under1 : minutes < 5 ? words.under5 : minutes < 15 ? words.under15 : words.over15;

interface Asked {
  readonly perHour: number;
  readonly minutes: number;
  readonly places: number;
  readonly most: number;
}

function Answer({ words, asked }: { readonly words: Words; readonly asked: Asked }) {
  const { perHour, minutes, places, most } = asked;
  const { queue, leastPlaces } = dropIn({ perHour, minutes, places });
  const needed = placesForWait({ perHour, minutes, mostWaitMinutes: most });
  const first = Math.max(1, places - 1);
  return (
    <>
      <div role="status" class="day-worth">
        <p>
          {queue === null
            ? say(words.grows, { places, least: leastPlaces })
            : say(words.waits, {
                share: Math.round(queue.waitShare * 100),
                wait: say(band(words, queue.meanWaitMinutes)),
                queue: Math.round(queue.meanQueue),
                there: Math.round(queue.meanThere),
              })}
        </p>
        <p>
          <strong>
            {needed === null ? say(words.needsMany) : say(words.needs, { count: needed, most })}
          </strong>
        </p>
      </div>
      <table class="day-grid drop-in-table numbers">
        <caption>{say(words.tableTitle)}</caption>
        <thead>
          <tr>
            {[words.helpers, words.share, words.wait, words.queue].map((head) => (
              <th scope="col" key={say(head)}>
                {say(head)}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {[0, 1, 2, 3].map((more) => {
            const row = dropIn({ perHour, minutes, places: first + more }).queue;
            return (
              <tr key={more} aria-current={first + more === places ? 'true' : undefined}>
                <th scope="row">{first + more}</th>
                <td>
                  {row === null
                    ? say(words.growing)
                    : say(words.percent, { share: Math.round(row.waitShare * 100) })}
                </td>
                <td>{row === null ? say(words.growing) : say(band(words, row.meanWaitMinutes))}</td>
                <td>{row === null ? say(words.growing) : Math.round(row.meanQueue)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </>
  );
}

/** Three numbers and a limit: how long people wait, and how many helpers keep it short. */
export function DropIn({ words }: { readonly words: Words }) {
  const [said, setSaid] = useState(START);
  const read = ({ key, least, most }: (typeof NUMBERS)[number]): number | null => {
    const number = said[key].trim() === '' ? Number.NaN : Number(said[key]);
    const isWhole = key !== 'places' || Number.isInteger(number);
    return number >= least && number <= most && isWhole ? number : null;
  };
  const [perHour, minutes, places, most] = NUMBERS.map(read);
  const isRead =
    typeof perHour === 'number' &&
    typeof minutes === 'number' &&
    typeof places === 'number' &&
    typeof most === 'number';
  return (
    <div class="day drop-in">
      <div class="day-fields">
        {NUMBERS.map((field) => (
          <label key={field.key} class="day-field">
            <span>{say(words[field.key])}</span>
            <input
              type="number"
              inputMode="decimal"
              min={field.least}
              max={field.most}
              step={field.step}
              value={said[field.key]}
              aria-invalid={read(field) === null}
              onInput={(event) => {
                const { value } = event.currentTarget;
                setSaid((before) => ({ ...before, [field.key]: value }));
              }}
            />
            {read(field) === null && (
              <span class="day-unfit">{say(words.unfit, { least: field.least, most: field.most })}</span>
            )}
          </label>
        ))}
      </div>
      {isRead && <Answer words={words} asked={{ perHour, minutes, places, most }} />}
      <p class="small quiet">{say(words.source)}</p>
      <p class="small quiet">{say(words.caution)}</p>
    </div>
  );
}
