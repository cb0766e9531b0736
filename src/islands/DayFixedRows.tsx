import type { DayEdit } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import { listOf, mapOf, shown } from './day-fields.ts';
import type { FormWords } from './day-view.ts';

interface Props {
  readonly words: FormWords;
  readonly said: Readonly<Record<string, unknown>>;
  readonly slots: number;
  readonly stations: readonly (readonly [id: string, name: string])[];
  readonly onChange: (edits: readonly DayEdit[]) => void;
}

/** What is settled by hand: a group, a slot, and where it is then. */
export function DayFixedRows({ words, said, slots, stations, onChange }: Props) {
  const rows = listOf(said['fixed']).map(mapOf);
  const groups = Object.entries(mapOf(said['groups'])).map(([id, group]): readonly [string, string] => [
    id,
    shown(mapOf(group)['name']) || id,
  ]);
  const places = [...stations, ['lunch', say(words.lunchAt)], ['free', say(words.freeAt)]] as const;
  const numbers = Array.from({ length: slots }, (_, slot): readonly [string, string] => [
    String(slot + 1),
    say(words.slotShort, { count: slot + 1 }),
  ]);
  const lists = [
    { key: 'group', label: words.group, choices: groups },
    { key: 'slot', label: words.slot, choices: numbers },
    { key: 'at', label: words.at, choices: places },
  ] as const;
  const add = (): void => {
    const fresh = { group: groups[0]?.[0] ?? '', slot: 1, at: stations[0]?.[0] ?? 'free' };
    onChange([{ path: ['fixed'], value: [...rows, fresh] }]);
  };
  return (
    <details class="day-entries">
      <summary>
        {say(words.fixed)} <span class="quiet numbers">{rows.length}</span>
      </summary>
      {rows.map((row, index) => (
        <div key={index} class="day-fields day-fixed-row">
          {lists.map(({ key, label, choices }) => (
            <label key={key} class="day-field">
              <span>{say(label)}</span>
              <select
                value={shown(row[key])}
                onChange={(event) => {
                  const text = event.currentTarget.value;
                  onChange([{ path: ['fixed', index, key], value: key === 'slot' ? Number(text) : text }]);
                }}
              >
                {choices.map(([id, name]) => (
                  <option key={id} value={id}>
                    {name}
                  </option>
                ))}
              </select>
            </label>
          ))}
          <button
            type="button"
            class="press"
            onClick={() => onChange([{ path: ['fixed', index], remove: true }])}
          >
            {say(words.remove)}
          </button>
        </div>
      ))}
      <button type="button" class="press" onClick={add}>
        {say(words.add)}
      </button>
    </details>
  );
}
