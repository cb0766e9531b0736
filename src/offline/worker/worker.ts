/// <reference lib="WebWorker" />
// Keeps the whole site on the device: all of it or nothing, so that no page is ever half there.
declare const self: ServiceWorkerGlobalScope & {
  /** Put in when the site is built: every file with the hash of what is in it. */
  readonly __WB_MANIFEST: readonly { readonly url: string; readonly revision: string | null }[];
};

const files = self.__WB_MANIFEST;
const name = `pitlore-${hash(files.map(({ url, revision }) => `${url}@${revision ?? ''}`).join('\n'))}`;

function hash(text: string): string {
  let value = 5381;
  for (let index = 0; index < text.length; index += 1)
    value = (Math.imul(value, 33) ^ text.charCodeAt(index)) >>> 0;
  return value.toString(36);
}

self.addEventListener('install', (event) => {
  const requests = files.map(({ url }) => new Request(url, { cache: 'reload' }));
  event.waitUntil(caches.open(name).then((cache) => cache.addAll(requests)));
});

self.addEventListener('activate', (event) => {
  const dropOld = caches
    .keys()
    .then((keys) =>
      Promise.all(
        keys.filter((key) => key.startsWith('pitlore-') && key !== name).map((key) => caches.delete(key)),
      ),
    );
  event.waitUntil(dropOld.then(() => self.clients.claim()));
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
