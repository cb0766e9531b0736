import { useId, useRef, useState } from 'preact/hooks';
import { barLength, firstBar } from '../../../shared/photo/index.ts';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { say } from '../../../shared/words/index.ts';
import type { Offers } from '../protocol.ts';
import type { PictureShown } from './address-of.ts';
import { FindChoice } from './FindChoice.tsx';
import { LengthOver } from './LengthOver.tsx';
import { OnePicture } from './OnePicture.tsx';
import { missingIn, tellsWhat, type PhotoDraft, type PhotoSaid } from './photo-draft.ts';
import { PhotoPreview } from './PhotoPreview.tsx';
import { WordsField } from './WordsField.tsx';

interface Props {
  readonly title: string;
  /** What was told when it was taken in. */
  readonly about: string;
  readonly picture: PictureShown;
  readonly begin: PhotoDraft;
  readonly sites: Offers['sites'];
  /** What is usual: the site of the lesson, the credit of the picture before. */
  readonly usual: { readonly site: string; readonly credit: string };
  readonly photographed: (site: string) => ReadonlySet<string>;
  /** The find it stands under already; null for a new one. */
  readonly of: { readonly site: string; readonly find: string } | null;
  /** Puts it in; what it gives is why not, or null. */
  readonly put: (said: PhotoSaid) => Promise<string | null>;
  readonly leave: () => void;
  readonly another?: (file: File) => void;
}

const MOST_SHOWS = 300;
const MOST_CREDIT = 90;

/** A picture and all that is to be said of it, with what it comes to beside. What is missing is said at its field. */
export function PhotoForm(props: Props) {
  const { title, about, picture, begin, sites, usual, photographed, of, put, leave, another } = props;
  const id = useId();
  const form = useRef<HTMLFormElement>(null);
  const [draft, setDraft] = useState(begin);
  const [laidOn, setLaidOn] = useState(picture);
  if (laidOn !== picture) {
    // A bar says nothing of another picture.
    setLaidOn(picture);
    if (draft.bar !== null) setDraft({ ...draft, bar: firstBar(picture.widthPx, picture.heightPx, null) });
  }
  const [isTried, setTried] = useState(false);
  const [fault, setFault] = useState<string | null>(null);
  const change = (part: Partial<PhotoDraft>): void => {
    setFault(null);
    setDraft({ ...draft, ...part });
  };
  const known = sites.some(({ value }) => value === usual.site) ? usual.site : (sites[0]?.value ?? '');
  const site = draft.site ?? known;
  const find = sites.find(({ value }) => value === site)?.finds.find(({ value }) => value === draft.find);
  const said: PhotoSaid = {
    ...draft,
    site,
    // A find of another site is none here.
    find: find?.value ?? '',
    credit: draft.credit ?? usual.credit,
  };
  const missing = isTried ? missingIn(said) : [];
  const told = find === undefined ? null : tellsWhat(said.shows, find.means);
  const has = new Set(photographed(site));
  // What stands under this very find is what is being changed.
  if (of?.site === site) has.delete(of.find);
  const lengthPx = said.bar === null ? null : barLength(said.bar);
  const go = async (): Promise<void> => {
    const lacking = missingIn(said)[0];
    setTried(true);
    if (lacking === undefined) setFault(await put(said));
    else form.current?.querySelector<HTMLElement>(`[id="${id}-${lacking}"]`)?.focus();
  };
  return (
    <form
      class="photo-form"
      ref={form}
      aria-labelledby={`${id}-title`}
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void go();
      }}
    >
      <h3 id={`${id}-title`}>{title}</h3>
      {about !== '' && <p class="small quiet">{about}</p>}
      <div class="photo-sides">
        <div class="photo-side">
          <label class="photo-tick">
            <input
              type="checkbox"
              checked={said.bar !== null}
              onChange={({ currentTarget }) => {
                const first = firstBar(picture.widthPx, picture.heightPx, null);
                change({ bar: currentTarget.checked ? first : null });
              }}
            />
            {words.bar}
          </label>
          <LengthOver
            picture={picture}
            bar={said.bar}
            findLengthMm={find?.lengthMm ?? null}
            setBar={(bar) => {
              change({ bar });
            }}
            describedBy={`${id}-bar`}
          />
          <p class="small quiet photo-hint" id={`${id}-bar`}>
            {said.bar === null
              ? null
              : find === undefined
                ? words.barHintNone
                : say(words.barHint, { find: find.value, length: find.lengthMm })}
          </p>
        </div>
        <div class="photo-fields">
          <FindChoice
            id={id}
            sites={sites}
            site={said.site}
            find={said.find}
            photographed={has}
            missing={missing.includes('find') ? words.findMissing : null}
            setSite={(site) => {
              change({ site, find: '' });
            }}
            setFind={(find) => {
              change({ find });
            }}
          />
          {has.has(said.find) && <p class="small">{say(words.replaces, { find: said.find })}</p>}
          <WordsField
            id={`${id}-shows`}
            label={words.shows}
            hint={say(words.showsHint, { most: MOST_SHOWS })}
            most={MOST_SHOWS}
            isLong
            value={said.shows}
            missing={missing.includes('shows') ? words.showsMissing : null}
            note={told === null ? null : say(words.showsTells, { word: told })}
            set={(shows) => {
              change({ shows });
            }}
          />
          <WordsField
            id={`${id}-credit`}
            label={words.credit}
            hint={words.creditHint}
            most={MOST_CREDIT}
            value={said.credit}
            missing={missing.includes('credit') ? words.creditMissing : null}
            note={null}
            set={(credit) => {
              change({ credit });
            }}
          />
          {find !== undefined && (
            <PhotoPreview
              picture={picture}
              shows={said.shows}
              credit={said.credit}
              lengthPx={lengthPx}
              findLengthMm={find.lengthMm}
            />
          )}
        </div>
      </div>
      <p role="alert" class="photo-missing">
        {fault}
      </p>
      <div class="lead-acts">
        <button type="submit" class="press" data-weight="main">
          {of === null ? words.put : words.putChange}
        </button>
        <button type="button" class="press" onClick={leave}>
          {of === null ? words.leave : words.leaveChange}
        </button>
        {another !== undefined && <OnePicture label={words.another} take={another} />}
      </div>
    </form>
  );
}
