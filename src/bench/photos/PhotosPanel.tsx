import { useStore } from '@nanostores/preact';
import { useMemo, useRef, useState } from 'preact/hooks';
import { ownPhotos, takeOutPhoto, type OwnPhoto, type PhotoToPut } from '../../../shared/bench/index.ts';
import { barLength, firstBar } from '../../../shared/photo/index.ts';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import { say } from '../../../shared/words/index.ts';
import type { BenchStore } from '../../stores/bench.ts';
import type { Checker } from '../checker.ts';
import { pictureShown } from './address-of.ts';
import { OwnProblems } from './OwnProblems.tsx';
import type { PhotoSaid } from './photo-draft.ts';
import { PhotoForm } from './PhotoForm.tsx';
import { PhotosList } from './PhotosList.tsx';
import { putInVisit } from './put-in-visit.ts';
import { RefusedList } from './RefusedList.tsx';
import { TakeIn } from './TakeIn.tsx';
import { useTaking } from './use-taking.ts';
import { WaitingPictures } from './WaitingPictures.tsx';

interface Props {
  readonly bench: BenchStore;
  readonly checker: Checker;
  /** The site the lesson names. */
  readonly site: string;
}

/** The photograph that is being changed, and the picture that is to take its place, where one is. */
interface Changing {
  readonly site: string;
  readonly find: string;
  readonly bytes: Uint8Array | null;
  readonly about: string;
}

const isSame = (a: Pick<OwnPhoto, 'site' | 'find'>, b: Pick<OwnPhoto, 'site' | 'find'>): boolean =>
  a.site === b.site && a.find === b.find;

const toPut = (said: PhotoSaid, bytes: Uint8Array, from: PhotoToPut['from']): PhotoToPut => ({
  site: said.site,
  find: said.find,
  shows: said.shows.trim(),
  credit: said.credit.trim(),
  lengthPx: said.bar === null ? null : barLength(said.bar),
  bytes,
  from,
});

/** The lead's own photographs: taken in, spoken of, put into the visit, changed and taken out again. */
export function PhotosPanel({ bench, checker, site }: Props) {
  const visit = useStore(bench.$visit);
  const isLocked = useStore(bench.$keeping) === 'elsewhere';
  const opened = useStore(checker.$opened);
  const taking = useTaking();
  const door = useRef<HTMLDetailsElement>(null);
  const status = useRef<HTMLParagraphElement>(null);
  const [isOver, setOver] = useState(false);
  const [changing, setChanging] = useState<Changing | null>(null);
  const [taken, setTaken] = useState<PhotoToPut | null>(null);
  const [files, pictures] = [visit?.files, visit?.photos];
  const photos = useMemo(
    () => (files === undefined || pictures === undefined ? [] : ownPhotos({ files, photos: pictures })),
    [files, pictures],
  );
  const canTake = visit !== null && opened !== null && !isLocked;
  const sites = opened?.offers.sites ?? [];
  const names = new Set(files?.map(({ file }) => file));
  const problems = (opened?.problems ?? []).filter(({ file }) => file.endsWith('.yaml') && names.has(file));
  const usual = { site, credit: photos.at(-1)?.credit ?? '' };
  const photographed = (of: string): ReadonlySet<string> =>
    new Set(photos.filter((photo) => photo.site === of).map(({ find }) => find));

  const tell = (sentence: string): void => {
    taking.tell(sentence);
    // What was pressed is gone: one goes on from what was said.
    status.current?.focus();
  };
  const put = async (photo: PhotoToPut, isDone: () => void): Promise<string | null> => {
    const fault = await putInVisit(bench, checker, photo);
    if (fault !== null) return fault;
    isDone();
    setTaken(null);
    tell(say(words.putIn, { find: photo.find }));
    return null;
  };
  const takeOut = (photo: OwnPhoto): void => {
    if (visit === null) return;
    const own = takeOutPhoto({ files: visit.files, photos: visit.photos }, photo.site, photo.find);
    if (own === null) {
      tell(words.unwritten);
      return;
    }
    bench.putFiles(own);
    setTaken(photo.bytes === null ? null : { ...photo, bytes: photo.bytes, from: null });
    tell(say(words.taken, { find: photo.find }));
  };
  const take = (given: readonly File[]): void => {
    setTaken(null);
    taking.take(given);
  };
  const again = ({ site: of, find }: OwnPhoto, file: File): void => {
    void taking.takeOne(file).then((read) => {
      if (read !== null) setChanging({ site: of, find, bytes: read.taken.bytes, about: read.about });
    });
  };
  const formOf = (photo: OwnPhoto) => {
    if (changing === null || !isSame(changing, photo)) return null;
    const bytes = changing.bytes ?? photo.bytes;
    const picture = bytes === null ? null : pictureShown(bytes);
    if (bytes === null || picture === null) return null;
    const { widthPx, heightPx } = picture;
    const bar = photo.lengthPx === null ? null : firstBar(widthPx, heightPx, photo.lengthPx);
    return (
      <PhotoForm
        title={say(words.changeTitle, { find: photo.find })}
        about={changing.about}
        picture={picture}
        begin={{ ...photo, bar }}
        sites={sites}
        usual={usual}
        photographed={photographed}
        of={photo}
        put={(said) =>
          put(toPut(said, bytes, { site: photo.site, find: photo.find }), () => {
            setChanging(null);
          })
        }
        leave={() => {
          setChanging(null);
          status.current?.focus();
        }}
        another={(file) => {
          again(photo, file);
        }}
      />
    );
  };
  return (
    <details
      class="photos"
      ref={door}
      data-state={isOver ? 'over' : undefined}
      onDragOver={(event) => {
        if (event.dataTransfer?.types.includes('Files') !== true) return;
        event.preventDefault();
        setOver(true);
      }}
      onDragLeave={() => {
        setOver(false);
      }}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        if (door.current !== null) door.current.open = true;
        if (canTake) take([...(event.dataTransfer?.files ?? [])]);
      }}
    >
      <summary>{words.title}</summary>
      <p class="prose">{words.lead}</p>
      {canTake ? (
        <TakeIn take={take} isDropped={isOver} />
      ) : (
        <p>{isLocked ? words.elsewhere : words.needsVisit}</p>
      )}
      <p role="status" tabIndex={-1} ref={status} class="photo-status">
        {taking.told}
      </p>
      {taken !== null && (
        <button
          type="button"
          class="press small"
          onClick={() =>
            void put(taken, () => {
              setTaken(null);
            }).then((fault) => {
              if (fault !== null) tell(fault);
            })
          }
        >
          {words.putBack}
        </button>
      )}
      <RefusedList
        refused={taking.refused}
        clear={() => {
          taking.clearRefused();
          status.current?.focus();
        }}
      />
      {visit !== null && (
        <WaitingPictures
          waiting={taking.waiting}
          sites={sites}
          usual={usual}
          photographed={photographed}
          put={({ id, taken: { bytes } }, said) =>
            put(toPut(said, bytes, null), () => {
              taking.drop(id);
            })
          }
          leave={({ id, name }) => {
            taking.drop(id);
            tell(say(words.left, { name }));
          }}
        />
      )}
      {visit !== null && (
        <PhotosList
          photos={photos}
          sites={sites}
          isLocked={isLocked}
          formOf={formOf}
          change={({ site: of, find }) => {
            setChanging({ site: of, find, bytes: null, about: '' });
          }}
          takeOut={takeOut}
          again={again}
        />
      )}
      <OwnProblems problems={problems} />
    </details>
  );
}
