import { useStore } from '@nanostores/preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { Taking } from '../../shared/bench/index.ts';
import {
  answer,
  answerInto,
  decodeText,
  giveColumn,
  giveUnit,
  NO_ANSWERS,
  type Answers,
  type RowInto,
} from '../../shared/finds-in/index.ts';
import type { ContentFile } from '../../shared/library/index.ts';
import { benchFinds as words } from '../../shared/words/en/bench-finds.ts';
import { findsInWords } from '../../shared/words/en/finds-in.ts';
import { say } from '../../shared/words/index.ts';
import type { Checker } from './checker.ts';
import { ColumnsTable } from './ColumnsTable.tsx';
import { FindsInto } from './FindsInto.tsx';
import { KeyInFind } from './KeyInFind.tsx';
import { LeftOut } from './LeftOut.tsx';
import type { Offer } from './protocol.ts';
import { QuestionsList } from './QuestionsList.tsx';

interface Props {
  readonly checker: Checker;
  readonly isOpened: boolean;
  /** The sites there are, the lead's own among them. */
  readonly sites: readonly Offer[];
  /** The lead's own files. */
  readonly files: readonly ContentFile[];
  readonly take: (files: readonly ContentFile[], told: Pick<Taking, 'site' | 'finds'>) => void;
  /** The last list taken, where it can be taken back. */
  readonly taking: Taking | null;
  readonly takeBack: () => void;
}

/** From a finds list as it comes to finds on the bench: the list, its columns, its questions, what is left out. */
export function FindsInPanel({ checker, isOpened, sites, files, take, taking, takeBack }: Props) {
  const [text, setText] = useState('');
  const [answers, setAnswers] = useState<Answers>(NO_ANSWERS);
  const [name, setName] = useState('');
  const [told, setTold] = useState('');
  const [asked, setAsked] = useState(0);
  const [chosen, setChosen] = useState('');
  const taker = useRef<HTMLButtonElement>(null);
  const read = useStore(checker.$finds);
  const called = name.trim() === '' ? words.siteDefault : name.trim();
  // A site may have been taken away again since it was chosen.
  const into = sites.find(({ value }) => value === chosen) ?? null;
  const target = into?.value ?? null;
  useEffect(() => {
    if (isOpened && text.trim() !== '')
      setAsked(checker.readFinds({ text, answers, name: called, into: target, files }));
  }, [checker, isOpened, text, answers, called, target, files]);

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
  const ready =
    list === null
      ? 0
      : list.into === null
        ? list.read.rows.filter(({ find }) => find !== null).length
        : list.into.counts.fresh + list.into.counts.replaced;
  const leaveOut = (row: number): void => {
    setAnswers({ ...answers, cells: { ...answers.cells, [`${row}:small-find`]: 'leave-row-out' } });
  };
  const press = (): void => {
    if (list === null || !canTake) {
      setTold(into === null || ready > 0 ? words.takeNone : say(words.intoNone, { site: into.means }));
      return;
    }
    const site = into?.means ?? called;
    take(list.files, { site, finds: ready });
    setTold(say(into === null ? words.taken : words.intoTaken, { site }));
  };
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
          <div class="begin-form belong">
            <label>
              {words.belong}
              <select
                class="form-value"
                value={target ?? ''}
                onChange={({ currentTarget }) => {
                  setChosen(currentTarget.value);
                  setAnswers({ ...answers, into: {} });
                }}
              >
                <option value="">{words.belongNew}</option>
                {sites.map(({ value, means }) => (
                  <option key={value} value={value}>
                    {say(words.belongThere, { site: means })}
                  </option>
                ))}
              </select>
            </label>
          </div>
          {(list.read.questions.length > 0 || (list.into?.questions ?? []).length === 0) && (
            <QuestionsList
              label={words.questions}
              left={words.questionsLeft}
              questions={list.read.questions}
              answer={(question, value, reach) => {
                setAnswers(answer(answers, question, value, reach));
              }}
              leaveOut={leaveOut}
            />
          )}
          {list.into !== null && (
            <FindsInto
              into={list.into}
              isUnwritten={ready > 0 && list.files.length === 0}
              answer={(question, value, reach) => {
                setAnswers(answerInto(answers, question, value, reach));
              }}
              leaveOut={leaveOut}
            />
          )}
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
          <LeftOut rows={list.into === null ? list.read.rows : outOf(list.into.rows)} />
          {list.isTaken && taking?.site !== called && (
            <p class="small">{say(words.nameTaken, { site: called })}</p>
          )}
          <div class="begin-form">
            {into === null && (
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
            )}
            <button
              type="button"
              class="press"
              data-weight="main"
              ref={taker}
              aria-disabled={!canTake}
              onClick={press}
            >
              {say(words.take, { count: ready })}
            </button>
          </div>
        </>
      )}
      {taking !== null && (
        <p class="last-taken">
          {say(words.lastTaken, { count: taking.finds, site: taking.site })}{' '}
          <button
            type="button"
            class="press small"
            onClick={() => {
              takeBack();
              setTold(say(words.tookBack, { site: taking.site }));
              // The press goes with what it takes back.
              taker.current?.focus();
            }}
          >
            {words.takeBack}
          </button>
        </p>
      )}
    </details>
  );
}

const outOf = (rows: readonly RowInto[]): readonly RowInto[] =>
  rows.filter(({ outcome }) => outcome === 'left-out');
