/// <reference lib="WebWorker" />
import { WHAT_COPY } from '../copy.ts';

// Keeps the whole site on the device: all of it or nothing, so that no page is ever half there. A newer copy waits
// until every page of the site is closed: what is open goes on with the files it began with.
declare const self: ServiceWorkerGlobalScope & {
  /** Put in when the site is built: every file with the hash of what is in it. */
  readonly __WB_MANIFEST: readonly KeptFile[];
};

interface KeptFile {
  readonly url: string;
  /** Null where the name itself says what is in it. */
  readonly revision: string | null;
}

const files = self.__WB_MANIFEST;
const OURS = 'pitlore-';
const name = `${OURS}${hash(files.map(marked).join('\n'))}`;
/** No file of the site: the list of what a copy holds, for the copy after it. */
const LIST = 'offline.list';

function marked({ url, revision }: KeptFile): string {
  return `${url}@${revision ?? ''}`;
}

function hash(text: string): string {
  let value = 5381;
  for (let index = 0; index < text.length; index += 1)
    value = (Math.imul(value, 33) ^ text.charCodeAt(index)) >>> 0;
  return value.toString(36);
}

/** The caches of whole copies that are on the device, each with its list. */
async function copiesBefore(): Promise<readonly { readonly cache: Cache; readonly list: Set<string> }[]> {
  const names = (await caches.keys()).filter((key) => key.startsWith(OURS) && key !== name);
  const copies = await Promise.all(
    names.map(async (key) => {
      const cache = await caches.open(key);
      const list = await cache.match(LIST);
      // Written by this same script, or one before it.
      return list === undefined ? [] : [{ cache, list: new Set((await list.json()) as string[]) }];
    }),
  );
  return copies.flat();
}

/** Keeps every file; what a copy before this one has in the same state is not fetched again. */
async function keep(): Promise<void> {
  const cache = await caches.open(name);
  const before = await copiesBefore();
  const missing = await Promise.all(
    files.map(async (file): Promise<readonly Request[]> => {
      const same = before.find(({ list }) => list.has(marked(file)));
      const known = await same?.cache.match(file.url, { ignoreVary: true });
      if (known === undefined) return [new Request(file.url, { cache: 'reload' })];
      await cache.put(file.url, known);
      return [];
    }),
  );
  await cache.addAll(missing.flat());
  await cache.put(LIST, new Response(JSON.stringify(files.map(marked))));
}

self.addEventListener('install', (event) => {
  event.waitUntil(keep());
});

self.addEventListener('activate', (event) => {
  const dropOld = caches
    .keys()
    .then((keys) =>
      Promise.all(
        keys.filter((key) => key.startsWith(OURS) && key !== name).map((key) => caches.delete(key)),
      ),
    );
  event.waitUntil(dropOld.then(() => self.clients.claim()));
});

// A waiting copy is asked what it is, as well as the one in use: the page cannot read it from an address.
self.addEventListener('message', (event) => {
  const [port] = event.ports;
  if (event.data !== WHAT_COPY || port === undefined) return;
  event.waitUntil(
    caches
      .open(name)
      .then((cache) => cache.match('offline.json', { ignoreVary: true }))
      .then((kept) => kept?.json())
      .then((copy: unknown) => port.postMessage(copy)),
  );
});

/** A folder is asked for by its name and kept by its page. */
function pageOf(url: string): string {
  const address = new URL(url);
  address.search = '';
  address.hash = '';
  return address.pathname.endsWith('/') ? `${address.href}index.html` : address.href;
}

self.addEventListener('fetch', (event) => {
  const { request } = event;
  if (request.method !== 'GET' || new URL(request.url).origin !== self.location.origin) return;
  // Servers send Vary: Origin; module scripts carry an Origin and would never match without ignoreVary.
  event.respondWith(
    caches
      .open(name)
      .then((cache) => cache.match(pageOf(request.url), { ignoreVary: true }))
      .then((kept) => kept ?? fetch(request)),
  );
});
