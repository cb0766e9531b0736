const CAME = 'pitlore/band-chosen';

/** What this tab remembers; nothing where the browser keeps nothing. */
function remembered(): boolean {
  try {
    const came = sessionStorage.getItem(CAME) !== null;
    sessionStorage.removeItem(CAME);
    return came;
  } catch {
    return false;
  }
}

/** Resolves once every island of the page answers: what they pick up moves what lies below them. */
function whenSettled(then: () => void): void {
  if (document.querySelector('astro-island[ssr]') === null) requestAnimationFrame(() => then());
  else setTimeout(() => whenSettled(then), 50);
}

/**
 * After another age was chosen: says what is different here, and puts the place and the focus where they were. The
 * links themselves lead to the same activity, so that without this, too, the place is kept.
 */
export function keepPlace(): void {
  for (const link of document.querySelectorAll<HTMLAnchorElement>('[data-band-link]')) {
    link.addEventListener('click', () => {
      try {
        sessionStorage.setItem(CAME, '1');
      } catch {
        // Nothing is kept: then nothing is said.
      }
    });
  }
  if (!remembered()) return;
  whenSettled(() => {
    const place = document.getElementById(decodeURIComponent(location.hash.slice(1)));
    place?.scrollIntoView();
    (place ?? document).querySelector<HTMLElement>('.bands [aria-current]')?.focus({ preventScroll: true });
    const line = document.querySelector<HTMLElement>('[data-band-said]');
    if (line !== null) line.textContent = line.dataset['bandSaid'] ?? '';
  });
}
