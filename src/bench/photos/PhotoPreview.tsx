import { drawPhoto } from '../../../shared/drawing/index.ts';
import { benchPhotos as words } from '../../../shared/words/en/bench-photos.ts';
import type { PictureShown } from './address-of.ts';

interface Props {
  readonly picture: PictureShown;
  readonly shows: string;
  readonly credit: string;
  readonly lengthPx: number | null;
  readonly findLengthMm: number;
}

/** A photograph as a lesson draws it: with its credit, and a scale bar where the find's length is laid. */
export function PhotoPreview({ picture, shows, credit, lengthPx, findLengthMm }: Props) {
  const drawn = drawPhoto(
    { ...picture, shows, credit, ...(lengthPx === null ? {} : { lengthPx }) },
    { lengthMm: findLengthMm },
  );
  const { x, y, width, height } = drawn.viewBox;
  return (
    <figure class="photo-preview">
      <figcaption class="small quiet">{words.preview}</figcaption>
      <svg
        viewBox={`${x} ${y} ${width} ${height}`}
        role="img"
        aria-label={shows === '' ? words.preview : shows}
        style={{ '--wide': width / height }}
        // Our own drawing: the words in it are made plain where it is drawn.
        dangerouslySetInnerHTML={{ __html: drawn.markup }}
      />
    </figure>
  );
}
