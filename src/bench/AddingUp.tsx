import type { Outline } from '../../shared/bench/index.ts';
import { bench as words } from '../../shared/words/en/bench.ts';
import { becauseSentence } from '../../shared/words/en/safety.ts';
import { say } from '../../shared/words/index.ts';
import type { Checked } from './protocol.ts';

interface Props {
  readonly read: Outline;
  readonly checked: Checked | null;
  readonly pupils: number;
  readonly setPupils: (pupils: number) => void;
}

const MOST_PUPILS = 200;

const asNumber = (value: unknown): number => (typeof value === 'number' && value > 0 ? value : 0);

/** Minutes as they stand in the file: what the activities take, and what the whole has. */
function minutesOf({ head, parts }: Outline): { readonly sum: number; readonly whole: number } {
  const each = parts.map((part) => (part.part === 'block' ? asNumber(part.data?.['minutes']) : 0));
  return {
    sum: each.reduce((total, minutes) => total + minutes, 0),
    whole: asNumber(head?.data?.['minutes']),
  };
}

/** What the visit comes to, between two rules as at the head of a sheet: minutes, adults, kit, claims. */
export function AddingUp({ read, checked, pupils, setPupils }: Props) {
  const { sum, whole } = minutesOf(read);
  const left = whole - sum;
  const added = checked?.added ?? null;
  const claims = checked?.claims ?? [];
  const earned = claims.filter(({ isEarned }) => isEarned).length;
  return (
    <section class="sums" aria-label={words.sumTitle}>
      <dl class="sums-line">
        <div data-state={left < 0 ? 'over' : undefined}>
          <dt>{words.sumMinutes}</dt>
          <dd class="numbers">{say(words.sumMinutesOf, { sum, whole })}</dd>
          <dd class="small">
            {left < 0 ? say(words.sumOver, { count: -left }) : say(words.sumLeft, { count: left })}
          </dd>
        </div>
        <div>
          <dt>
            <label for="bench-pupils">{words.sumPupils}</label>
          </dt>
          <dd>
            <input
              id="bench-pupils"
              class="sums-pupils"
              type="number"
              min={1}
              max={MOST_PUPILS}
              value={pupils}
              onInput={({ currentTarget }) => {
                const wanted = Math.round(currentTarget.valueAsNumber);
                if (wanted >= 1 && wanted <= MOST_PUPILS) setPupils(wanted);
              }}
            />
          </dd>
        </div>
        <div>
          <dt>{words.sumAdults}</dt>
          <dd class="numbers">{added === null ? '–' : added.adults}</dd>
          <dd class="small">
            {added === null ? words.sumLater : say(words.sumFirstAid, { count: added.firstAiders })}
          </dd>
        </div>
        <div>
          <dt>{words.sumKit}</dt>
          <dd class="numbers">{added === null ? '–' : added.kit.flatMap(({ items }) => items).length}</dd>
          <dd class="small">
            {added === null ? words.sumLater : say(words.sumKitLists, { count: added.kit.length })}
          </dd>
        </div>
        <div>
          <dt>{words.sumClaims}</dt>
          <dd class="numbers">{say(words.sumClaimsOf, { earned, count: claims.length })}</dd>
        </div>
      </dl>
      {added !== null && (
        <details class="sums-why">
          <summary>{words.sumWhy}</summary>
          <p>{words.sumFloor}</p>
          <ul class="prose-list small">
            {added.because.map((step, index) => (
              <li key={index}>{becauseSentence(step)}</li>
            ))}
            {added.refusals.map(({ id, station, say: sentence }) => (
              <li key={`${id} ${station}`}>{sentence}</li>
            ))}
          </ul>
          <p>
            <strong>{words.sumHazards}</strong>
          </p>
          <p class="small">{added.hazards.join('; ')}</p>
          <p>
            <strong>{words.sumKit}</strong>
          </p>
          <ul class="prose-list small">
            {added.kit.map(({ name, items }) => (
              <li key={name}>
                <strong>{name}</strong>: {items.join('; ')}
              </li>
            ))}
          </ul>
          {claims.length > 0 && (
            <p>
              <strong>{words.sumClaims}</strong>
            </p>
          )}
          <ul class="prose-list small">
            {claims.map(({ code, isEarned, summary }) => (
              <li key={code}>
                <strong>{code}</strong> ({isEarned ? words.sumClaimEarned : words.sumClaimNot}) {summary}
              </li>
            ))}
          </ul>
        </details>
      )}
    </section>
  );
}
