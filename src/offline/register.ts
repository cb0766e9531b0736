// Keeps the whole site on this device, so that the next visit needs no signal.
if (import.meta.env.PROD && 'serviceWorker' in navigator) {
  const base = import.meta.env.BASE_URL.replace(/\/?$/, '/');
  navigator.serviceWorker.register(`${base}offline.js`, { scope: base }).catch(() => {
    // Without it the site works as long as there is a signal.
  });
}
