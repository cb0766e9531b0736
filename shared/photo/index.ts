export { base64 } from './base64.ts';
export { barLength, firstBar, moveEnd, type LengthBar, type Spot } from './length-bar.ts';
export type { Carried, Picture } from './picture.ts';
export {
  MOST_PHOTO_BYTES,
  MOST_PHOTOS_BYTES,
  readPicture,
  TOO_MANY_POINTS,
  type Refusal,
} from './read-picture.ts';
export { MOST_FILE_BYTES, SHRINK_TRIES, sidesWithin } from './shrink.ts';
