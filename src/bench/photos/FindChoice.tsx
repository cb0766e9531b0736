import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { say } from '../../../shared/words/index.ts';
import { OfferChoice } from '../OfferChoice.tsx';
import type { Offers } from '../protocol.ts';

interface Props {
  readonly id: string;
  readonly sites: Offers['sites'];
  readonly site: string;
  readonly find: string;
  /** Finds of the site that have a photograph already. */
  readonly photographed: ReadonlySet<string>;
  readonly missing: string | null;
  readonly setSite: (site: string) => void;
  readonly setFind: (find: string) => void;
}

/** Which find of which site a picture shows, pit by pit. */
export function FindChoice({ id, sites, site, find, photographed, missing, setSite, setFind }: Props) {
  const here = sites.find(({ value }) => value === site);
  return (
    <>
      {sites.length > 1 && <OfferChoice label={words.site} offers={sites} value={site} choose={setSite} />}
      <div class="photo-field">
        <label for={`${id}-find`}>{words.find}</label>
        <select
          id={`${id}-find`}
          class="form-value"
          value={find}
          aria-invalid={missing !== null}
          aria-describedby={`${id}-find-missing`}
          onChange={({ currentTarget }) => {
            setFind(currentTarget.value);
          }}
        >
          <option value="">{words.findNone}</option>
          {(here?.pits ?? []).map((pit) => (
            <optgroup key={pit.value} label={say(words.pit, { pit: pit.value })}>
              {(here?.finds ?? [])
                .filter(({ value }) => value.startsWith(`${pit.value}-`))
                .map(({ value, means, lengthMm }) => (
                  <option key={value} value={value}>
                    {say(photographed.has(value) ? words.findOptionHas : words.findOption, {
                      find: value,
                      type: means,
                      length: lengthMm,
                    })}
                  </option>
                ))}
            </optgroup>
          ))}
        </select>
        <p class="small photo-missing" id={`${id}-find-missing`}>
          {missing}
        </p>
      </div>
    </>
  );
}
