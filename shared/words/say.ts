import type { Template } from './entry.ts';

const rules = new Map<string, Intl.PluralRules>();

/** Making a language's plural rules costs more than using them a thousand times. */
function pluralOf(language: string, count: number): Intl.LDMLPluralRule {
  const kept = rules.get(language) ?? new Intl.PluralRules(language);
  rules.set(language, kept);
  return kept.select(count);
}

/**
 * Fills the places of a sentence; the value named `count` chooses the plural form.
 *
 * @throws RangeError when a place has no value: a sentence with a hole never reaches a reader.
 * @example say({ one: '{count} find', other: '{count} finds' }, { count: 3 }) // '3 finds'
 */
export function say(
  template: Template,
  values: Readonly<Record<string, string | number>> = {},
  language = 'en',
): string {
  const count = values['count'];
  const form =
    typeof template === 'string'
      ? template
      : (template[pluralOf(language, typeof count === 'number' ? count : 0)] ?? template.other);
  return form.replaceAll(/\{(\w+)\}/g, (_, place: string) => {
    const value = values[place];
    if (value === undefined) throw new RangeError(`no value for {${place}} in "${form}"`);
    return String(value);
  });
}
