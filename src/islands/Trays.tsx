import { say } from '../../shared/words/index.ts';
import type { SortActivity, SortFind, SortTray } from '../../shared/activities/scorers.ts';
import type { SortStore, SortTable } from '../stores/sort.ts';
import { Drawing } from './Drawing.tsx';
import type { SortWords } from './sort-view.ts';

interface Props {
  readonly activity: SortActivity;
  readonly words: SortWords;
  readonly table: SortTable;
  readonly store: SortStore;
  readonly trays: readonly SortTray[];
  readonly onPlace: (tray: SortTray, byKey: boolean) => void;
  readonly onLift: (find: string, byKey: boolean) => void;
}

/** The finds trays. While a find is in the hand the whole tray is one button; otherwise what lies in it can be lifted. */
export function Trays({ activity, words, table, store, trays, onPlace, onLift }: Props) {
  const held = activity.finds.find(({ id }) => id === table.hand) ?? null;
  const isHands = table.way === 'hands';
  return (
    <ul class="trays" aria-label={say(words.traysLabel)} data-count={trays.length}>
      {trays.map((tray, index) => {
        const inside = activity.finds.filter(({ id }) => table.placed[id] === tray.id && id !== table.hand);
        return (
          <li key={tray.id} class="tray" data-state={held === null || isHands ? 'idle' : 'open'}>
            {activity.ownTrays && held === null ? (
              <label class="tray-head">
                <span class="unseen">{say(words.trayNameLabel, { number: index + 1 })}</span>
                <input
                  class="tray-own-name"
                  maxLength={40}
                  value={tray.name}
                  onInput={(event) => store.renameTray(tray.id, event.currentTarget.value)}
                />
              </label>
            ) : held !== null && !isHands ? (
              <button
                type="button"
                class="tray-head tray-place"
                data-tray={tray.id}
                onClick={(event) => onPlace(tray, event.detail === 0)}
              >
                <TrayName tray={tray} />
                <span class="unseen">{say(words.placeHere, { number: held.smallFind })}</span>
              </button>
            ) : (
              <p class="tray-head">
                <TrayName tray={tray} />
              </p>
            )}
            {isHands ? (
              <HandsCount tray={tray} words={words} held={held} table={table} store={store} />
            ) : (
              <ul class="tray-finds" aria-label={say(words.trayHolds, { count: inside.length })}>
                {inside.map((find) => (
                  <li key={find.id}>
                    <button
                      type="button"
                      class="tray-find"
                      disabled={held !== null}
                      data-find={find.id}
                      aria-label={say(words.findInTray, { number: find.smallFind, tray: tray.name })}
                      onClick={(event) => onLift(find.id, event.detail === 0)}
                    >
                      <Drawing find={find.id} />
                      <span class="numbers">{find.smallFind}</span>
                    </button>
                  </li>
                ))}
              </ul>
            )}
          </li>
        );
      })}
    </ul>
  );
}

const TrayName = ({ tray }: { readonly tray: SortTray }) => (
  <>
    <span class="tray-name">{tray.name}</span>
    {tray.hint !== '' && <span class="tray-hint">{tray.hint}</span>}
  </>
);

interface HandsProps extends Pick<Props, 'words' | 'table' | 'store'> {
  readonly tray: SortTray;
  readonly held: SortFind | null;
}

/** Hands up: the lead keys in how many hands went up for this tray. */
function HandsCount({ tray, words, held, table, store }: HandsProps) {
  if (held === null) return <p class="hands-none quiet">–</p>;
  const count = table.hands[held.id]?.[tray.id] ?? 0;
  const set = (next: number): void => store.countHands(held.id, tray.id, next);
  return (
    <div class="hands">
      <button
        type="button"
        class="press"
        aria-label={say(words.handsFewer, { tray: tray.name })}
        onClick={() => set(count - 1)}
      >
        −
      </button>
      <input
        class="hands-count numbers"
        type="number"
        inputMode="numeric"
        min={0}
        max={99}
        aria-label={say(words.handsFor, { tray: tray.name })}
        value={count}
        onInput={(event) => set(Number(event.currentTarget.value) || 0)}
      />
      <button
        type="button"
        class="press"
        aria-label={say(words.handsMore, { tray: tray.name })}
        onClick={() => set(count + 1)}
      >
        +
      </button>
    </div>
  );
}
