import { readFileSync } from 'node:fs';
import { pathToFileURL } from 'node:url';
import { AxeBuilder } from '@axe-core/playwright';
import type { Page } from '@playwright/test';
import sharp from 'sharp';
import { MOST_PHOTO_BYTES, TOO_MANY_POINTS } from '../../shared/photo/index.ts';
import { drawnFlint } from './drawn-flint.ts';
import { expect, SIZES, test } from './page-under-test.ts';

// Pictures are made, and what is left in them is read, by libvips through sharp.

const MAKER = 'InventedCameraWorks';
const PLACE = 'where it lay in the marsh';

/** A large picture as a telephone writes it: lying on its side, with a mark to turn it, and telling of place, device and time. */
async function fromTelephone(): Promise<Buffer> {
  const upright = await (await drawnFlint(1600, 1200)).png().toBuffer();
  return sharp(upright)
    .rotate(270)
    .withExif({
      IFD0: { Make: MAKER, Model: 'One', DateTime: '2026:11:29 10:00:00' },
      IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '52/1 30/1 0/1' },
    })
    .withXmp(`<x:xmpmeta xmlns:x="adobe:ns:meta/"><a>${PLACE}</a></x:xmpmeta>`)
    .withMetadata({ orientation: 6 })
    .jpeg({ quality: 92 })
    .toBuffer();
}

/** The head of a PNG of ten thousand by ten thousand points; there is nothing behind it. */
async function hugePng(): Promise<Buffer> {
  const png = await sharp({ create: { width: 10, height: 10, channels: 3, background: '#888' } })
    .png()
    .toBuffer();
  png.writeUInt32BE(TOO_MANY_POINTS / 10_000, 16);
  png.writeUInt32BE(10_000, 20);
  return png;
}

/** A visit with finds that are looked at closely, and the door of photographs open. */
async function begin(page: Page): Promise<void> {
  await page.goto('/bench/');
  await page.getByLabel('Begin from').locator('option').nth(3).waitFor({ state: 'attached' });
  await page.getByLabel('What is it called?').fill('With pictures');
  await page.getByLabel('Begin from').selectOption('who-made-this');
  await page.getByRole('button', { name: 'Begin', exact: true }).click();
  await expect(page.locator('.lead-count[data-state="fresh"]')).toBeVisible({ timeout: 30_000 });
  await page.getByText('Photographs', { exact: true }).click();
}

const kept = (page: Page): Promise<void> => expect(page.locator('[data-keeping="kept"]')).toBeVisible();
const row = (page: Page, find: string) => page.locator(`.photo-row[data-find="${find}"]`);
const status = (page: Page) => page.locator('.photo-status');

/** The photographs as the browser keeps them. */
const keptPictures = (page: Page): Promise<readonly { readonly key: string; readonly bytes: number[] }[]> =>
  page.evaluate(async () => {
    const opened = await new Promise<IDBDatabase>((done, fail) => {
      const asked = indexedDB.open('pitlore-bench-photos');
      asked.addEventListener('success', () => {
        done(asked.result);
      });
      asked.addEventListener('error', fail);
    });
    const store = opened.transaction('photos').objectStore('photos');
    const all = <Value>(asked: IDBRequest<Value>): Promise<Value> =>
      new Promise((done) => {
        asked.addEventListener('success', () => {
          done(asked.result);
        });
      });
    const [keys, values] = await Promise.all([all(store.getAllKeys()), all(store.getAll())]);
    opened.close();
    // Keys are texts, "visit/name".
    return keys.map((key, index) => ({ key: key as string, bytes: [...(values[index] as Uint8Array)] }));
  });

