import { bench as words } from '../../shared/words/en/bench.ts';
import { benchCarry } from '../../shared/words/en/bench-carry.ts';
import type { StepId } from '../../shared/words/en/bench-help.ts';
import type { BenchStore, Keeping, OpenVisit } from '../stores/bench.ts';
import { saveFile } from './save-file.ts';

interface Props {
  readonly bench: BenchStore;
  readonly visit: OpenVisit;
  readonly keeping: Keeping;
  /** The browser keeps nothing at all. */
  readonly hasNoShelf: boolean;
  readonly tell: (sentence: string) => void;
  readonly press: (step: StepId) => void;
  /** Saves the visit with all that belongs to it. */
  readonly save: () => void;
}

/** How safe the visit is, one step back and forward, and a file of one's own. */
export function KeepingLine({ bench, visit, keeping, hasNoShelf, tell, press, save }: Props) {
  const { past, future, text } = visit.history;
  const file = `${visit.name}.md`;
  const state = hasNoShelf && keeping !== 'elsewhere' ? 'refused' : keeping;
  const step = (which: 'undo' | 'redo') => (): void => {
    if (which === 'undo') bench.undo();
    else bench.redo();
    tell(which === 'undo' ? words.undone : words.redone);
  };
  return (
    <div class="keeping" data-state={state}>
      <strong class="keeping-name">{file}</strong>
      <span data-keeping={state}>{words[state]}</span>
      {state === 'elsewhere' && (
        <button type="button" class="press small" onClick={() => void bench.takeOver()}>
          {words.takeOver}
        </button>
      )}
      <span class="lead-acts">
        <button
          type="button"
          class="press small"
          aria-disabled={past.length === 0}
          onClick={past.length === 0 ? undefined : step('undo')}
        >
          {words.undo}
        </button>
        <button
          type="button"
          class="press small"
          aria-disabled={future.length === 0}
          onClick={future.length === 0 ? undefined : step('redo')}
        >
          {words.redo}
        </button>
      </span>
      <span class="lead-acts keeping-save">
        <button
          type="button"
          class="press small"
          data-weight="main"
          onClick={() => {
            save();
            press('file');
          }}
        >
          {benchCarry.saveVisit}
        </button>
        <button
          type="button"
          class="form-out small"
          onClick={() => {
            saveFile(file, text, 'text/markdown');
            press('file');
          }}
        >
          {words.saveFile}
        </button>
        {visit.files.length > 0 && (
          <button
            type="button"
            class="form-out small"
            onClick={() => {
              for (const { path, text: own } of visit.files)
                saveFile(path.split('/').at(-1) ?? path, own, 'text/plain');
              for (const [name, bytes] of visit.photos) saveFile(name, new Uint8Array(bytes), 'image/jpeg');
            }}
          >
            {words.saveFinds}
          </button>
        )}
      </span>
    </div>
  );
}
