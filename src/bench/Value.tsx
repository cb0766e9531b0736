import { bench as words } from '../../shared/words/en/bench.ts';
import { blank, fits, type Shape } from './field.ts';
import type { FormPlace } from './form-place.ts';
import { Fields } from './Fields.tsx';
import { Items } from './Items.tsx';
import { Simple } from './Simple.tsx';

interface Props {
  readonly shape: Shape;
  readonly value: unknown;
  readonly place: FormPlace;
  /** Read out where no label stands beside it. */
  readonly label?: string;
}

const ways: Readonly<Record<Shape['shape'], string>> = {
  text: words.formText,
  number: words.formNumber,
  yes: words.formYes,
  fixed: '',
  choice: words.formText,
  list: words.formList,
  group: '',
  open: words.formOpen,
  either: '',
};

/** What a way of giving a value is called: its own word, or its keys. */
const wayName = (shape: Shape): string =>
  shape.shape === 'fixed'
    ? String(shape.value)
    : shape.shape === 'group'
      ? shape.fields
          .map(({ key }) => key)
          .slice(0, 3)
          .join(', ')
      : ways[shape.shape];

/** A value by its shape: a line, a choice, a list, a group of keys, or one of several of these. */
function Value({ shape, value, place, label }: Props) {
  switch (shape.shape) {
    case 'list':
      return <Items shape={shape} value={value} place={place} />;
    case 'group':
      return (
        <Fields
          fields={shape.fields}
          values={fits(shape, value) ? (value as Record<string, unknown>) : {}}
          place={place}
        />
      );
    case 'either':
      return <Either of={shape.of} value={value} place={place} />;
    case 'open':
      return (
        <button
          type="button"
          class="press small"
          onClick={() => {
            place.goToFile(place.path);
          }}
        >
          {words.inFile}
        </button>
      );
    case 'fixed':
      return <p>{String(shape.value)}</p>;
    case 'text':
    case 'number':
    case 'yes':
    case 'choice':
      return <Simple shape={shape} value={value} place={place} label={label} />;
    default:
      return shape satisfies never;
  }
}

/** A value that may be given in one of several ways: which, and then that. */
function Either({ of, value, place }: { of: readonly Shape[]; value: unknown; place: FormPlace }) {
  const chosen = of.findIndex((each) => fits(each, value));
  const shape = of[chosen];
  return (
    <div class="form-either">
      <label class="form-as small">
        <span>{words.fieldAs}</span>{' '}
        <select
          value={String(chosen)}
          onChange={({ currentTarget }) => {
            const next = of[Number(currentTarget.value)];
            if (next !== undefined) place.change({ do: 'set', path: place.path, value: blank(next) });
          }}
        >
          {chosen === -1 && <option value="-1">{words.fieldNone}</option>}
          {of.map((each, index) => (
            <option key={index} value={String(index)}>
              {wayName(each)}
            </option>
          ))}
        </select>
      </label>
      {shape !== undefined && <Value shape={shape} value={value} place={place} label={place.name} />}
    </div>
  );
}

/** `Value` as forms call it. */
export const showValue: FormPlace['show'] = (shape, value, place, label) => (
  <Value shape={shape} value={value} place={place} {...(label === undefined ? {} : { label })} />
);
