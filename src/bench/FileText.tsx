import { useLayoutEffect, useRef } from 'preact/hooks';
import { bench as words } from '../../shared/words/en/bench.ts';
import type { Problem } from '../../shared/lesson/index.ts';

/** A place the caret is sent to; a new object each time, so that the same place can be asked for twice. */
export interface Caret {
  readonly from: number;
  readonly to: number;
}

interface Props {
  readonly text: string;
  readonly problems: readonly Problem[];
  readonly caret: Caret | null;
  readonly isLocked: boolean;
  readonly write: (text: string) => void;
  readonly undo: () => void;
  readonly redo: () => void;
}

const LINES_ABOVE = 4;

/** The lesson file as plain text, with numbered lines and a mark where something is to be mended. */
export function FileText({ text, problems, caret, isLocked, write, undo, redo }: Props) {
  const area = useRef<HTMLTextAreaElement>(null);
  const gutter = useRef<HTMLDivElement>(null);
  const lines = text.split(/\r\n|\n|\r/);
  const grades = new Map(problems.map(({ from, grade }) => [from.line, grade] as const).toReversed());

  useLayoutEffect(() => {
    const element = area.current;
    if (element === null || caret === null) return;
    element.focus();
    element.setSelectionRange(caret.from, Math.max(caret.from, caret.to));
    const line = element.value.slice(0, caret.from).split('\n').length - 1;
    const lineHeight = Number.parseFloat(getComputedStyle(element).lineHeight);
    element.scrollTop = Math.max(0, (line - LINES_ABOVE) * lineHeight);
    element.scrollLeft = 0;
  }, [caret]);

  return (
    <>
      <pre class="file-printed" aria-hidden="true">
        {text}
      </pre>
      <div class="file">
        <div class="file-gutter numbers" aria-hidden="true" ref={gutter}>
          {lines.map((_, index) => (
            <span key={index} data-grade={grades.get(index + 1)}>
              {index + 1}
            </span>
          ))}
        </div>
        <textarea
          ref={area}
          class="file-text"
          aria-label={words.fileLabel}
          spellcheck={false}
          autocapitalize="off"
          wrap="off"
          readOnly={isLocked}
          value={text}
          onInput={({ currentTarget }) => {
            write(currentTarget.value);
          }}
          onScroll={({ currentTarget }) => {
            if (gutter.current !== null) gutter.current.scrollTop = currentTarget.scrollTop;
          }}
          onKeyDown={(event) => {
            if (!event.ctrlKey && !event.metaKey) return;
            const key = event.key.toLowerCase();
            if (key !== 'z' && key !== 'y') return;
            event.preventDefault();
            if (key === 'y' || event.shiftKey) redo();
            else undo();
          }}
        />
      </div>
    </>
  );
}
