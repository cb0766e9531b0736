import type { ComponentChildren } from 'preact';
import { MOST_PHOTO_BYTES, MOST_PHOTOS_BYTES } from '../../../shared/photo/index.ts';
import { photosWeight, type OwnPhoto } from '../../../shared/bench/index.ts';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { say } from '../../../shared/words/index.ts';
import type { Offers } from '../protocol.ts';
import { pictureShown } from './address-of.ts';
import { OnePicture } from './OnePicture.tsx';
import { kilobytes } from './tell-taken.ts';

interface Props {
  readonly photos: readonly OwnPhoto[];
  readonly sites: Offers['sites'];
  readonly isLocked: boolean;
  /** The form of the one that is being changed, in its place; null for the rest. */
  readonly formOf: (photo: OwnPhoto) => ComponentChildren | null;
  readonly change: (photo: OwnPhoto) => void;
  readonly takeOut: (photo: OwnPhoto) => void;
  /** A picture for one whose own is gone. */
  readonly again: (photo: OwnPhoto, file: File) => void;
}

const OUT = ['out'] as const;
const CHANGE_OR_OUT = ['change', 'out'] as const;

/** How full a site is, in words; what is left is said once it is little. */
function Weight({ photos, site, name }: { photos: readonly OwnPhoto[]; site: string; name: string }) {
  const weight = photosWeight(photos, site);
  const left = Math.floor((MOST_PHOTOS_BYTES - weight) / MOST_PHOTO_BYTES);
  return (
    <p class="small">
      {say(words.weight, { site: name, sum: kilobytes(weight), most: kilobytes(MOST_PHOTOS_BYTES) })}
      {left <= 3 && <strong> {say(words.weightNear, { count: Math.max(0, left) })}</strong>}
    </p>
  );
}

/** The photographs of the visit, each with its find, its words and what it weighs. */
export function PhotosList({ photos, sites, isLocked, formOf, change, takeOut, again }: Props) {
  if (photos.length === 0) return <p class="small quiet">{words.listNone}</p>;
  const nameOf = (site: string): string => sites.find(({ value }) => value === site)?.means ?? site;
  const owners = [...new Set(photos.map(({ site }) => site))];
  return (
    <>
      <h2>{say(words.listTitle, { count: photos.length })}</h2>
      {owners.map((site) => (
        <Weight key={site} photos={photos} site={site} name={nameOf(site)} />
      ))}
      <ul class="photo-list">
        {photos.map((photo) => {
          const { site, find, shows, credit, lengthPx, bytes } = photo;
          const picture = bytes === null ? null : pictureShown(bytes);
          const offered = sites
            .find(({ value }) => value === site)
            ?.finds.find(({ value }) => value === find);
          const scale = lengthPx === null ? words.withoutBar : words.withBar;
          const form = formOf(photo);
          return (
            <li key={`${site} ${find}`} class="photo-row" data-find={find}>
              {form ?? (
                <>
                  {picture === null ? (
                    <p class="small photo-gone">{words.listGone}</p>
                  ) : (
                    <img
                      src={picture.address}
                      width={picture.widthPx}
                      height={picture.heightPx}
                      alt={shows}
                    />
                  )}
                  <div class="photo-said">
                    <h3>
                      {offered === undefined ? find : say(words.listFind, { find, type: offered.means })}
                    </h3>
                    {owners.length > 1 && <p class="small">{say(words.listSite, { site: nameOf(site) })}</p>}
                    <p>{say(words.listShows, { shows })}</p>
                    <p>{say(words.listCredit, { credit })}</p>
                    {bytes !== null && (
                      <p class="small quiet">
                        {say(words.listWeight, { kilobytes: kilobytes(bytes.length), scale })}
                      </p>
                    )}
                  </div>
                  <div class="lead-acts">
                    {picture === null && !isLocked && (
                      <OnePicture
                        label={words.chooseAgain}
                        take={(file) => {
                          again(photo, file);
                        }}
                      />
                    )}
                    {(picture === null ? OUT : CHANGE_OR_OUT).map((which) => (
                      <button
                        key={which}
                        type="button"
                        class="press small"
                        aria-label={say(words[which], { find })}
                        aria-disabled={isLocked}
                        onClick={() => {
                          if (isLocked) return;
                          if (which === 'change') change(photo);
                          else takeOut(photo);
                        }}
                      >
                        {which === 'change' ? words.changeShort : words.outShort}
                      </button>
                    ))}
                  </div>
                </>
              )}
            </li>
          );
        })}
      </ul>
    </>
  );
}
