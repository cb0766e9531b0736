import { WHAT_COPY, type Copy } from './copy.ts';

/** How the copy on this device stands. */
export type CopyState =
  | { readonly state: 'keeping' }
  /** `newer` waits until every page of the site is closed; null where there is none. */
  | { readonly state: 'kept'; readonly kept: Copy; readonly newer: Copy | null }
  | { readonly state: 'none' };

const askCopy = (worker: ServiceWorker): Promise<Copy> =>
  new Promise((answer) => {
    const { port1, port2 } = new MessageChannel();
    // The worker answers with the offline.json of its own copy.
    port1.addEventListener('message', ({ data }: MessageEvent<Copy>) => answer(data), { once: true });
    port1.start();
    worker.postMessage(WHAT_COPY, [port2]);
  });

/**
 * Keeps the whole site on this device, so that the next visit needs no signal, and tells how that stands, again at each
 * change. Without it the site works as before.
 */
export function keepOffline(tell: (state: CopyState) => void): void {
  if (!import.meta.env.PROD) return;
  if (!('serviceWorker' in navigator)) {
    tell({ state: 'none' });
    return;
  }
  const base = import.meta.env.BASE_URL.replace(/\/?$/, '/');
  const show = async ({ active, waiting, installing }: ServiceWorkerRegistration): Promise<void> => {
    if (active !== null)
      tell({
        state: 'kept',
        kept: await askCopy(active),
        newer: waiting === null ? null : await askCopy(waiting),
      });
    else if (installing !== null || waiting !== null) tell({ state: 'keeping' });
    // It was begun and given up: no room, or the signal went.
    else tell({ state: 'none' });
  };
  navigator.serviceWorker
    .register(`${base}offline.js`, { scope: base })
    .then((registration) => {
      const watch = (): void => {
        registration.installing?.addEventListener('statechange', () => void show(registration));
      };
      watch();
      registration.addEventListener('updatefound', watch);
      return show(registration);
    })
    .catch(() => {
      // A server without https, or a browser that refuses: nothing is lost but the copy.
      tell({ state: 'none' });
    });
}
