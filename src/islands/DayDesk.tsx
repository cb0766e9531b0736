import { useStore } from '@nanostores/preact';
import { useLayoutEffect, useState } from 'preact/hooks';
import { carryPlan, whenWet, type DayEdit } from '../../shared/day/index.ts';
import { say } from '../../shared/words/index.ts';
import { $dayBook, changeDay, madeOf, openDayBook } from '../stores/day-book.ts';
import type { KeptDay, Made } from '../stores/day-schema.ts';
import { DayChoose } from './DayChoose.tsx';
import { DayConflicts } from './DayConflicts.tsx';
import { DayFile } from './DayFile.tsx';
import { DayOutcome } from './DayOutcome.tsx';
import { DayPlanBar } from './DayPlanBar.tsx';
import type { DemoDay, FormWords, SheetWords } from './day-view.ts';
import { useDayPlanner } from './use-day-planner.ts';
import type { ReaderReply } from '../workers/day-messages.ts';
import { useDayReader } from './use-day-reader.ts';

interface Props {
  readonly words: SheetWords;
  readonly formWords: FormWords;
  readonly demos: readonly DemoDay[];
  readonly links: {
    readonly sheets: string;
    readonly now: string;
    readonly dropIn: string;
    readonly rules: string;
    readonly solver: string;
  };
}

const NONE: readonly DayEdit[] = [];

/** From which slot a plan is made again; null where it is made afresh. */
type Again = { readonly fromSlot: number } | null;

/** The page of a day: its file as form and as text, its plan, and what stands in the way of one. */
export function DayDesk({ words, formWords, demos, links }: Props) {
  const book = useStore($dayBook);
  useLayoutEffect(openDayBook, []);
  const [said, setSaid] = useState('');
  const [seconds, setSeconds] = useState(10);
  const planner = useDayPlanner();
  const { day: kept } = book;
  const file = `${kept?.title ?? ''}.yaml`;
  const written = kept === null ? null : { text: kept.text, waiting: kept.waiting ?? NONE };
  const reader = useDayReader(file, written, links.rules, changeDay);
  const { read } = reader;
  const made = madeOf(kept);

  /** Plans a day as it was read, in the weather that is set; with `again`, around the plan that is there. */
  const plan = ({ day, text }: Pick<ReaderReply, 'day' | 'text'>, again: Again): void => {
    const { day: keptNow } = $dayBook.get();
    if (day === null || keptNow === null) return;
    const { isWet } = keptNow;
    const weather = isWet ? whenWet(day) : { day, leftOut: [] };
    const leftOut = day.stations.filter(({ id }) => weather.leftOut.includes(id)).map(({ name }) => name);
    const before = madeOf(keptNow);
    const inHand =
      again === null || before === null
        ? null
        : { plan: carryPlan(before.day, before.plan, weather.day), fromSlot: again.fromSlot };
    setSaid(say(words.startedSaid));
    const put = (next: Made): void => changeDay({ [isWet ? 'wet' : 'dry']: next } satisfies Partial<KeptDay>);
    planner.begin(
      { day: weather.day, seconds, inHand, solverAt: links.solver },
      {
        made: (told) => {
          if (told.plan === null || told.minutes === null) return;
          const { status, minutes, bound } = told;
          const movedCells = told.kind === 'plan' ? told.movedCells : null;
          put({
            day: weather.day,
            plan: told.plan,
            status,
            minutes,
            bound,
            movedCells,
            leftOut,
            text,
            rotation: null,
          });
          setSaid(say(words[status], { idle: bound.idleMinutes, walking: bound.walkingMinutes }));
        },
        rotation: (rotation) => {
          const now = madeOf($dayBook.get().day);
          if (now === null || now.text !== text) return;
          put({
            ...now,
            rotation: rotation.kind === 'keeps' ? { kind: 'keeps', minutes: rotation.minutes } : rotation,
          });
        },
      },
    );
  };
  /** Why there was no plan is no longer so once the file is another. */
  const letGo = (): void => {
    if (planner.planning.kind !== 'work') planner.forget();
  };
  /** Changes the file, and plans once it has been read. */
  const changeAndPlan = (edits: readonly DayEdit[], again: Again): void => {
    reader.change(edits, (reply) => plan(reply, again));
  };
  useLayoutEffect(() => {
    const title = read?.day?.title;
    if (title !== undefined && kept !== null && title !== kept.title) changeDay({ title });
  }, [read?.day?.title]);

  if (kept === null) return <DayChoose words={words} demos={demos} days={book.days} isKept={book.isKept} />;
  return (
    <div class="day">
      <DayFile
        words={words}
        formWords={formWords}
        kept={kept}
        read={read}
        isKept={book.isKept}
        onText={(text) => {
          letGo();
          changeDay({ text });
        }}
        onChange={(edits) => {
          letGo();
          reader.change(edits);
        }}
        onClose={planner.forget}
      />
      <section class="day-plan" aria-labelledby="day-plan-title">
        <h2 id="day-plan-title">{say(words.planTitle)}</h2>
        <DayPlanBar
          words={words}
          canPlan={read?.day !== null && read !== null}
          hasPlan={made !== null}
          isWet={kept.isWet}
          seconds={seconds}
          planning={planner.planning}
          onSeconds={setSeconds}
          onWet={(isWet) => {
            planner.forget();
            changeDay({ isWet });
          }}
          onPlan={() => read !== null && plan(read, null)}
          onStop={planner.stop}
        />
        <p class="unseen" role="status">
          {said}
        </p>
        <DayConflicts
          words={words}
          planning={planner.planning}
          onAllow={({ edits, frees }) => {
            setSaid(say(words.allowedSaid, { frees }));
            changeAndPlan(edits ?? [], null);
          }}
        />
        {made !== null && planner.planning.kind !== 'work' && (
          <DayOutcome
            words={words}
            made={made}
            isStale={made.text !== kept.text}
            links={links}
            onPin={(edits) => changeAndPlan(edits, { fromSlot: 0 })}
            onLate={(edits, fromSlot) => changeAndPlan(edits, { fromSlot })}
          />
        )}
      </section>
    </div>
  );
}
