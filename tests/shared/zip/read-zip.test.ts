import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync, unzipSync, zipSync } from 'fflate';
import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import { readZip, writeZip, type FolderFile, type Limits } from '../../../shared/zip/index.ts';
import { folderOfVisit } from '../../../shared/visit-folder/folder-of-visit.ts';
import { gravelEnd } from '../../content/zips/gravel-end.ts';
import { home } from '../../demo.ts';

const LIMITS: Limits = { bytes: 100_000, files: 20 };
const all = (): boolean => true;
const read = (zip: Uint8Array, limits = LIMITS) => readZip(zip, limits, all);
const kept = (name: string): Uint8Array => readFileSync(join(home, 'tests/content/zips', name));
const bytesOf = (text: string): Uint8Array => new TextEncoder().encode(text);
const told = (files: readonly FolderFile[]): Readonly<Record<string, string>> =>
  Object.fromEntries(files.map(({ path, bytes }) => [path, Buffer.from(bytes).toString('base64')]));

const folder = told(folderOfVisit(gravelEnd));
const inMyVisit = Object.fromEntries(
  Object.entries(folder).map(([path, bytes]) => [`my-visit/${path}`, bytes]),
);

// Made by other programs from the same files: `zip -rqX info-zip.zip my-visit __MACOSX` (Info-ZIP 3.0), and zipfile of
// Python 3 into a stream, which leaves the sizes to be written after each file.
test.each(['info-zip.zip', 'in-one-go.zip'])(
  '%s, made by another program, gives the files that went in',
  (name) => {
    const { files, unfit, fault } = readZip(kept(name), LIMITS, (path) => !/MACOSX|DS_Store/.test(path));
    expect({ unfit, fault }).toEqual({ unfit: [], fault: null });
    expect(told(files)).toEqual(inMyVisit);
  },
);

// `zip -qrX -P open-sesame locked.zip my-visit/lessons`, and zipfile with ZIP_BZIP2.
test.each([
  { name: 'locked.zip', path: 'my-visit/lessons/gravel-end-für-alle.md', why: 'locked' },
  { name: 'bzip2.zip', path: 'my-visit/sites/gravel-end.yaml', why: 'packed-otherwise' },
])('a file of $name that cannot be unpacked is named, and nothing breaks', ({ name, path, why }) => {
  expect(read(kept(name))).toMatchObject({ files: [], unfit: [{ path, why }], fault: null });
});

const anyFiles = fc
  .uniqueArray(
    fc.record({ path: fc.stringMatching(/^[a-zäøж][a-zäøж0-9/ .-]{0,20}[a-z]$/), bytes: fc.uint8Array() }),
    {
      selector: ({ path }) => path,
      maxLength: 8,
    },
  )
  .map((files) => files.filter(({ path }) => !path.includes('//')));

test('what we write, we and another reader find again', () => {
  fc.assert(
    fc.property(anyFiles, (files) => {
      const zip = writeZip(files);
      const { files: again, fault } = read(zip);
      expect(fault).toBeNull();
      expect(told(again)).toEqual(told(files));
      expect(told(Object.entries(unzipSync(zip)).map(([path, bytes]) => ({ path, bytes })))).toEqual(
        told(files),
      );
    }),
    { numRuns: 200 },
  );
});

test('the bytes are the same in every place and on every day', () => {
  const before = process.env['TZ'];
  const zips = ['Pacific/Auckland', 'America/Los_Angeles', 'UTC'].map((zone) => {
    process.env['TZ'] = zone;
    return Buffer.from(writeZip([{ path: 'a.md', bytes: bytesOf('a') }])).toString('base64');
  });
  if (before === undefined) delete process.env['TZ'];
  else process.env['TZ'] = before;
  expect(new Set(zips).size).toBe(1);
});

test('two files of one path are not written: one would lie over the other', () => {
  const file = { path: 'a.md', bytes: bytesOf('a') };
  expect(() => writeZip([file, file])).toThrow(RangeError);
});

test('what is no zip, and a zip cut short, is told apart', () => {
  expect(read(bytesOf('---\ntitle: A\n---\n')).fault).toEqual({ fault: 'no-zip' });
  expect(read(new Uint8Array()).fault).toEqual({ fault: 'no-zip' });
  const zip = kept('info-zip.zip');
  for (const length of [4, 30, 400, zip.length - 1])
    expect(read(zip.subarray(0, length)).fault, `${length} bytes`).toEqual({ fault: 'broken' });
});

