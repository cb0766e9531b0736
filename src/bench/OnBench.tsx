import { useStore } from '@nanostores/preact';
import { useEffect, useState } from 'preact/hooks';
import type { Outline } from '../../shared/bench/index.ts';
import type { Problem } from '../../shared/lesson/index.ts';
import { bench as words } from '../../shared/words/en/bench.ts';
import { benchPapers as papersWords } from '../../shared/words/en/bench-papers.ts';
import type { StepId } from '../../shared/words/en/bench-help.ts';
import type { BenchStore, OpenVisit } from '../stores/bench.ts';
import { AddingUp } from './AddingUp.tsx';
import type { Checker } from './checker.ts';
import type { Edits } from './edits.ts';
import type { LessonFields } from './field.ts';
import { FileText, type Caret } from './FileText.tsx';
import type { BenchFiles } from './bench-files.ts';
import { PapersPanel } from './PapersPanel.tsx';
import { PagePanel, type PageWanted } from './PagePanel.tsx';
import { PlanDay } from './PlanDay.tsx';
import { createPapersDesk } from './papers-desk.ts';
import { ProblemsList } from './ProblemsList.tsx';
import { usualSize } from './usual-size.ts';
import { VisitParts } from './VisitParts.tsx';

interface Props {
  readonly visit: OpenVisit;
  readonly read: Outline;
  readonly bench: BenchStore;
  readonly checker: Checker;
  readonly fields: LessonFields;
  readonly edits: Edits;
  readonly caret: Caret | null;
  readonly setCaret: (caret: Caret) => void;
  readonly isLocked: boolean;
  readonly files: BenchFiles;
  readonly help: string;
  /** Where the Day sheet is. */
  readonly day: string;
  readonly offered: (key: string) => string | null;
  readonly tell: (sentence: string) => void;
  readonly press: (step: StepId) => void;
}

const CLASS_OF = 30;

/** The visit that is being built: what it comes to, its section, its file, what is to be mended, and its page. */
export function OnBench(props: Props) {
  const {
    visit,
    read,
    bench,
    checker,
    fields,
    edits,
    caret,
    setCaret,
    isLocked,
    files,
    help,
    day,
    offered,
    tell,
    press,
  } = props;
  const { text } = visit.history;
  const [pupils, setPupils] = useState(CLASS_OF);
  const [page, setPage] = useState<PageWanted>({ isShown: false, band: null });
  const [desk] = useState(() => createPapersDesk(checker.papers, usualSize(navigator.language)));
  const opened = useStore(checker.$opened);
  const answer = useStore(checker.$checked);
  // Only what was said of this visit: another may have been on the bench.
  const checked = answer !== null && answer.name === visit.name ? answer : null;
  const wants = { name: visit.name, text, files: visit.files, pupils };

  useEffect(() => {
    if (opened !== null) checker.check({ ...wants, page: page.isShown ? { band: page.band } : null });
  }, [opened, checker, visit.name, visit.files, text, pupils, page]);

  const mend = ({ edit }: Problem): void => {
    if (edit === undefined) return;
    bench.write(text.slice(0, edit.from) + edit.text + text.slice(edit.to), `mend ${edit.from}`);
    setCaret({ from: edit.from, to: edit.from + edit.text.length });
    tell(words.mended);
  };
  return (
    <>
      <AddingUp read={read} checked={checked} pupils={pupils} setPupils={setPupils} />
      <div class="lead-sides">
        <section class="lead-visit" aria-labelledby="bench-visit">
          <h2 id="bench-visit">{words.visitTitle}</h2>
          <p class="small quiet">{words.visitLead}</p>
          <fieldset disabled={isLocked}>
            <legend class="unseen">{words.visitTitle}</legend>
            <VisitParts read={read} fields={fields} edits={edits} offered={offered} />
          </fieldset>
        </section>
        <div class="lead-side">
          <section aria-labelledby="bench-file">
            <h2 id="bench-file">{words.fileTitle}</h2>
            <p class="small quiet">{words.fileLead}</p>
            <FileText
              text={text}
              problems={checked?.problems ?? []}
              caret={caret}
              isLocked={isLocked}
              write={(next) => {
                bench.write(next, 'file');
              }}
              undo={bench.undo}
              redo={bench.redo}
            />
          </section>
          <section aria-labelledby="bench-problems">
            <h2 id="bench-problems">{words.problemsTitle}</h2>
            <p class="small quiet">{words.problemsLead}</p>
            <ProblemsList
              problems={checked?.problems ?? null}
              isFresh={checked?.text === text && !isLocked}
              tookMs={checked?.tookMs ?? null}
              help={help}
              goTo={({ from, to }) => {
                setCaret({ from: from.offset, to: to.offset });
              }}
              mend={mend}
            />
          </section>
        </div>
      </div>
      <section class="lead-page" aria-labelledby="bench-page">
        <h2 id="bench-page">{words.pageTitle}</h2>
        <PagePanel
          files={files}
          name={visit.name}
          bands={checked?.bands ?? []}
          wanted={page}
          want={(wanted) => {
            setPage(wanted);
            if (wanted.isShown) press('page');
          }}
          page={checked?.page ?? null}
          packPart={() => {
            press('pack');
            return checker.page(wants);
          }}
          canPack={checked?.added !== null && checked?.text === text}
        />
      </section>
      <PlanDay
        bench={bench}
        checker={checker}
        wants={wants}
        canPlan={checked?.added !== null && checked?.text === text}
        day={day}
      />
      <section class="lead-papers" aria-labelledby="bench-papers">
        <h2 id="bench-papers">{papersWords.title}</h2>
        <PapersPanel
          address={files.papers}
          desk={desk}
          visit={wants}
          listed={checked?.papers ?? null}
          isFresh={checked?.text === text}
        />
      </section>
    </>
  );
}
