import {
  MOST_FILE_BYTES,
  MOST_PHOTO_BYTES,
  readPicture,
  SHRINK_TRIES,
  sidesWithin,
  TOO_MANY_POINTS,
  type Picture,
} from '../../../shared/photo/index.ts';
import type { PictureRead, PictureTaken } from './picture-taken.ts';

const refuse = (refusal: NonNullable<PictureRead['refusal']>): PictureRead => ({ taken: null, refusal });

/** Opens a picture as it is meant to stand; null where the browser cannot. */
async function openUpright(file: Blob): Promise<ImageBitmap | null> {
  try {
    return await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch (error) {
    // Older browsers turn pictures by themselves and do not know the word.
    return error instanceof TypeError ? createImageBitmap(file).catch(() => null) : null;
  }
}

/** A picture drawn on white at a size and written as a JPEG, with nothing beside it. */
async function drawSmaller(
  opened: ImageBitmap,
  longestPx: number,
  quality: number,
): Promise<Omit<PictureTaken, 'carried'> | null> {
  const { widthPx, heightPx } = sidesWithin(opened.width, opened.height, longestPx);
  const canvas = new OffscreenCanvas(widthPx, heightPx);
  const pen = canvas.getContext('2d');
  if (pen === null) return null;
  pen.fillStyle = '#fff';
  pen.fillRect(0, 0, widthPx, heightPx);
  pen.imageSmoothingQuality = 'high';
  pen.drawImage(opened, 0, 0, widthPx, heightPx);
  const blob = await canvas.convertToBlob({ type: 'image/jpeg', quality });
  const { picture } = readPicture(new Uint8Array(await blob.arrayBuffer()));
  return picture === null ? null : { bytes: new Uint8Array(picture.stripped), widthPx, heightPx };
}

const isFitAsItIs = ({ type, widthPx, heightPx, isTurned, stripped }: Picture): boolean =>
  type === 'image/jpeg' &&
  !isTurned &&
  stripped.length <= MOST_PHOTO_BYTES &&
  Math.max(widthPx, heightPx) <= (SHRINK_TRIES[0]?.longestPx ?? 0);

/**
 * Makes a picture ready for a lesson. Its bytes are looked at before anything is opened; what the browser opens is drawn
 * anew, ever smaller, until it is light enough.
 */
export async function shrinkPicture(file: Blob): Promise<PictureRead> {
  if (file.size > MOST_FILE_BYTES) return refuse('too-large');
  const { picture, refusal } = readPicture(new Uint8Array(await file.arrayBuffer()));
  // Of other kinds some browsers open this one and some that.
  if (picture === null && refusal !== 'other-picture') return refuse(refusal ?? 'broken');
  const opened = await openUpright(file);
  if (opened === null) return refuse(picture === null ? 'other-picture' : 'cannot-open');
  try {
    if (opened.width * opened.height >= TOO_MANY_POINTS) return refuse('too-many-points');
    const carried = picture?.carries ?? null;
    if (picture !== null && isFitAsItIs(picture)) {
      const { widthPx, heightPx, stripped } = picture;
      return { taken: { bytes: new Uint8Array(stripped), widthPx, heightPx, carried }, refusal: null };
    }
    for (const { longestPx, quality } of SHRINK_TRIES) {
      const drawn = await drawSmaller(opened, longestPx, quality);
      if (drawn === null) return refuse('cannot-open');
      if (drawn.bytes.length <= MOST_PHOTO_BYTES) return { taken: { ...drawn, carried }, refusal: null };
    }
    return refuse('too-fine');
  } finally {
    opened.close();
  }
}
