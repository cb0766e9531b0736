import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import {
  answer,
  decodeText,
  giveColumn,
  giveUnit,
  NO_ANSWERS,
  type Answers,
} from '../../shared/finds-in/index.ts';
import type { ContentFile } from '../../shared/library/index.ts';
import { benchFinds as words } from '../../shared/words/en/bench-finds.ts';
import { findsInWords } from '../../shared/words/en/finds-in.ts';
import { say } from '../../shared/words/index.ts';
import type { Checker } from './checker.ts';
import { ColumnsTable } from './ColumnsTable.tsx';
import { KeyInFind } from './KeyInFind.tsx';
import { QuestionsList } from './QuestionsList.tsx';

interface Props {
  readonly checker: Checker;
  readonly isOpened: boolean;
  readonly take: (site: string, files: readonly ContentFile[]) => void;
}

/** From a finds list as it comes to finds on the bench: the list, its columns, its questions, what is left out. */
export function FindsInPanel({ checker, isOpened, take }: Props) {
  const [text, setText] = useState('');
  const [answers, setAnswers] = useState<Answers>(NO_ANSWERS);
  const [name, setName] = useState('');
  const [told, setTold] = useState('');
  const [asked, setAsked] = useState(0);
  const read = useStore(checker.$finds);
  const called = name.trim() === '' ? words.siteDefault : name.trim();
  useEffect(() => {
    if (isOpened && text.trim() !== '') setAsked(checker.readFinds({ text, answers, name: called }));
  }, [checker, isOpened, text, answers, called]);

  const begin = (list: string): void => {
    setText(list);
    setAnswers(NO_ANSWERS);
  };
  const openList = async (file: File): Promise<void> => {
    const list = decodeText(new Uint8Array(await file.arrayBuffer())).text;
    if (list.includes('\0')) setTold(say(words.openUnfit, { name: file.name }));
    else {
      begin(list);
      setName(file.name.replace(/\.[^.]*$/, ''));
    }
  };
  const list = text.trim() === '' ? null : read;
  // Until the newest words have been read, the finds would be those of the words before.
  const canTake = list !== null && list.number === asked && list.files.length > 0;
  return (
    <details class="finds-in">
      <summary>{words.title}</summary>
      <p class="prose">{words.lead}</p>
      <div class="lead-acts">
        <label class="press file-choice">
          {words.openList}
          <input
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            class="unseen"
            onChange={({ currentTarget }) => {
              const file = currentTarget.files?.[0];
              currentTarget.value = '';
              if (file !== undefined) void openList(file);
            }}
          />
        </label>
      </div>
      <label>
        {words.paste}
        <textarea
          class="form-value list-text"
          rows={6}
          wrap="off"
          spellcheck={false}
          value={text}
          onInput={({ currentTarget }) => {
            setText(currentTarget.value);
          }}
        />
      </label>
      <KeyInFind
        add={(line, header) => {
          const before = text.trim() === '' ? header : text.replace(/\s*$/, '');
          setText(`${before}\n${line}\n`);
          setTold(say(words.keyed, { row: before.split('\n').length + 1 }));
        }}
      />
      <p role="status">{told}</p>
      {list !== null && (
        <>
          <p>
            <strong>{say(words.counts, { ...list.read.counts, count: list.read.counts.rows })}</strong>
          </p>
          <ColumnsTable
            columns={list.read.columns}
            rows={list.read.rows}
            giveColumn={(column, field) => {
              setAnswers(giveColumn(answers, column, field));
            }}
            giveUnit={(column, unit) => {
              setAnswers(giveUnit(answers, column, unit));
            }}
          />
          <QuestionsList
            questions={list.read.questions}
            answer={(question, value, reach) => {
              setAnswers(answer(answers, question, value, reach));
            }}
            leaveOut={(row) => {
              setAnswers({
                ...answers,
                cells: { ...answers.cells, [`${row}:small-find`]: 'leave-row-out' },
              });
            }}
          />
          {list.guesses.length > 0 && (
            <details>
              <summary>{words.guesses}</summary>
              <ul class="prose-list small">
                {list.guesses.map(({ field, rows, why }) => (
                  <li key={field}>
                    {say(words.guess, { field: findsInWords.fieldName(field), count: rows, why })}
                  </li>
                ))}
              </ul>
            </details>
          )}
          <LeftOut rows={list.read.rows} />
          <div class="begin-form">
            <label>
              {words.siteName}
              <input
                type="text"
                class="form-value"
                maxLength={60}
                autocomplete="off"
                value={name}
                onInput={({ currentTarget }) => {
                  setName(currentTarget.value);
                }}
              />
            </label>
            <button
              type="button"
              class="press"
              data-weight="main"
              aria-disabled={!canTake}
              onClick={() => {
                if (!canTake) setTold(words.takeNone);
                else {
                  take(list.site, list.files);
                  setTold(say(words.taken, { site: called }));
                }
              }}
            >
              {say(words.take, { count: list.read.rows.filter(({ find }) => find !== null).length })}
            </button>
          </div>
        </>
      )}
    </details>
  );
}

/** Rows that are left out, each with its reason: nothing goes without a word. */
function LeftOut({ rows }: { rows: readonly { readonly row: number; readonly reason: string | null }[] }) {
  const out = rows.filter(({ reason }) => reason !== null);
  if (out.length === 0) return null;
  return (
    <details>
      <summary>{words.leftOut}</summary>
      <ul class="prose-list small">
        {out.map(({ row, reason }) => (
          <li key={row}>{say(words.leftOutRow, { row, reason: reason ?? '' })}</li>
        ))}
      </ul>
    </details>
  );
}
