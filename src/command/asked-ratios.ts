import type { DayAsked } from '../../shared/compile/index.ts';
import { SETTINGS, type SafetyRules, type Setting } from '../../shared/safety/index.ts';
import { safetyWords } from '../../shared/words/en/safety.ts';

/** Options that say by which figures adults are counted, and where. */
export interface RatioOptions {
  readonly framework?: readonly string[] | undefined;
  readonly local?: string | undefined;
  readonly setting?: string | undefined;
}

/** The figures chosen and the setting, or the sentence that says which option does not fit. */
export function askedRatios(values: RatioOptions, otherwise: Setting, rules: SafetyRules): DayAsked | string {
  const known = [...new Set(rules.ratios.map(({ framework }) => framework))];
  const frameworks = (values.framework ?? ['england-visits']).flatMap((list) => list.split(','));
  const stranger = frameworks.find((framework) => !known.includes(framework));
  if (stranger !== undefined) return safetyWords.frameworkUnknown(stranger, known);
  const hasLocal = /^[1-9]\d{0,2}$/.test(values.local ?? '');
  if (frameworks.includes('local') && !hasLocal) return safetyWords.localUnfit();
  const written = values.setting ?? otherwise;
  const setting = SETTINGS.find((each) => each === written);
  if (setting === undefined) return safetyWords.settingUnknown(written, SETTINGS);
  return { frameworks, setting, localChildrenPerAdult: hasLocal ? Number(values.local) : null };
}
