import { say } from '../../shared/words/index.ts';
import { listOf, shown, typed, type Field } from './day-fields.ts';
import type { FormWords } from './day-view.ts';
import { DayInput } from './DayInput.tsx';

interface Props {
  readonly words: FormWords;
  readonly field: Field;
  readonly value: unknown;
  /** How many slots the day has, for those who count them. */
  readonly slots: number;
  /** Stations by short name and by what they are called. */
  readonly stations: readonly (readonly [id: string, name: string])[];
  /** `undefined` takes the key away. */
  readonly onChange: (value: unknown) => void;
}

const INPUTS = {
  text: 'text',
  long: 'text',
  words: 'text',
  number: 'text',
  time: 'time',
  date: 'date',
} as const;

/** Several of a few, each with a box to tick. */
function Ticks({ words, field, value, slots, stations, onChange }: Props) {
  const choices: readonly (readonly [string | number, string])[] =
    field.kind === 'slots'
      ? Array.from({ length: slots }, (_, slot) => [slot + 1, say(words.slotShort, { count: slot + 1 })])
      : stations;
  const ticked = listOf(value);
  const change = (choice: string | number, isOn: boolean): void => {
    const next = choices
      .map(([each]) => each)
      .filter((each) => (each === choice ? isOn : ticked.includes(each)));
    onChange(next.length === 0 ? undefined : next);
  };
  return (
    <fieldset class="day-ticks">
      <legend>{say(words[field.label])}</legend>
      {choices.map(([choice, name]) => (
        <label key={choice} class="day-check">
          <input
            type="checkbox"
            checked={ticked.includes(choice)}
            onChange={(event) => change(choice, event.currentTarget.checked)}
          />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** One value of a day file, to be written in a form. */
export function DayField(props: Props) {
  const { words, field, value, onChange } = props;
  if (field.kind === 'slots' || field.kind === 'stations') return <Ticks {...props} />;
  if (field.kind === 'yes') {
    const yes = field.yes ?? true;
    const isOn = value === undefined ? field.silent === true : value === yes;
    const no = field.yes === undefined ? false : undefined;
    const said = (isNow: boolean): unknown => (isNow ? yes : no);
    return (
      <label class="day-check">
        <input
          type="checkbox"
          checked={isOn}
          onChange={(event) => {
            const next = said(event.currentTarget.checked);
            onChange(next === field.silent ? undefined : next);
          }}
        />
        <span>{say(words[field.label])}</span>
      </label>
    );
  }
  if (field.kind === 'pick') {
    return (
      <label class="day-field">
        <span>{say(words[field.label])}</span>
        <select value={shown(value)} onChange={(event) => onChange(typed('text', event.currentTarget.value))}>
          <option value="">{say(words.unsaid)}</option>
          {(field.choices ?? []).map((choice) => (
            <option key={choice} value={choice}>
              {choice.replaceAll('-', ' ')}
            </option>
          ))}
        </select>
      </label>
    );
  }
  const text = field.kind === 'words' ? listOf(value).map(shown).join(', ') : shown(value);
  return (
    <DayInput
      label={say(words[field.label])}
      type={INPUTS[field.kind]}
      isLong={field.kind === 'long'}
      isNumber={field.kind === 'number'}
      text={text}
      onSay={(said) => onChange(typed(field.kind, said))}
    />
  );
}
