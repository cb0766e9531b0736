import type { Exposure } from '../../shared/safety/index.ts';
import { catalogues } from '../../shared/words/index.ts';

const words = catalogues.en.safetyPapers;

const names: Readonly<Record<Exposure, string>> = {
  look: words.look,
  'touch-held': words.touchHeld,
  handle: words.handle,
  use: words.use,
};

/** How near a child comes to a piece, in words. @example exposureWords('look') // 'Look' */
export const exposureWords = (exposure: Exposure): string => names[exposure];
