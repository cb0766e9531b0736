import { useState } from 'preact/hooks';
import { BANDS, type Band } from '../../shared/library/bands.ts';
import type { ContentFile } from '../../shared/library/index.ts';
import { benchFinds as words } from '../../shared/words/en/bench-finds.ts';
import type { Checker } from './checker.ts';
import { OfferChoice } from './OfferChoice.tsx';
import type { DraftAsk, Drafted, Offer } from './protocol.ts';

interface Props {
  readonly checker: Checker;
  readonly sites: readonly Offer[];
  readonly files: readonly ContentFile[];
  readonly kinds: readonly string[];
  readonly hasVisit: boolean;
  readonly beginWith: (text: string) => void;
  readonly replaceWith: (text: string) => void;
}

const FIRST_MINUTES = 40;

/** Drafts a lesson from a site's finds: for whom, how long, which kinds; and says why it is as it is. */
export function DraftPanel({ checker, sites, files, kinds, hasVisit, beginWith, replaceWith }: Props) {
  const [site, setSite] = useState<string | null>(null);
  const [bands, setBands] = useState<readonly Band[]>(['7-9']);
  const [minutes, setMinutes] = useState(FIRST_MINUTES);
  const [chosen, setChosen] = useState<readonly string[]>(kinds);
  const [pins, setPins] = useState('');
  const [seed, setSeed] = useState(1);
  const [draft, setDraft] = useState<Drafted | 'asked' | null>(null);
  // The lead's own sites stand last.
  const from = site ?? sites.at(-1)?.value ?? '';

  const go = async (next: number): Promise<void> => {
    setSeed(next);
    setDraft('asked');
    const request = {
      bands,
      minutes,
      // The ticks are the names of the kinds there are.
      kinds: chosen as NonNullable<DraftAsk['request']['kinds']>,
      pins: pins.split(/[\s,]+/).filter((pin) => pin !== ''),
      seed: String(next),
    };
    setDraft(await checker.draft({ site: from, files, request }));
  };
  const toggled = <Word extends string>(all: readonly Word[], now: readonly Word[], word: Word) =>
    all.filter((each) => (each === word ? !now.includes(each) : now.includes(each)));
  return (
    <details class="draft">
      <summary>{words.draftTitle}</summary>
      <p class="prose">{words.draftLead}</p>
      <form
        class="form-fields"
        onSubmit={(event) => {
          event.preventDefault();
          void go(seed);
        }}
      >
        <div class="begin-form">
          <OfferChoice label={words.draftSite} offers={sites} value={from} choose={setSite} />
          <label>
            {words.draftMinutes}
            <input
              type="number"
              class="form-value"
              min={5}
              max={180}
              value={minutes}
              onInput={({ currentTarget }) => {
                const wanted = Math.round(currentTarget.valueAsNumber);
                if (Number.isFinite(wanted)) setMinutes(wanted);
              }}
            />
          </label>
          <label>
            {words.draftPins}
            <input
              type="text"
              class="form-value"
              autocomplete="off"
              aria-describedby="draft-pins"
              value={pins}
              onInput={({ currentTarget }) => {
                setPins(currentTarget.value);
              }}
            />
            <span class="small quiet" id="draft-pins">
              {words.draftPinsHint}
            </span>
          </label>
        </div>
        <Ticked
          legend={words.draftBands}
          all={BANDS}
          now={bands}
          toggle={(band) => {
            setBands(toggled(BANDS, bands, band));
          }}
        />
        <Ticked
          legend={words.draftKinds}
          all={kinds}
          now={chosen}
          toggle={(kind) => {
            setChosen(toggled(kinds, chosen, kind));
          }}
        />
        <div class="lead-acts">
          <button type="submit" class="press" data-weight="main">
            {words.draftGo}
          </button>
          {draft !== null && draft !== 'asked' && (
            <button type="button" class="press" onClick={() => void go(seed + 1)}>
              {words.draftAnother}
            </button>
          )}
        </div>
      </form>
      <p role="status">
        {draft === null
          ? ''
          : draft === 'asked'
            ? words.drafting
            : draft.text === null
              ? words.draftNone
              : words.drafted}
      </p>
      {draft !== null && draft !== 'asked' && (
        <DraftShown draft={draft} hasVisit={hasVisit} beginWith={beginWith} replaceWith={replaceWith} />
      )}
    </details>
  );
}

interface TickedProps<Word extends string> {
  readonly legend: string;
  readonly all: readonly Word[];
  readonly now: readonly Word[];
  readonly toggle: (word: Word) => void;
}

function Ticked<Word extends string>({ legend, all, now, toggle }: TickedProps<Word>) {
  return (
    <fieldset>
      <legend>{legend}</legend>
      <ul class="form-ticks">
        {all.map((word) => (
          <li key={word}>
            <label>
              <input
                type="checkbox"
                checked={now.includes(word)}
                onChange={() => {
                  toggle(word);
                }}
              />
              <span>{word}</span>
            </label>
          </li>
        ))}
      </ul>
    </fieldset>
  );
}

interface ShownProps extends Pick<Props, 'hasVisit' | 'beginWith' | 'replaceWith'> {
  readonly draft: Drafted;
}

/** The draft with its reasons, and what becomes of it. */
function DraftShown({ draft, hasVisit, beginWith, replaceWith }: ShownProps) {
  const { text, reasons, activities, lacking } = draft;
  return (
    <div class="draft-shown">
      {text !== null && (
        <>
          <div class="lead-acts">
            <button
              type="button"
              class="press"
              data-weight="main"
              onClick={() => {
                beginWith(text);
              }}
            >
              {words.draftUse}
            </button>
            {hasVisit && (
              <button
                type="button"
                class="press"
                onClick={() => {
                  replaceWith(text);
                }}
              >
                {words.draftReplace}
              </button>
            )}
          </div>
          <details>
            <summary>{words.draftShow}</summary>
            <pre class="sample" tabIndex={0}>
              {text}
            </pre>
          </details>
          <details open class="draft-why">
            <summary>{words.draftWhy}</summary>
            <ul class="prose-list small">
              {reasons.map((reason) => (
                <li key={reason}>{reason}</li>
              ))}
            </ul>
            {activities.map((activity) => (
              <div key={activity.title}>
                <p>
                  <strong>{activity.title}</strong> {activity.summary}
                </p>
                <ul class="prose-list small">
                  {activity.reasons.map((reason) => (
                    <li key={reason}>{reason}</li>
                  ))}
                </ul>
              </div>
            ))}
          </details>
        </>
      )}
      {lacking.length > 0 && (
        <details open={text === null}>
          <summary>{words.draftLacking}</summary>
          <ul class="prose-list small">
            {lacking.map((lack) => (
              <li key={lack}>{lack}</li>
            ))}
          </ul>
        </details>
      )}
    </div>
  );
}
