import { useState } from 'preact/hooks';
import { bench as words } from '../../shared/words/en/bench.ts';
import { say } from '../../shared/words/index.ts';
import { MOST_KILOBYTES } from '../packs/pack-size.ts';
import { makePackHere, type PackFiles } from './make-pack-here.ts';
import { PageSeen } from './PageSeen.tsx';
import type { PackPart } from './protocol.ts';
import { saveFile } from './save-file.ts';

/** What of the page is looked at: nothing, or one band's, or the lesson's own. */
export interface PageWanted {
  readonly isShown: boolean;
  readonly band: string | null;
}

interface Props {
  readonly files: PackFiles & { readonly preview: string };
  readonly name: string;
  readonly bands: readonly string[];
  readonly wanted: PageWanted;
  readonly want: (wanted: PageWanted) => void;
  readonly page: PackPart | null;
  /** Asks for the lesson's own page, to be packed. */
  readonly packPart: () => Promise<PackPart | null>;
  readonly canPack: boolean;
}

/** The page as pupils see it at a band, and the pack. */
export function PagePanel({ files, name, bands, wanted, want, page, packPart, canPack }: Props) {
  const [told, setTold] = useState('');
  const pack = async (): Promise<void> => {
    try {
      const part = await packPart();
      if (part === null) {
        setTold(words.packNot);
        return;
      }
      const { html, kilobytes, hasFonts } = await makePackHere(files, part);
      saveFile(`${name}.html`, html, 'text/html');
      const made = say(words.packMade, { file: `${name}.html`, kilobytes });
      const isLarge = kilobytes > MOST_KILOBYTES;
      setTold(
        [
          made,
          ...(hasFonts ? [] : [words.packFaces]),
          ...(isLarge ? [say(words.packLarge, { most: MOST_KILOBYTES })] : []),
        ].join(' '),
      );
    } catch (error) {
      setTold(say(words.packFailed, { because: error instanceof Error ? error.message : String(error) }));
    }
  };
  return (
    <>
      <div class="lead-acts">
        <button
          type="button"
          class="press"
          aria-expanded={wanted.isShown}
          onClick={() => {
            want({ ...wanted, isShown: !wanted.isShown });
          }}
        >
          {wanted.isShown ? words.pageHide : words.pageShow}
        </button>
        {wanted.isShown && bands.length > 0 && (
          <label>
            {words.pageBand}{' '}
            <select
              value={wanted.band ?? ''}
              onChange={({ currentTarget }) => {
                want({ ...wanted, band: currentTarget.value === '' ? null : currentTarget.value });
              }}
            >
              <option value="">{words.pageAll}</option>
              {bands.map((band) => (
                <option key={band} value={band}>
                  {band}
                </option>
              ))}
            </select>
          </label>
        )}
        <button
          type="button"
          class="press"
          aria-disabled={!canPack}
          onClick={() => {
            if (canPack) void pack();
            else setTold(words.packNot);
          }}
        >
          {words.pack}
        </button>
      </div>
      <p class="small quiet">{words.packLead}</p>
      <p role="status">{told}</p>
      {wanted.isShown && <PageSeen preview={files.preview} page={page} />}
    </>
  );
}
