import type { Change } from '../../shared/bench/index.ts';
import { bench as words, fieldNames } from '../../shared/words/en/bench.ts';
import { say } from '../../shared/words/index.ts';
import type { Field } from './field.ts';
import { blank } from './field.ts';
import type { FormPlace } from './form-place.ts';

/** A key as a lead reads it. @example keyName('leave-out') // 'Leave out' */
function keyName(key: string): string {
  const plain = fieldNames[key] ?? key.replaceAll('-', ' ');
  return plain.charAt(0).toUpperCase() + plain.slice(1);
}

interface Props {
  readonly fields: readonly Field[];
  readonly values: Readonly<Record<string, unknown>>;
  readonly place: FormPlace;
}

/** The keys of a head, a block or a group: what is said already and what is needed first, the rest behind a press. */
export function Fields({ fields, values, place }: Props) {
  const isShown = ({ key, isNeeded }: Field): boolean => isNeeded || Object.hasOwn(values, key);
  const rest = fields.filter((field) => !isShown(field));
  return (
    <div class="form-fields">
      {fields.filter(isShown).map((field) => (
        <OneField key={field.key} field={field} value={values[field.key]} place={place} />
      ))}
      {rest.length > 0 && (
        <details class="form-more">
          <summary>{words.fieldMore}</summary>
          <ul>
            {rest.map((field) => (
              <li key={field.key}>
                <button
                  type="button"
                  class="press"
                  onClick={() => {
                    place.change({ do: 'set', path: [...place.path, field.key], value: blank(field.shape) });
                  }}
                >
                  {say(words.fieldAdd, { name: keyName(field.key) })}
                </button>
                {field.means !== '' && <span class="small quiet">{field.means}</span>}
              </li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}

interface OneProps {
  readonly field: Field;
  readonly value: unknown;
  readonly place: FormPlace;
}

/** One key: its name, what it means, its value, and a way to take it out where it is not needed. */
function OneField({ field, value, place }: OneProps) {
  const path = [...place.path, field.key];
  const id = `${place.id}-${field.key}`;
  const name = keyName(field.key);
  const change = (made: Change): void => {
    place.change(made);
  };
  const isSimple = ['text', 'number', 'yes', 'choice'].includes(field.shape.shape);
  return (
    <div
      class="form-field"
      role={isSimple ? undefined : 'group'}
      aria-labelledby={isSimple ? undefined : `${id}-name`}
    >
      <div class="form-name">
        {isSimple ? <label for={id}>{name}</label> : <span id={`${id}-name`}>{name}</span>}
        {field.isNeeded ? (
          value === undefined && <span class="small quiet">{words.fieldNeeded}</span>
        ) : (
          <button
            type="button"
            class="form-out small"
            aria-label={say(words.fieldRemove, { name })}
            onClick={() => {
              change({ do: 'remove', path });
            }}
          >
            {words.itemOut}
          </button>
        )}
      </div>
      {place.show(field.shape, value, { ...place, path, id, name })}
      {field.means !== '' && (
        <p class="form-means small quiet" id={`${id}-means`}>
          {field.means}
        </p>
      )}
    </div>
  );
}