test('an empty zip is a zip with nothing in it', () => {
  expect(read(writeZip([]))).toEqual({ files: [], unfit: [], others: [], fault: null });
});

test('more than the limits is refused from the list alone', () => {
  const large = zipSync({ 'a.md': new Uint8Array(60_000), 'b.md': new Uint8Array(60_000) });
  expect(large.length).toBeLessThan(1000);
  expect(read(large).fault).toEqual({ fault: 'too-large', received: 120_000 });
  // What is not asked for is not unpacked, and does not count.
  expect(readZip(large, LIMITS, (path) => path === 'a.md')).toMatchObject({ others: ['b.md'], fault: null });
  const many = writeZip(
    Array.from({ length: 21 }, (_, index) => ({ path: `${index}.md`, bytes: new Uint8Array() })),
  );
  expect(read(many).fault).toEqual({ fault: 'too-many', received: 21 });
});

const view = (zip: Uint8Array): DataView => new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
const listAt = (zip: Uint8Array): number => view(zip).getUint32(zip.length - 6, true);

test('a zip that tells of less than it holds is not unpacked', () => {
  const bomb = zipSync({ 'a.md': new Uint8Array(5_000_000) });
  view(bomb).setUint32(listAt(bomb) + 24, 10, true);
  expect(read(bomb).fault).toEqual({ fault: 'larger-than-told' });
});

test('files that overlap in a zip count each for itself', () => {
  const zip = zipSync({ 'a.md': new Uint8Array(60_000), 'b.md': bytesOf('b') });
  const second = listAt(zip) + 46 + 'a.md'.length;
  const [from, to] = [view(zip), view(zip)];
  // The second file of the list now lies where the first does.
  for (const field of [16, 20, 24, 42])
    to.setUint32(second + field, from.getUint32(listAt(zip) + field, true), true);
  expect(read(zip).fault).toEqual({ fault: 'too-large', received: 120_000 });
});

test('a byte that has changed is found', () => {
  const zip = writeZip([
    { path: 'a.jpg', bytes: bytesOf('a picture, stored as it is') },
    { path: 'b.md', bytes: bytesOf('a lesson, a lesson, a lesson') },
  ]);
  const spoilt = zip.slice();
  const at = 30 + 'a.jpg'.length + 3;
  spoilt[at] = (spoilt[at] ?? 0) ^ 1;
  expect(read(spoilt)).toMatchObject({
    unfit: [{ path: 'a.jpg', why: 'damaged' }],
    files: [{ path: 'b.md' }],
  });
});

test('a name that is not marked as UTF-8 and is none is of code page 437', () => {
  const zip = zipSync({ 'h?gel.md': bytesOf('a') });
  for (const from of [30, listAt(zip) + 46]) zip[from + 1] = 0x81;
  expect(read(zip).files.map(({ path }) => path)).toEqual(['hügel.md']);
});

test('whatever is changed in a zip, reading it ends in files or in words', () => {
  const whole = kept('info-zip.zip');
  const spoilt = fc
    .array(fc.tuple(fc.nat(whole.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 })
    .map((changes) => {
      const other = Uint8Array.from(whole);
      for (const [at, byte] of changes) other[at] = byte;
      return other;
    });
  const noise = fc
    .uint8Array({ maxLength: 200 })
    .map((bytes) => Uint8Array.from([...whole.subarray(0, 4), ...bytes]));
  const packedNoise = fc.uint8Array({ maxLength: 300 }).map((bytes) => {
    const zip = zipSync({ 'a.md': deflateSync(bytesOf('a'.repeat(300))) }, { level: 0 });
    // Said to be deflated: what lies there is any bytes.
    view(zip).setUint16(listAt(zip) + 10, 8, true);
    zip.set(bytes.subarray(0, 20), 34);
    return zip;
  });
  fc.assert(
    fc.property(fc.oneof(spoilt, noise, packedNoise), (zip) => {
      const { files, fault } = read(zip);
      if (fault !== null) expect(files).toEqual([]);
      expect(files.reduce((sum, { bytes }) => sum + bytes.length, 0)).toBeLessThanOrEqual(LIMITS.bytes);
    }),
    { numRuns: 1000 },
  );
});
