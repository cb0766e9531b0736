import { useRef, useState } from 'preact/hooks';
import type { DayEdit } from '../../shared/day/index.ts';
import type { Problem } from '../../shared/lesson/index.ts';
import { say } from '../../shared/words/index.ts';
import { closeDay } from '../stores/day-book.ts';
import type { KeptDay } from '../stores/day-schema.ts';
import type { ReaderReply } from '../workers/day-messages.ts';
import { mapOf, shown } from './day-fields.ts';
import { DayForm } from './DayForm.tsx';
import { DayProblems } from './DayProblems.tsx';
import { fileName, saveAs, type FormWords, type SheetWords } from './day-view.ts';

interface Props {
  readonly words: SheetWords;
  readonly formWords: FormWords;
  readonly kept: KeptDay;
  readonly read: ReaderReply | null;
  readonly isKept: boolean;
  readonly onText: (text: string) => void;
  readonly onChange: (edits: readonly DayEdit[]) => void;
  readonly onClose: () => void;
}

const WAYS = ['form', 'text'] as const;

/** The file of a day: as a form and as text, kept in step, with what is to be mended. */
export function DayFile({ words, formWords, kept, read, isKept, onText, onChange, onClose }: Props) {
  const [way, setWay] = useState<(typeof WAYS)[number]>('form');
  const area = useRef<HTMLTextAreaElement>(null);
  const note = shown(mapOf(read?.parts)['note']);
  const names = { form: words.asForm, text: words.asText };
  const goTo = (problem: Problem): void => {
    setWay('text');
    // The text is there after the next frame.
    requestAnimationFrame(() => {
      area.current?.focus();
      area.current?.setSelectionRange(problem.from.offset, problem.to.offset);
    });
  };
  return (
    <section class="day-file" aria-labelledby="day-file-title">
      <h2 id="day-file-title" tabIndex={-1}>
        {kept.title}
      </h2>
      <div class="day-presses">
        <div class="ways-choice" role="group" aria-label={kept.title}>
          {WAYS.map((each) => (
            <button
              key={each}
              type="button"
              class="ways-way"
              aria-pressed={each === way}
              onClick={() => setWay(each)}
            >
              {say(names[each])}
            </button>
          ))}
        </div>
        <button
          type="button"
          class="press"
          onClick={() => saveAs(`${fileName(kept.title)}.yaml`, 'text/yaml', kept.text)}
        >
          {say(words.saveFile)}
        </button>
        <button
          type="button"
          class="press"
          onClick={() => {
            onClose();
            closeDay();
          }}
        >
          {say(words.otherDay)}
        </button>
      </div>
      <p class="small quiet">{say(isKept ? words.kept : words.notKept)}</p>
      {note !== '' && <p class="day-note">{note}</p>}
      <DayProblems words={words} text={kept.text} read={read} onGo={goTo} onText={onText} />
      {way === 'text' ? (
        <label class="day-text">
          <span class="unseen">{say(words.textLabel)}</span>
          <textarea
            ref={area}
            rows={26}
            spellcheck={false}
            autocapitalize="off"
            value={kept.text}
            onInput={(event) => onText(event.currentTarget.value)}
          />
        </label>
      ) : (
        <DayForm words={formWords} lost={words.formLost} parts={read?.parts ?? null} onChange={onChange} />
      )}
    </section>
  );
}
