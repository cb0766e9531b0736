import { useState } from 'preact/hooks';
import { bench as words } from '../../shared/words/en/bench.ts';
import { benchCarry } from '../../shared/words/en/bench-carry.ts';
import { starterLesson } from '../../shared/words/en/command.ts';
import type { SiteLesson } from './content.ts';

interface Props {
  readonly lessons: readonly SiteLesson[];
  readonly begin: (name: string, text: string) => void;
  readonly open: (files: readonly File[]) => void;
}

/** Begin a visit from a short lesson or from one of the site's, or open a file. */
export function BeginVisit({ lessons, begin, open }: Props) {
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
          multiple
          accept=".md,.markdown,.txt,.zip,text/markdown,text/plain,application/zip"
          aria-describedby="open-how"
          class="unseen"
          onChange={({ currentTarget }) => {
            const files = [...(currentTarget.files ?? [])];
            currentTarget.value = '';
            open(files);
          }}
        />
      </label>
      <p id="open-how" class="begin-how small quiet">
        {benchCarry.openHow} <span class="open-drop">{benchCarry.openDrop}</span>
      </p>
    </div>
  );
}
