import { useRef, useState } from 'preact/hooks';
import { say } from '../../shared/words/index.ts';
import { addDay } from '../stores/day-book.ts';
import type { SheetWords } from './day-view.ts';

/** No day is longer; a longer file is something else. */
const MOST_CHARACTERS = 200_000;

/** Opens a day file from this device. */
export function DayOpenFile({ words }: { readonly words: SheetWords }) {
  const input = useRef<HTMLInputElement>(null);
  const [refused, setRefused] = useState<number | null>(null);
  const open = async (file: File | undefined): Promise<void> => {
    if (file === undefined) return;
    const text = await file.text();
    if (text.length > MOST_CHARACTERS) return setRefused(text.length);
    setRefused(null);
    addDay(file.name.replace(/\.ya?ml$/i, ''), text);
  };
  return (
    <>
      <button type="button" class="press" onClick={() => input.current?.click()}>
        {say(words.openFile)}
      </button>
      <input
        ref={input}
        type="file"
        class="unseen"
        accept=".yaml,.yml,text/yaml,text/plain"
        tabIndex={-1}
        aria-label={say(words.openFile)}
        onChange={(event) => {
          void open(event.currentTarget.files?.[0]);
          event.currentTarget.value = '';
        }}
      />
      {refused !== null && <p role="alert">{say(words.fileRefused, { count: refused })}</p>}
    </>
  );
}
