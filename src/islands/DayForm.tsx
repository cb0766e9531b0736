import type { DayEdit } from '../../shared/day/index.ts';
import { say, type Template } from '../../shared/words/index.ts';
import { DayEntries } from './DayEntries.tsx';
import { DayField } from './DayField.tsx';
import { withoutFixed, withoutStation } from './day-without.ts';
import { DayFixedRows } from './DayFixedRows.tsx';
import {
  adultFields,
  dayFields,
  groupFields,
  listOf,
  lunchFields,
  mapOf,
  shown,
  slotFields,
  stationFields,
  walkFields,
  type Field,
} from './day-fields.ts';
import type { FormWords } from './day-view.ts';
import { nextSlot } from './next-slot.ts';

interface Props {
  readonly words: FormWords;
  readonly lost: Template;
  /** The file as plain data; null where it is no YAML. */
  readonly parts: unknown;
  readonly onChange: (edits: readonly DayEdit[]) => void;
}

/** What stands at a path, written or taken away. */
const editOf = (path: DayEdit['path'], value: unknown): DayEdit =>
  value === undefined ? { path, remove: true } : { path, value };

/** A day file as a form; every change goes to the file, and the form is read from it again. */
export function DayForm({ words, lost, parts, onChange }: Props) {
  if (parts === null) return <p>{say(lost)}</p>;
  const said = mapOf(parts);
  const slots = listOf(said['slots']);
  const stations = Object.entries(mapOf(said['stations'])).map(([id, station]): readonly [string, string] => [
    id,
    shown(mapOf(station)['name']) || id,
  ]);
  const lunch = said['lunch'] === undefined ? null : mapOf(said['lunch']);
  const fields = (
    list: readonly Field[],
    values: Readonly<Record<string, unknown>>,
    path: DayEdit['path'],
  ) => (
    <div class="day-fields">
      {list.map((field) => (
        <DayField
          key={field.key}
          words={words}
          field={field}
          value={values[field.key]}
          slots={slots.length}
          stations={stations}
          onChange={(value) => onChange([editOf([...path, field.key], value)])}
        />
      ))}
    </div>
  );
  const entries = { words, slots: slots.length, stations, onChange };
  return (
    <div class="day-form">
      <details>
        <summary>{say(words.day)}</summary>
        {fields(dayFields, said, [])}
      </details>
      <DayEntries
        {...entries}
        title={words.slots}
        fields={slotFields}
        path={['slots']}
        value={said['slots']}
        name={(value, index) =>
          say(words.slotName, {
            count: index + 1,
            from: shown(mapOf(value)['from']),
            to: shown(mapOf(value)['to']),
          })
        }
        fresh={nextSlot(slots)}
      />
      <details>
        <summary>{say(words.lunch)}</summary>
        {lunch === null ? (
          <button
            type="button"
            class="press"
            onClick={() =>
              onChange([
                editOf(['lunch'], {
                  slots: [Math.max(1, Math.ceil(slots.length / 2))],
                  places: 30,
                  place:
                    shown(said['gate']) ||
                    shown(mapOf(mapOf(said['stations'])[stations[0]?.[0] ?? ''])['place']),
                }),
              ])
            }
          >
            {say(words.addLunch)}
          </button>
        ) : (
          <>
            {fields(lunchFields, lunch, ['lunch'])}
            <button type="button" class="press" onClick={() => onChange([editOf(['lunch'], undefined)])}>
              {say(words.removeLunch)}
            </button>
          </>
        )}
      </details>
      <DayEntries
        {...entries}
        title={words.groups}
        fields={groupFields}
        path={['groups']}
        value={said['groups']}
        freshName={words.newGroup}
        withIt={(id) => withoutFixed(said, 'group', id)}
        name={(value, index) => shown(mapOf(value)['name']) || String(index + 1)}
        fresh={{
          name: say(words.newGroup),
          pupils: 10,
          ages: '7-8',
          arrives: shown(mapOf(slots[0])['from']),
          leaves: shown(mapOf(slots.at(-1))['to']),
        }}
      />
      <DayEntries
        {...entries}
        title={words.stations}
        fields={stationFields}
        path={['stations']}
        value={said['stations']}
        freshName={words.newStation}
        withIt={(id) => withoutStation(said, id)}
        name={(value, index) => shown(mapOf(value)['name']) || String(index + 1)}
        fresh={{
          name: say(words.newStation),
          place: shown(mapOf(Object.values(mapOf(said['stations']))[0])['place']) || 'tent',
          pupils: 15,
        }}
      />
      <DayEntries
        {...entries}
        title={words.adults}
        fields={adultFields}
        path={['adults']}
        value={said['adults']}
        freshName={words.newAdult}
        name={(value, index) => shown(mapOf(value)['role']) || String(index + 1)}
        fresh={{ role: say(words.newAdult) }}
      />
      <DayEntries
        {...entries}
        title={words.walking}
        fields={walkFields}
        path={['walking']}
        value={said['walking']}
        name={(value) =>
          say(words.walkName, { from: shown(mapOf(value)['from']), to: shown(mapOf(value)['to']) })
        }
        fresh={{ from: shown(said['gate']) || 'gate', to: 'tent', minutes: 2 }}
      />
      <DayFixedRows words={words} said={said} slots={slots.length} stations={stations} onChange={onChange} />
    </div>
  );
}
