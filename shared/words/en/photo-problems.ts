import { quoted } from './problems.ts';

const KILOBYTE = 1000;

const SHRINK = 'take it in on the Bench, which turns it upright, shrinks it and takes out what it carries';

const REFUSED = {
  empty: { received: 'an empty file', mend: 'copy the picture again' },
  'not-a-picture': {
    received: 'a file that is not a picture, whatever its name says',
    mend: 'choose the picture itself',
  },
  'other-picture': {
    received: 'a picture of a kind that not every browser shows',
    mend: 'save it as a JPEG and choose that',
  },
  broken: { received: 'a picture that is cut short or damaged', mend: 'copy the picture again' },
  'too-many-points': {
    received: 'a picture of a hundred million points or more',
    mend: 'save it smaller: 1,600 points along its longer side are plenty',
  },
} as const;

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

/** Sentences for problems with photographs. */
export const photoWords = {
  missing: (file: string, near: string | null): Sentences => ({
    expected: 'a picture in the folder "photos" beside the site file',
    received: `no file ${quoted(file)}`,
    mend: near === null ? 'put the picture there, or take the photograph out' : `write ${quoted(near)}`,
  }),
  refused: (refusal: keyof typeof REFUSED): Sentences => ({
    expected: 'a JPEG, PNG or WebP of fewer than a hundred million points',
    ...REFUSED[refusal],
  }),
  turned: {
    expected: 'a picture that stands upright by itself',
    received: 'one that its file says must be turned',
    mend: SHRINK,
  },
  heavy: (bytes: number, most: number): Sentences => ({
    expected: `a photograph of at most ${most / KILOBYTE} kB`,
    received: `${Math.ceil(bytes / KILOBYTE)} kB`,
    mend: SHRINK,
  }),
  heavyTogether: (most: number): Sentences => ({
    expected: `photographs of at most ${most / KILOBYTE} kB together`,
    received: 'more, with this one',
    mend: 'shrink the photographs, or leave this and those after it to the drawings',
  }),
  lengthBeyond: (lengthPx: number, widthPx: number, heightPx: number): Sentences => ({
    expected: `a length inside a picture of ${widthPx} by ${heightPx} points`,
    received: `${lengthPx} points`,
    mend: 'count again from one end of the find to the other; it is shown without a scale bar',
  }),
  carries: (carried: readonly string[]): Sentences => ({
    expected: 'a picture that tells nothing beside itself',
    received: `one that tells of ${carried.join(', ')}`,
    mend: `nothing of that is shown or handed on, but your own file still holds it: ${SHRINK}`,
  }),
  findUnknown: (find: string, near: string | null): Sentences => ({
    expected: 'a find of this site',
    received: quoted(find),
    mend: near === null ? 'write a find of this site, its pit and number: P3-124' : `write ${quoted(near)}`,
  }),
  repeated: (find: string): Sentences => ({
    expected: 'one photograph a find',
    received: `a second one for ${find}`,
    mend: 'take one of the two out',
  }),
};
