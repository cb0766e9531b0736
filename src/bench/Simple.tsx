import { bench as words } from '../../shared/words/en/bench.ts';
import type { Shape } from './field.ts';
import type { FormPlace } from './form-place.ts';

interface Props {
  readonly shape: Extract<Shape, { readonly shape: 'text' | 'number' | 'yes' | 'choice' }>;
  readonly value: unknown;
  readonly place: FormPlace;
  /** Read out where no label stands beside it. */
  readonly label?: string | undefined;
}

const LONG = 125;

const asText = (value: unknown): string =>
  typeof value === 'string' || typeof value === 'number' || typeof value === 'boolean' ? String(value) : '';

/** A value of one line: words, a number, a choice, yes or no. Written into the file as one types. */
export function Simple({ shape, value, place, label }: Props) {
  const set = (next: unknown): void => {
    place.change({ do: 'set', path: place.path, value: next });
  };
  const common = { id: place.id, 'aria-label': label, class: 'form-value' };
  if (shape.shape === 'choice')
    return (
      <select
        {...common}
        value={asText(value)}
        onChange={({ currentTarget }) => {
          set(currentTarget.value);
        }}
      >
        {!shape.options.includes(asText(value)) && <option value={asText(value)}>{asText(value)}</option>}
        {shape.options.map((option) => (
          <option key={option} value={option}>
            {option}
          </option>
        ))}
      </select>
    );
  if (shape.shape === 'yes')
    return (
      <select
        {...common}
        value={asText(value)}
        onChange={({ currentTarget }) => {
          set(currentTarget.value === 'true');
        }}
      >
        <option value="true">{words.yes}</option>
        <option value="false">{words.no}</option>
      </select>
    );
  if (shape.shape === 'number')
    return (
      <input
        {...common}
        type="number"
        inputMode={shape.isWhole ? 'numeric' : 'decimal'}
        step={shape.isWhole ? 1 : 'any'}
        min={shape.least ?? undefined}
        max={shape.most ?? undefined}
        value={asText(value)}
        onInput={({ currentTarget }) => {
          const number = currentTarget.valueAsNumber;
          if (Number.isFinite(number)) set(number);
        }}
      />
    );
  const isLong = (shape.most ?? 0) > LONG || asText(value).length > LONG / 2;
  const list = place.offered(place.path.findLast((step) => typeof step === 'string') ?? '');
  return isLong && list === null ? (
    <textarea
      {...common}
      rows={2}
      value={asText(value)}
      onInput={({ currentTarget }) => {
        set(currentTarget.value.replaceAll(/\s*\n\s*/g, ' '));
      }}
    />
  ) : (
    <input
      {...common}
      type="text"
      list={list ?? undefined}
      autocomplete="off"
      value={asText(value)}
      onInput={({ currentTarget }) => {
        set(currentTarget.value);
      }}
    />
  );
}
