import * as fc from 'fast-check';
import sharp from 'sharp';
import { beforeAll, describe, expect, test } from 'vitest';
import { MOST_PHOTO_BYTES, readPicture, TOO_MANY_POINTS } from '../../shared/photo/index.ts';

// Checked against libvips through sharp 0.35: it writes the pictures and says what is left in them.

const FORMATS = ['jpeg', 'png', 'webp'] as const;
type Format = (typeof FORMATS)[number];

const WIDTH_PX = 61;
const HEIGHT_PX = 40;

/** A picture of slanting stripes, so that no two corners look alike. */
const stripes = Buffer.from(
  Array.from({ length: WIDTH_PX * HEIGHT_PX * 3 }, (_, place) => (place * 7 + Math.floor(place / 183)) % 256),
);

const plain = () => sharp(stripes, { raw: { width: WIDTH_PX, height: HEIGHT_PX, channels: 3 } });

const told = () =>
  plain()
    .withExif({
      IFD0: { Make: 'Invented', Model: 'One', DateTime: '2026:11:29 10:00:00', Artist: 'Nobody' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '52/1 30/1 0/1' },
    })
    .withXmp('<x:xmpmeta xmlns:x="adobe:ns:meta/"><a>where it lay</a></x:xmpmeta>');

const files = new Map<Format, { readonly plain: Buffer; readonly told: Buffer }>();

beforeAll(async () => {
  for (const format of FORMATS) {
    files.set(format, {
      plain: await plain().toFormat(format).toBuffer(),
      told: await told().toFormat(format).toBuffer(),
    });
  }
});

const fileOf = (format: Format, which: 'plain' | 'told'): Uint8Array => {
  const made = files.get(format);
  if (made === undefined) throw new Error(`no ${format}`);
  return new Uint8Array(made[which]);
};

const pictureOf = (bytes: Uint8Array) => {
  const { picture, refusal } = readPicture(bytes);
  if (picture === null) throw new Error(refusal);
  return picture;
};

describe.each(FORMATS)('a %s', (format) => {
  test('has the sides that libvips gave it', () => {
    expect(pictureOf(fileOf(format, 'plain'))).toMatchObject({
      type: `image/${format}`,
      widthPx: WIDTH_PX,
      heightPx: HEIGHT_PX,
      isTurned: false,
    });
  });

  test('says that it carries place, device and time', () => {
    expect(pictureOf(fileOf(format, 'told')).carries).toEqual(
      expect.arrayContaining(['place', 'device', 'time', 'other words']),
    );
  });

  test('carries nothing once stripped, and shows the same picture', async () => {
    const bytes = fileOf(format, 'told');
    const before = await sharp(bytes).metadata();
    expect([before.exif, before.xmp]).not.toContain(undefined);
    const { stripped } = pictureOf(bytes);
    const after = await sharp(stripped).metadata();
    expect([after.exif, after.xmp, after.iptc]).toEqual([undefined, undefined, undefined]);
    expect(Buffer.from(stripped).includes('Invented')).toBe(false);
    expect(Buffer.from(stripped).includes('where it lay')).toBe(false);
    expect(pictureOf(stripped).carries).toEqual([]);
    expect(await sharp(stripped).raw().toBuffer()).toEqual(await sharp(bytes).raw().toBuffer());
  });

  test('says that it is turned', async () => {
    const turned = await plain().withMetadata({ orientation: 6 }).toFormat(format).toBuffer();
    expect(pictureOf(new Uint8Array(turned)).isTurned).toBe(true);
  });

  test('with something after its end loses what follows', () => {
    const { stripped, carries } = pictureOf(
      new Uint8Array(Buffer.concat([fileOf(format, 'plain'), Buffer.from('a hidden film')])),
    );
    expect(carries).toContain('other words');
    expect(Buffer.from(stripped).includes('hidden')).toBe(false);
  });

  test('cut short anywhere, or with any byte changed, is read or refused and never loops or throws', () => {
    const whole = fileOf(format, 'told');
    fc.assert(
      fc.property(fc.nat(whole.length), fc.nat(whole.length - 1), fc.nat(255), (length, place, value) => {
        const hurt = whole.slice();
        hurt[place] = value;
        for (const bytes of [hurt, hurt.subarray(0, length)]) {
          const { picture, refusal } = readPicture(bytes);
          expect((picture === null) === (refusal !== null)).toBe(true);
        }
      }),
      { numRuns: 2000, seed: 5 },
    );
  });
});

test('a progressive JPEG is read over all its scans', async () => {
  const bytes = new Uint8Array(await told().jpeg({ progressive: true }).toBuffer());
  const { stripped } = pictureOf(bytes);
  expect(await sharp(stripped).raw().toBuffer()).toEqual(await sharp(bytes).raw().toBuffer());
});

test('a WebP without loss and with clear parts keeps both', async () => {
  const bytes = new Uint8Array(await told().ensureAlpha(0.5).webp({ lossless: true }).toBuffer());
  const { stripped, widthPx, heightPx } = pictureOf(bytes);
  expect([widthPx, heightPx]).toEqual([WIDTH_PX, HEIGHT_PX]);
  expect(await sharp(stripped).raw().toBuffer()).toEqual(await sharp(bytes).raw().toBuffer());
});

test('a picture of a hundred million points is refused before it is opened', async () => {
  const large = new Uint8Array(
    await sharp({ create: { width: 10_000, height: 10_000, channels: 3, background: '#888' } })
      .png()
      .toBuffer(),
  );
  expect(10_000 * 10_000).toBe(TOO_MANY_POINTS);
  expect(readPicture(large).refusal).toBe('too-many-points');
});

test.each([
  ['empty', new Uint8Array()],
  ['not-a-picture', new TextEncoder().encode('<svg onload="alert(1)"/>')],
  ['not-a-picture', new TextEncoder().encode('pit,small find,context')],
  ['broken', fileHead('\u00ff\u00d8\u00ff')],
  ['broken', fileHead('\u0089PNG\r\n\u001a\n')],
  ['other-picture', fileHead('GIF89a')],
  ['other-picture', fileHead('\0\0\0\u0018ftypheic')],
])('%s is said of a file that is so', (refusal, bytes) => {
  expect(readPicture(bytes).refusal).toBe(refusal);
});

function fileHead(letters: string): Uint8Array {
  return Uint8Array.from(letters, (letter) => letter.charCodeAt(0));
}

test('the most that a photograph may weigh lets a picture of 800 points in', async () => {
  const noise = await sharp({
    create: {
      width: 800,
      height: 600,
      channels: 3,
      background: '#777',
      noise: { type: 'gaussian', mean: 120, sigma: 12 },
    },
  })
    .jpeg({ quality: 70 })
    .toBuffer();
  expect(noise.length).toBeLessThan(MOST_PHOTO_BYTES);
});
