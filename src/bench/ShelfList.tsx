import { useState } from 'preact/hooks';
import type { KeptVisit } from '../../shared/bench/index.ts';
import { bench as words } from '../../shared/words/en/bench.ts';
import { benchCarry } from '../../shared/words/en/bench-carry.ts';
import { say } from '../../shared/words/index.ts';
import type { Shelf } from '../stores/bench-shelf.ts';

interface Props {
  readonly shelf: Shelf | null | undefined;
  readonly openId: string | null;
  readonly open: (visit: KeptVisit) => void;
  readonly drop: (id: string) => void;
  readonly save: () => void;
}

const when = new Intl.DateTimeFormat('en-GB', { dateStyle: 'medium', timeStyle: 'short' });

function changedAt(changed: string): string {
  const date = new Date(changed);
  return Number.isNaN(date.getTime()) ? '' : when.format(date);
}

/** Every visit kept on this device, newest first. Throwing away is asked twice. */
export function ShelfList({ shelf, openId, open, drop, save }: Props) {
  const [asked, setAsked] = useState<string | null>(null);
  if (shelf === null || shelf === undefined) return null;
  const { visits, later, unreadable } = shelf;
  return (
    <>
      {visits.length === 0 && <p>{words.shelfNone}</p>}
      <ul class="shelf-list">
        {visits.map((visit) => (
          <li key={visit.id} aria-current={visit.id === openId ? 'true' : undefined}>
            <button
              type="button"
              class="press"
              aria-label={say(words.shelfOpen, { name: visit.name })}
              onClick={() => {
                open(visit);
              }}
            >
              {visit.name}
            </button>
            <span class="small quiet">{say(words.shelfChanged, { when: changedAt(visit.changed) })}</span>
            {asked === visit.id ? (
              <span class="shelf-sure">
                <span class="small">{words.shelfDropSure}</span>
                <button
                  type="button"
                  class="press small"
                  onClick={() => {
                    setAsked(null);
                    drop(visit.id);
                  }}
                >
                  {say(words.shelfDropYes, { name: visit.name })}
                </button>
                <button
                  type="button"
                  class="press small"
                  onClick={() => {
                    setAsked(null);
                  }}
                >
                  {words.shelfDropNo}
                </button>
              </span>
            ) : (
              <button
                type="button"
                class="form-out small"
                onClick={() => {
                  setAsked(visit.id);
                }}
              >
                {say(words.shelfDrop, { name: visit.name })}
              </button>
            )}
          </li>
        ))}
      </ul>
      {visits.length > 0 && (
        <p class="shelf-save">
          <button type="button" class="press small" onClick={save}>
            {benchCarry.saveShelf}
          </button>
          <span class="small quiet">{benchCarry.saveShelfLead}</span>
        </p>
      )}
      {later > 0 && <p class="small">{say(words.shelfLater, { count: later })}</p>}
      {unreadable > 0 && <p class="small">{say(words.shelfUnreadable, { count: unreadable })}</p>}
    </>
  );
}
