import type { Comers } from '../../shared/compile/index.ts';
import { nearest } from '../../shared/lesson/index.ts';
import { SETTINGS, type SafetyRules } from '../../shared/safety/index.ts';
import { safetyCommandWords } from '../../shared/words/en/safety.ts';

/** The options that say who comes to a lesson, and where. */
export const comersOptions = {
  pupils: { type: 'string' },
  ages: { type: 'string' },
  framework: { type: 'string', multiple: true },
  local: { type: 'string' },
  setting: { type: 'string' },
} as const;

interface Written {
  readonly pupils?: string | undefined;
  readonly ages?: string | undefined;
  readonly framework?: readonly string[] | undefined;
  readonly local?: string | undefined;
  readonly setting?: string | undefined;
}

const MOST_PUPILS = 100_000;
const OLDEST = 18;

const whole = (written: string, most: number): number | null =>
  /^\d{1,6}$/.test(written) && Number(written) <= most ? Number(written) : null;

/** The youngest of `7-9` or `7`; null where it is neither. */
function youngestOf(written: string): number | null {
  const [, from, to = from] = /^(\d{1,2})(?:-(\d{1,2}))?$/.exec(written) ?? [];
  if (from === undefined || to === undefined) return null;
  return Number(from) <= Number(to) && Number(to) <= OLDEST ? Number(from) : null;
}

/**
 * Who comes, from the options; a sentence where one of them cannot be meant. No pupils said are none, which only the
 * hazards can do without; a room is a classroom where nothing is said.
 */
export function comersFrom(written: Written, rules: SafetyRules): Comers | string {
  const { pupils = '0', ages, framework = [], local, setting = 'classroom' } = written;
  const children = whole(pupils, MOST_PUPILS);
  if (children === null) return safetyCommandWords.pupilsUnfit(pupils);
  const youngest = ages === undefined ? null : youngestOf(ages);
  if (ages !== undefined && youngest === null) return safetyCommandWords.agesUnfit(ages);
  const localChildrenPerAdult = local === undefined ? null : whole(local, 100);
  if (local !== undefined && (localChildrenPerAdult ?? 0) === 0) return safetyCommandWords.localUnfit(local);
  const known = [...new Set(rules.ratios.map((row) => row.framework))];
  const strange = framework.find((id) => !known.includes(id));
  if (strange !== undefined)
    return safetyCommandWords.wordUnknown('framework', strange, nearest(strange, known), known);
  if (framework.includes('local') && local === undefined) return safetyCommandWords.localMissing();
  const place = SETTINGS.find((id) => id === setting);
  if (place === undefined)
    return safetyCommandWords.wordUnknown('setting', setting, nearest(setting, SETTINGS), SETTINGS);
  return { children, youngest, frameworks: framework, localChildrenPerAdult, setting: place };
}
