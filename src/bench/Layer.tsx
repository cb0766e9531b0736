import type { Change, Outline, YamlPiece } from '../../shared/bench/index.ts';
import type { Path } from '../../shared/lesson/index.ts';
import { bench as words } from '../../shared/words/en/bench.ts';
import { say } from '../../shared/words/index.ts';
import { Fields } from './Fields.tsx';
import type { Field } from './field.ts';
import { LayerEdge } from './LayerEdge.tsx';
import type { Edits } from './edits.ts';
import type { FormPlace } from './form-place.ts';
import { showValue } from './Value.tsx';

type Part = Outline['parts'][number];

interface Props {
  readonly name: string;
  readonly about: string;
  readonly minutes: number | null;
  readonly piece:
    | { readonly what: 'head'; readonly head: YamlPiece | null }
    | { readonly what: 'part'; readonly part: Part; readonly number: number; readonly count: number };
  readonly fields: readonly Field[];
  readonly isOpen: boolean;
  readonly toggle: () => void;
  readonly edits: Edits;
  readonly offered: (key: string) => string | null;
}

/** One layer of the section: its name and length, ways to move it, and its form when it is opened. */
export function Layer({ name, about, minutes, piece, fields, isOpen, toggle, edits, offered }: Props) {
  const number = piece.what === 'part' ? piece.number : null;
  const formId = `form-${number ?? 'head'}`;
  const kind = piece.what === 'head' ? 'head' : piece.part.part;
  return (
    <li class="layer" data-part={kind} data-state={isOpen ? 'open' : undefined}>
      <LayerEdge seed={number ?? 0} isSurface={piece.what === 'head'} />
      <div class="layer-rod" aria-hidden="true" style={{ '--minutes': String(minutes ?? 0) }} />
      <div class="layer-body">
        <div class="layer-head">
          <h3>
            <button
              type="button"
              class="layer-name"
              aria-expanded={isOpen}
              aria-controls={formId}
              onClick={toggle}
            >
              <span class="layer-title">{name}</span>
              <span class="small quiet">{about}</span>
            </button>
          </h3>
          {minutes !== null && (
            <span class="layer-minutes numbers">{say(words.layerMinutes, { minutes })}</span>
          )}
          {piece.what === 'part' && (
            <Moves number={piece.number} count={piece.count} name={name} edits={edits} />
          )}
        </div>
        <div id={formId} class="layer-form" hidden={!isOpen}>
          {isOpen && <LayerForm piece={piece} fields={fields} edits={edits} offered={offered} />}
        </div>
      </div>
    </li>
  );
}

/** Earlier, later, out. */
function Moves({
  number,
  count,
  name,
  edits,
}: {
  number: number;
  count: number;
  name: string;
  edits: Edits;
}) {
  const by = (steps: -1 | 1) => (): void => {
    edits.move(number, steps, name);
  };
  return (
    <div class="layer-acts">
      <button
        type="button"
        class="form-out small"
        aria-label={say(words.earlier, { name })}
        aria-disabled={number === 0}
        onClick={number === 0 ? undefined : by(-1)}
      >
        {words.earlierShort}
      </button>
      <button
        type="button"
        class="form-out small"
        aria-label={say(words.later, { name })}
        aria-disabled={number === count - 1}
        onClick={number === count - 1 ? undefined : by(1)}
      >
        {words.laterShort}
      </button>
      <button
        type="button"
        class="form-out small"
        aria-label={say(words.remove, { name })}
        onClick={() => {
          edits.remove(number, name);
        }}
      >
        {words.removeShort}
      </button>
    </div>
  );
}

/** The form of a head or a block, or the words themselves. */
function LayerForm({ piece, fields, edits, offered }: Pick<Props, 'piece' | 'fields' | 'edits' | 'offered'>) {
  if (piece.what === 'part' && piece.part.part === 'prose')
    return (
      <textarea
        class="form-value prose-text"
        aria-label={words.prose}
        rows={Math.min(14, piece.part.text.split('\n').length + 2)}
        value={piece.part.text}
        onInput={({ currentTarget }) => {
          edits.prose(piece.number, currentTarget.value);
        }}
      />
    );
  const yaml = piece.what === 'head' ? piece.head : piece.part.part === 'block' ? piece.part : null;
  const target = piece.what === 'head' ? null : piece.number;
  if (yaml === null || yaml.data === null || fields.length === 0) return <p>{words.cannotRead}</p>;
  const place: FormPlace = {
    path: [],
    id: `value-${target ?? 'head'}`,
    name: '',
    change: (change: Change) => {
      edits.change(target, change);
    },
    goToFile: (path: Path) => {
      edits.goToFile(yaml, path);
    },
    offered,
    show: showValue,
  };
  return <Fields fields={fields} values={yaml.data} place={place} />;
}
