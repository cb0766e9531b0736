import type { DayEdit } from '../../shared/day/index.ts';
import { say, type Template } from '../../shared/words/index.ts';
import { DayField } from './DayField.tsx';
import { listOf, mapOf, type Field } from './day-fields.ts';
import type { FormWords } from './day-view.ts';

interface Props {
  readonly words: FormWords;
  readonly title: Template;
  readonly fields: readonly Field[];
  readonly path: readonly [string];
  /** A list, or a map by short names. */
  readonly value: unknown;
  readonly name: (value: unknown, index: number) => string;
  /** A new entry; in a map it goes under a short name made from `freshName`. */
  readonly fresh: Readonly<Record<string, unknown>>;
  readonly freshName?: Template;
  /** What else goes from the file with an entry. */
  readonly withIt?: (key: string) => readonly DayEdit[];
  readonly slots: number;
  readonly stations: readonly (readonly [id: string, name: string])[];
  readonly onChange: (edits: readonly DayEdit[]) => void;
}

/** A short name that is not taken. */
function freeKey(taken: readonly string[], name: string): string {
  const base = name.toLowerCase().replace(/[^a-z0-9]+/g, '-');
  let number = 1;
  while (taken.includes(`${base}-${number}`)) number += 1;
  return `${base}-${number}`;
}

/** All groups, stations, adults, bells or walks, each to be opened, changed or taken away. */
export function DayEntries(props: Props) {
  const { words, title, fields, path, value, name, fresh, freshName, slots, stations, onChange } = props;
  const { withIt = () => [] } = props;
  const isMap = freshName !== undefined;
  const entries: readonly (readonly [string | number, unknown])[] = isMap
    ? Object.entries(mapOf(value))
    : [...listOf(value).entries()];
  const add = (): void => {
    if (isMap) {
      const key = freeKey(Object.keys(mapOf(value)), say(freshName));
      onChange([{ path: [...path, key], value: fresh }]);
    } else if (entries.length === 0) onChange([{ path, value: [fresh] }]);
    else onChange([{ path: [...path, entries.length], value: fresh }]);
  };
  return (
    <details class="day-entries">
      <summary>
        {say(title)} <span class="quiet numbers">{entries.length}</span>
      </summary>
      {entries.map(([key, entry], index) => (
        <details key={key} class="day-entry">
          <summary>{name(entry, index)}</summary>
          <div class="day-fields">
            {fields.map((field) => (
              <DayField
                key={field.key}
                words={words}
                field={field}
                value={mapOf(entry)[field.key]}
                slots={slots}
                stations={stations}
                onChange={(next) => {
                  const at = [...path, key, field.key];
                  onChange([next === undefined ? { path: at, remove: true } : { path: at, value: next }]);
                }}
              />
            ))}
          </div>
          <button
            type="button"
            class="press"
            onClick={() => onChange([{ path: [...path, key], remove: true }, ...withIt(String(key))])}
          >
            {say(words.remove)}
          </button>
        </details>
      ))}
      <button type="button" class="press" onClick={add}>
        {say(words.add)}
      </button>
    </details>
  );
}
