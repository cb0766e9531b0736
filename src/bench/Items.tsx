import { bench as words } from '../../shared/words/en/bench.ts';
import { say } from '../../shared/words/index.ts';
import { blank, type Shape } from './field.ts';
import { Simple } from './Simple.tsx';
import type { FormPlace } from './form-place.ts';

interface Props {
  readonly shape: Extract<Shape, { readonly shape: 'list' }>;
  readonly value: unknown;
  readonly place: FormPlace;
}

/** A list: as ticks where the words are few and known, else item by item. */
export function Items({ shape, value, place }: Props) {
  const items: readonly unknown[] = Array.isArray(value) ? value : [];
  if (shape.item.shape === 'choice')
    return <Ticks options={shape.item.options} items={items} place={place} />;
  const isFull = shape.most !== null && items.length >= shape.most;
  return (
    <>
      <ol class="form-items" data-items={shape.item.shape}>
        {items.map((item, index) => (
          <Item key={index} shape={shape.item} item={item} index={index} count={items.length} place={place} />
        ))}
      </ol>
      {!isFull && (
        <button
          type="button"
          class="press small"
          aria-label={`${words.itemAdd}: ${place.name}`}
          onClick={() => {
            place.change(
              items.length === 0
                ? { do: 'set', path: place.path, value: [blank(shape.item)] }
                : { do: 'insert', path: place.path, at: items.length, value: blank(shape.item) },
            );
          }}
        >
          {words.itemAdd}
        </button>
      )}
    </>
  );
}

interface ItemProps {
  readonly shape: Shape;
  readonly item: unknown;
  readonly index: number;
  readonly count: number;
  readonly place: FormPlace;
}

function Item({ shape, item, index, count, place }: ItemProps) {
  const named = { number: index + 1, name: place.name };
  const here = {
    ...place,
    path: [...place.path, index],
    id: `${place.id}-${index}`,
    name: `${place.name} ${index + 1}`,
  };
  // Bare words are a set more than a row; where their order does matter, it is written in the file.
  const canMove = shape.shape !== 'text';
  const move = (to: number): void => {
    place.change({ do: 'move', path: place.path, from: index, to });
  };
  const isSimple =
    shape.shape === 'text' || shape.shape === 'number' || shape.shape === 'yes' || shape.shape === 'choice';
  return (
    <li class="form-item">
      <div class="form-item-value">
        {isSimple ? (
          <Simple shape={shape} value={item} place={here} label={here.name} />
        ) : (
          place.show(shape, item, here)
        )}
      </div>
      <div class="form-item-acts">
        {canMove && index > 0 && (
          <button
            type="button"
            class="form-out small"
            aria-label={say(words.itemEarlier, named)}
            onClick={() => {
              move(index - 1);
            }}
          >
            {words.itemUp}
          </button>
        )}
        {canMove && index < count - 1 && (
          <button
            type="button"
            class="form-out small"
            aria-label={say(words.itemLater, named)}
            onClick={() => {
              move(index + 1);
            }}
          >
            {words.itemDown}
          </button>
        )}
        <button
          type="button"
          class="form-out small"
          aria-label={say(words.itemRemove, named)}
          onClick={() => {
            place.change({ do: 'remove', path: here.path });
          }}
        >
          {words.itemOut}
        </button>
      </div>
    </li>
  );
}

interface TicksProps {
  readonly options: readonly string[];
  readonly items: readonly unknown[];
  readonly place: FormPlace;
}

/** A few known words, each to be ticked; they are written in their own order. */
function Ticks({ options, items, place }: TicksProps) {
  return (
    <ul class="form-ticks">
      {options.map((option) => (
        <li key={option}>
          <label>
            <input
              type="checkbox"
              checked={items.includes(option)}
              onChange={({ currentTarget }) => {
                const chosen = options.filter((each) =>
                  each === option ? currentTarget.checked : items.includes(each),
                );
                place.change({ do: 'set', path: place.path, value: chosen });
              }}
            />
            <span>{option}</span>
          </label>
        </li>
      ))}
    </ul>
  );
}
