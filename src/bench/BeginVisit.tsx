import { useState } from 'preact/hooks';
import { bench as words } from '../../shared/words/en/bench.ts';
import { starterLesson } from '../../shared/words/en/command.ts';
import type { SiteLesson } from './content.ts';

interface Props {
  readonly lessons: readonly SiteLesson[];
  readonly begin: (name: string, text: string) => void;
  readonly openFile: (file: File) => void;
}

/** Begin a visit from a short lesson or from one of the site's, or open a file. */
export function BeginVisit({ lessons, begin, openFile }: Props) {
  const [name, setName] = useState('');
  const [from, setFrom] = useState('');
  const go = (event: Event): void => {
    event.preventDefault();
    const called = name.trim() === '' ? words.newTitleless : name.trim();
    const lesson = lessons.find(({ id }) => id === from);
    begin(called, lesson?.text ?? starterLesson(called));
    setName('');
  };
  return (
    <div class="begin">
      <form onSubmit={go} class="begin-form">
        <label>
          {words.newName}
          <input
            type="text"
            class="form-value"
            maxLength={80}
            autocomplete="off"
            value={name}
            onInput={({ currentTarget }) => {
              setName(currentTarget.value);
            }}
          />
        </label>
        <label>
          {words.newFrom}
          <select
            class="form-value"
            value={from}
            onChange={({ currentTarget }) => {
              setFrom(currentTarget.value);
            }}
          >
            <option value="">{words.newFromStarter}</option>
            {lessons.map(({ id, title }) => (
              <option key={id} value={id}>
                {title}
              </option>
            ))}
          </select>
        </label>
        <button type="submit" class="press" data-weight="main">
          {words.newGo}
        </button>
      </form>
      <label class="press file-choice">
        {words.openFile}
        <input
          type="file"
          accept=".md,.markdown,.txt,text/markdown,text/plain"
          class="unseen"
          onChange={({ currentTarget }) => {
            const file = currentTarget.files?.[0];
            currentTarget.value = '';
            if (file !== undefined) openFile(file);
          }}
        />
      </label>
    </div>
  );
}