test('a telephone’s picture stands upright in the page and the pack, and tells nothing', async ({
  watched: { page },
}) => {
  const picture = await fromTelephone();
  expect(picture.includes(MAKER)).toBe(true);
  expect((await sharp(picture).metadata()).orientation).toBe(6);
  await begin(page);
  await page
    .getByLabel('Choose pictures')
    .setInputFiles({ name: 'P7-165 side.jpg', mimeType: 'image/jpeg', buffer: picture });
  await expect(status(page)).toContainText('P7-165 side.jpg is ready', { timeout: 60_000 });
  await expect(status(page)).toContainText('where it was taken, on what device, when');
  await expect(status(page)).toContainText('that is left out');

  // By the keyboard alone from here. The find is guessed from the file's name; what is missing is said.
  const form = page.locator('.photo-form');
  await expect(form.getByLabel('Which find does it show?')).toHaveValue('P7-165');
  await form.getByRole('button', { name: 'Put it in the visit' }).focus();
  await page.keyboard.press('Enter');
  await expect(form.getByLabel('What is to be seen in it?')).toBeFocused();
  await expect(form.getByText('Write what is to be seen')).toBeVisible();
  await expect(form.getByText('Write who took it')).toBeVisible();
  await page.keyboard.type('Dark grey, pointed at both ends.');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Photograph: invented');
  await form.getByLabel('Show a scale bar with it').focus();
  await page.keyboard.press('Space');
  await expect(form.getByText('The find’s length is 800 of')).toBeVisible();
  await page.getByRole('slider', { name: 'One end of the length' }).focus();
  for (let press = 0; press < 5; press += 1) await page.keyboard.press('ArrowRight');
  await page.keyboard.press('Shift+ArrowRight');
  await expect(form.getByText('The find’s length is 749 of')).toBeVisible();
  await expect(form.locator('.photo-preview .ink-text').first()).toHaveText(/^\d+ (mm|cm)$/);
  for (const size of SIZES) {
    await page.setViewportSize(size);
    const overflow = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect(overflow, size.name).toBeLessThanOrEqual(0);
  }
  const { violations } = await new AxeBuilder({ page }).include('.photos').analyze();
  expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]?.html ?? ''}`)).toEqual([]);
  await form.getByRole('button', { name: 'Put it in the visit' }).focus();
  await page.keyboard.press('Enter');
  await expect(row(page, 'P7-165')).toContainText('with a scale bar');
  await expect(status(page)).toBeFocused();
  await expect(page.locator('.photos')).not.toContainText('To mend in your own files');

  await kept(page);
  const pictures = await keptPictures(page);
  expect(pictures.map(({ key }) => key.replace(/^.*\//, ''))).toEqual(['wendle-marsh-P7-165.jpg']);
  const bytes = Buffer.from(pictures[0]?.bytes ?? []);
  expect(bytes.length).toBeLessThanOrEqual(MOST_PHOTO_BYTES);
  const { width, height, exif, xmp, orientation } = await sharp(bytes).metadata();
  expect([width, height, exif, xmp, orientation]).toEqual([1000, 750, undefined, undefined, undefined]);
  for (const told of [MAKER, PLACE, 'Exif', '2026:11:29']) expect(bytes.includes(told), told).toBe(false);
  // Upright: the light falls from above, as it was drawn. On its side, left and right would differ instead.
  const shade = async (left: number, top: number): Promise<number> => {
    const { data } = await sharp(bytes)
      .extract({ left, top, width: 60, height: 60 })
      .greyscale()
      .raw()
      .toBuffer({ resolveWithObject: true });
    return data.reduce((sum, value) => sum + value, 0) / data.length;
  };
  expect((await shade(470, 0)) - (await shade(470, 680))).toBeGreaterThan(20);
  expect(Math.abs((await shade(0, 345)) - (await shade(930, 345)))).toBeLessThan(20);

  // After a reload it is there, and in the page as pupils see it.
  await page.reload();
  await page.getByText('Photographs', { exact: true }).click();
  await expect(row(page, 'P7-165')).toContainText('Photograph: invented');
  await expect(page.locator('.lead-count[data-state="fresh"]')).toBeVisible({ timeout: 30_000 });
  await page.getByRole('button', { name: 'Show the page' }).click();
  const image = page.frameLocator('.page-seen').locator('symbol image, svg image');
  await expect(image.first()).toHaveAttribute('href', `data:image/jpeg;base64,${bytes.toString('base64')}`);

  // The pack is a file that works, with the same bytes in it and nothing more.
  const downloading = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Make the pack' }).click();
  // By its name a browser knows that it is a page.
  const path = test.info().outputPath('pack.html');
  await (await downloading).saveAs(path);
  await expect(page.getByText(/is made: \d+ kB compressed/)).toBeVisible();
  const html = readFileSync(path, 'utf8');
  const carried = [...html.matchAll(/data:image\/jpeg;base64,([A-Za-z0-9+/=]+)/g)].map(({ 1: coded }) =>
    Buffer.from(coded ?? '', 'base64'),
  );
  expect(carried.map((each) => each.equals(bytes))).toEqual([true]);
  for (const told of [MAKER, PLACE]) expect(html.includes(told), told).toBe(false);
  const packed = await page.context().newPage();
  const errors: string[] = [];
  packed.on('console', (message) => errors.push(message.text()));
  packed.on('pageerror', (error) => errors.push(String(error)));
  await packed.goto(pathToFileURL(path).href);
  await expect(packed.locator('.title-block')).toBeVisible();
  await expect(packed.locator('image').first()).toHaveAttribute('href', /^data:image\/jpeg/);
  expect(errors).toEqual([]);
  await packed.close();
});

test('what is no picture for a lesson is refused in words, and the rest is taken in', async ({
  watched: { page },
}) => {
  await begin(page);
  const small = await (await drawnFlint(400, 300)).jpeg().toBuffer();
  await page.getByLabel('Choose pictures').setInputFiles([
    { name: 'empty.jpg', mimeType: 'image/jpeg', buffer: Buffer.alloc(0) },
    { name: 'list.jpg', mimeType: 'image/jpeg', buffer: Buffer.from('pit,small find,context\nP1,3,101\n') },
    { name: 'huge.png', mimeType: 'image/png', buffer: await hugePng() },
    { name: 'cut.jpg', mimeType: 'image/jpeg', buffer: small.subarray(0, small.length / 2) },
    { name: 'good.jpg', mimeType: 'image/jpeg', buffer: small },
  ]);
  const refused = page.locator('.photo-refused li');
  await expect(page.locator('.photo-form h3')).toHaveText('good.jpg', { timeout: 60_000 });
  await expect(refused).toHaveText([
    /^empty\.jpg: expected a JPEG, .* received an empty file\. To mend it, copy the picture again/,
    /^list\.jpg: .* received a file that is not a picture/,
    /^huge\.png: .* received a picture of a hundred million points or more\. To mend it, save it smaller/,
    /^cut\.jpg: .* received a picture that is cut short or damaged/,
  ]);
  await expect(refused.first()).toContainText('The file itself is left as it is, and nothing else is lost.');
  await page.getByRole('button', { name: 'Clear this list' }).click();
  await expect(refused).toHaveCount(0);

  // It is put in, another takes its place, its words are changed; taken out, it can be put back.
  const put = async (shows: string): Promise<void> => {
    const form = page.locator('.photo-form:visible');
    await form.getByLabel('Which find does it show?').selectOption('P3-127');
    await form.getByLabel('What is to be seen in it?').fill(shows);
    await form.getByLabel('Who took it, or owns it?').fill('Invented');
    await form.getByRole('button', { name: 'Put it in the visit' }).click();
  };
  await put('Grey.');
  await expect(row(page, 'P3-127')).toContainText('Shows: Grey.');
  const red = await (await drawnFlint(300, 400)).tint('#a33').jpeg().toBuffer();
  const dropped = await page.evaluateHandle(
    (bytes) => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([new Uint8Array(bytes)], 'red.jpg', { type: 'image/jpeg' }));
      return transfer;
    },
    [...red],
  );
  await page.locator('.photos').dispatchEvent('drop', { dataTransfer: dropped });
  await expect(page.locator('.photo-form h3')).toHaveText('red.jpg');
  await put('Red.');
  await expect(row(page, 'P3-127')).toContainText('Shows: Red.');
  await expect(page.locator('.photo-row')).toHaveCount(1);
  await page.getByRole('button', { name: 'Change the photograph of P3-127' }).click();
  await page.getByLabel('What is to be seen in it?').fill('Dark red.');
  await page.getByLabel('Choose another picture for it').setInputFiles({
    name: 'grey again.jpg',
    mimeType: 'image/jpeg',
    buffer: small,
  });
  await expect(page.locator('.photo-over img')).toHaveAttribute('width', '400');
  // The mouse takes one end of the length half across the picture.
  await page.getByLabel('Show a scale bar with it').check();
  await expect(page.getByText('The find’s length is 320 of')).toBeVisible();
  const ring = page.getByRole('slider', { name: 'The other end of the length' });
  await ring.scrollIntoViewIfNeeded();
  const [at, picture] = [await ring.boundingBox(), await page.locator('.photo-over').boundingBox()];
  if (at === null || picture === null) throw new Error('nothing to drag');
  const [x, y] = [at.x + at.width / 2, at.y + at.height / 2];
  await page.mouse.move(x, y);
  await page.mouse.down();
  await page.mouse.move(x - picture.width / 4, y, { steps: 3 });
  await page.mouse.move(x - picture.width / 2, y, { steps: 3 });
  await page.mouse.up();
  await expect(page.getByText(/The find’s length is (119|120|121) of/)).toBeVisible();
  await page.getByRole('button', { name: 'Keep the change' }).click();
  await expect(row(page, 'P3-127')).toContainText('Shows: Dark red.');
  await expect(row(page, 'P3-127')).toContainText('with a scale bar');
  await kept(page);
  expect((await keptPictures(page)).length).toBe(1);
  await page.getByRole('button', { name: 'Take out the photograph of P3-127' }).click();
  await expect(page.locator('.photo-row')).toHaveCount(0);
  await kept(page);
  expect(await keptPictures(page)).toEqual([]);
  await page.getByRole('button', { name: 'Put it back' }).click();
  await expect(row(page, 'P3-127').locator('img')).toHaveAttribute('width', '400');
  // Its own files go to disk with it.
  const names: string[] = [];
  page.on('download', (download) => names.push(download.suggestedFilename()));
  await page.getByRole('button', { name: 'Save the finds as files' }).click();
  await expect
    .poll(() => names.toSorted())
    .toEqual(['wendle-marsh-P3-127.jpg', 'wendle-marsh.finds.csv', 'wendle-marsh.yaml']);

  // A browser may throw bytes away: that is said, and the picture is chosen again.
  await kept(page);
  await page.evaluate(
    () =>
      new Promise<void>((done) => {
        const asked = indexedDB.open('pitlore-bench-photos');
        asked.addEventListener('success', () => {
          const store = asked.result.transaction('photos', 'readwrite').objectStore('photos');
          store.clear().addEventListener('success', () => {
            asked.result.close();
            done();
          });
        });
      }),
  );
  await page.reload();
  await page.getByText('Photographs', { exact: true }).click();
  await expect(row(page, 'P3-127')).toContainText('no longer on this device');
  await expect(page.locator('.photo-problems')).toContainText('no file "wendle-marsh-P3-127.jpg"', {
    timeout: 30_000,
  });
  await page
    .getByLabel('Choose it again')
    .setInputFiles({ name: 'grey.jpg', mimeType: 'image/jpeg', buffer: small });
  await page.getByRole('button', { name: 'Keep the change' }).click();
  await expect(row(page, 'P3-127').locator('img')).toHaveAttribute('width', '400');
  await expect(page.locator('.photo-problems')).toHaveCount(0);
});
