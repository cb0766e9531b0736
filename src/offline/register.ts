/**
 * Keeps the whole site on this device, so that the next visit needs no signal; tells when the copy is complete. Without
 * it the site works as before.
 */
export function keepOffline(whenKept: () => void): void {
  if (!import.meta.env.PROD || !('serviceWorker' in navigator)) return;
  const base = import.meta.env.BASE_URL.replace(/\/?$/, '/');
  navigator.serviceWorker
    .register(`${base}offline.js`, { scope: base })
    .then(() => navigator.serviceWorker.ready)
    .then(whenKept)
    .catch(() => {
      // A server without https, or a browser that refuses: nothing is lost but the copy.
    });
}
