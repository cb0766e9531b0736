import { useEffect, useRef, useState } from 'preact/hooks';

interface Props {
  readonly label: string;
  readonly type: 'text' | 'time' | 'date';
  /** A remark: more than one line is shown of it. */
  readonly isLong: boolean;
  readonly isNumber: boolean;
  /** As it stands in the file. */
  readonly text: string;
  readonly onSay: (said: string) => void;
}

/** Time after the last key before what is typed goes into the file, in milliseconds. */
const REST_MS = 400;
/** Time after the field is left before it shows the file again, whatever was typed. */
const SETTLED_MS = 1500;

/**
 * A text that is typed in: it goes into the file when the field is left, after a short rest, and when the page is left in
 * the midst of it. A field made empty takes its key out of the file, so that waits until the field or the page is left.
 */
export function DayInput({ label, type, isLong, isNumber, text, onSay }: Props) {
  const [draft, setDraft] = useState<string | null>(null);
  const [isLeft, setLeft] = useState(false);
  const field = useRef<HTMLInputElement & HTMLTextAreaElement>(null);
  const latest = useRef({ draft, text, onSay });
  latest.current = { draft, text, onSay };
  const isTyping = draft !== null;

  const put = (): void => {
    const now = latest.current;
    // Half a time is no time: the browser gives it as nothing.
    if (now.draft === null || field.current?.validity.badInput === true) return;
    if (now.draft.trim() !== now.text) now.onSay(now.draft);
  };
  useEffect(() => {
    if (draft === null || draft.trim() === '') return undefined;
    const rest = setTimeout(put, REST_MS);
    return () => clearTimeout(rest);
  }, [draft]);
  useEffect(() => {
    if (!isTyping) return undefined;
    addEventListener('pagehide', put);
    document.addEventListener('visibilitychange', put);
    return () => {
      removeEventListener('pagehide', put);
      document.removeEventListener('visibilitychange', put);
    };
  }, [isTyping]);
  useEffect(() => {
    if (!isTyping || !isLeft) return undefined;
    const settled = setTimeout(() => setDraft(null), draft.trim() === text ? 0 : SETTLED_MS);
    return () => clearTimeout(settled);
  }, [isTyping, isLeft, text]);

  const common = {
    ref: field,
    value: draft ?? text,
    onInput: (): void => setDraft(field.current?.value ?? ''),
    onChange: put,
    onFocus: (): void => setLeft(false),
    onBlur: (): void => setLeft(true),
  };
  return (
    <label class="day-field" data-kind={isLong ? 'long' : isNumber ? 'number' : type}>
      <span>{label}</span>
      {isLong ? (
        <textarea rows={3} {...common} />
      ) : (
        <input type={type} inputMode={isNumber ? 'numeric' : undefined} {...common} />
      )}
    </label>
  );
}
