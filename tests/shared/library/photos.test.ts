import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import sharp from 'sharp';
import { beforeAll, expect, test } from 'vitest';
import { describeFind, drawFind } from '../../../shared/drawing/index.ts';
import { drawable, readSite } from '../../../shared/library/index.ts';
import { base64, MOST_PHOTO_BYTES } from '../../../shared/photo/index.ts';
import { demoLibrary, home } from '../../demo.ts';

const SITE = readFileSync(join(home, 'tests/content/broken/photo-unfit.site.yaml'), 'utf8');

const made = {
  plain: new Uint8Array(),
  told: new Uint8Array(),
  turned: new Uint8Array(),
  heavy: new Uint8Array(),
};

const canvas = (width: number, height: number) =>
  sharp({
    create: {
      width,
      height,
      channels: 3,
      background: '#987',
      noise: { type: 'gaussian', mean: 128, sigma: 40 },
    },
  });

beforeAll(async () => {
  const small = canvas(200, 100);
  made.plain = new Uint8Array(await small.clone().jpeg().toBuffer());
  made.told = new Uint8Array(
    await small
      .clone()
      .jpeg()
      .withExif({ IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '52/1 30/1 0/1' } })
      .toBuffer(),
  );
  made.turned = new Uint8Array(await small.clone().jpeg().withMetadata({ orientation: 3 }).toBuffer());
  made.heavy = new Uint8Array(await canvas(900, 900).jpeg({ quality: 95 }).toBuffer());
});

const read = (bytes: Uint8Array | null, site = SITE) =>
  readSite(
    'mill-field.yaml',
    site,
    [],
    demoLibrary.vocabulary,
    new Map(bytes === null ? [] : [['jaw.jpg', bytes]]),
  );

const findOf = (site: ReturnType<typeof read>) => {
  const find = site.value?.pits[0]?.finds[0];
  if (find === undefined) throw new Error('no find');
  return drawable(find);
};

const received = (site: ReturnType<typeof read>): readonly string[] =>
  site.problems.map(
    (problem) => `${problem.grade} ${problem.from.line}:${problem.from.column} ${problem.received}`,
  );

test('a photograph goes with its find, as it lay in its file', () => {
  const site = read(made.plain);
  expect(site.problems).toEqual([]);
  const { photo } = findOf(site);
  expect(photo).toMatchObject({ widthPx: 200, heightPx: 100, shows: 'A row of teeth along the top.' });
  expect(photo?.address).toBe(`data:image/jpeg;base64,${Buffer.from(made.plain).toString('base64')}`);
});

test('what it carries of a place is told of and not handed on', () => {
  const site = read(made.told);
  expect(received(site)).toEqual([expect.stringMatching('one that tells of .*place')]);
  const address = findOf(site).photo?.address ?? '';
  const bytes = Buffer.from(address.slice(address.indexOf(',') + 1), 'base64');
  expect(bytes.includes('Exif')).toBe(false);
  expect(bytes.length).toBeGreaterThan(500);
});

test.each([
  ['missing', null, 'no file "jaw.jpg"'],
  ['turned', 'turned', 'one that its file says must be turned'],
  ['too heavy', 'heavy', 'kB'],
  ['no picture', 'words', 'a file that is not a picture, whatever its name says'],
] as const)('a photograph that is %s leaves the drawing in its place', (_, which, words) => {
  const bytes = which === null ? null : which === 'words' ? new TextEncoder().encode('<svg/>') : made[which];
  const site = read(bytes);
  expect(received(site)).toEqual([expect.stringMatching(new RegExp(`^caution 33:27 .*${words}`))]);
  expect(findOf(site).photo).toBeUndefined();
});

test('the heavy one is truly beyond the limit', () => {
  expect(made.heavy.length).toBeGreaterThan(MOST_PHOTO_BYTES);
});

test('a photograph of no find of the site, and a second one of the same, are errors at their places', () => {
  const row = SITE.slice(SITE.indexOf('  - { find'));
  const site = read(made.plain, `${SITE}${row}${row.replace('P1-101', 'P1-102')}`);
  expect(site.problems.map(({ code, grade, from }) => `${code} ${grade} ${from.line}`)).toEqual([
    'find-repeated error 34',
    'find-unknown error 35',
  ]);
});

test('a photograph is drawn where a find is looked at closely, and never in the pit', () => {
  const find = findOf(read(made.plain, SITE.replace('file: jaw.jpg', 'file: jaw.jpg, length-px: 100')));
  const { markup, viewBox } = drawFind(find, { view: 'full', scaleBar: true });
  // 118 mm over 100 points: the picture is 236 mm wide and 118 mm high, with bar and credit below.
  expect(markup).toContain('width="236" height="118"');
  expect(viewBox.width).toBe(236);
  expect(viewBox.height).toBeGreaterThan(118);
  expect(markup).toContain('data-part="scale-bar"');
  expect(markup).toContain('Photograph: Wendle Marsh Field School (invented)');
  expect(drawFind(find, { view: 'lying' }).markup).not.toContain('<image');
  expect(describeFind(find).blind).toContain('A row of teeth along the top.');
});

test('without a known length there is no scale bar', () => {
  expect(drawFind(findOf(read(made.plain)), { view: 'full', scaleBar: true }).markup).not.toContain(
    'scale-bar',
  );
});

test('a credit that tries to be markup is only words', () => {
  const site = read(
    made.plain,
    SITE.replace(/credit: '[^']*'/, `credit: '</text><script>alert(1)</script>" onload="x'`),
  );
  const { markup } = drawFind(findOf(site), { view: 'full' });
  expect(markup).not.toMatch(/<script|onload="/);
});

test.each([0, 1, 2, 3, 4, 5, 255])('base64 of %d bytes is what Node writes', (length) => {
  const bytes = Uint8Array.from({ length }, (_, place) => (place * 37 + 251) % 256);
  expect(base64(bytes)).toBe(Buffer.from(bytes).toString('base64'));
});
