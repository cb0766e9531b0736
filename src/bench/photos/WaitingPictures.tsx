import { useState } from 'preact/hooks';
import { findInName } from '../../../shared/bench/index.ts';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { say } from '../../../shared/words/index.ts';
import type { Offers } from '../protocol.ts';
import { pictureShown } from './address-of.ts';
import type { PhotoSaid } from './photo-draft.ts';
import { PhotoForm } from './PhotoForm.tsx';
import type { WaitingPicture } from './use-taking.ts';

interface Props {
  readonly waiting: readonly WaitingPicture[];
  readonly sites: Offers['sites'];
  readonly usual: { readonly site: string; readonly credit: string };
  readonly photographed: (site: string) => ReadonlySet<string>;
  readonly put: (picture: WaitingPicture, said: PhotoSaid) => Promise<string | null>;
  readonly leave: (picture: WaitingPicture) => void;
}

/** Pictures that are ready and not in the visit yet: one is spoken of at a time, what was written of the others stays. */
export function WaitingPictures({ waiting, sites, usual, photographed, put, leave }: Props) {
  const [chosen, setChosen] = useState<number | null>(null);
  if (waiting.length === 0) return null;
  const now = waiting.find(({ id }) => id === chosen) ?? waiting[0];
  const here = sites.find(({ value }) => value === usual.site) ?? sites[0];
  const finds = here?.finds.map(({ value }) => value) ?? [];
  return (
    <>
      <h2>{say(words.waitingTitle, { count: waiting.length })}</h2>
      {waiting.length > 1 && (
        <ul class="photo-queue">
          {waiting.map(({ id, name, taken }) => (
            <li key={id}>
              <button
                type="button"
                aria-pressed={id === now?.id}
                onClick={() => {
                  setChosen(id);
                }}
              >
                <img src={pictureShown(taken.bytes)?.address} alt="" />
                <span class="small">{name}</span>
              </button>
            </li>
          ))}
        </ul>
      )}
      {waiting.map((each) => {
        const picture = pictureShown(each.taken.bytes);
        return (
          picture !== null && (
            <div key={each.id} hidden={each !== now}>
              <PhotoForm
                title={each.name}
                about={each.about}
                picture={picture}
                begin={{
                  site: null,
                  find: findInName(each.name, finds) ?? '',
                  shows: '',
                  credit: null,
                  bar: null,
                }}
                sites={sites}
                usual={usual}
                photographed={photographed}
                of={null}
                put={(said) => put(each, said)}
                leave={() => {
                  leave(each);
                }}
              />
            </div>
          )
        );
      })}
    </>
  );
}
