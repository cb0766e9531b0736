import { stringify } from 'yaml';

/** A text as it stands between brackets, in quotes where it needs them. */
function flowText(text: string): string {
  if (/[\n\r\u0085\u2028\u2029]/.test(text)) return JSON.stringify(text);
  return stringify([text], { collectionStyle: 'flow', lineWidth: 0, flowCollectionPadding: false })
    .replace(/\n$/, '')
    .slice(1, -1);
}

/**
 * A value in one line of YAML, as this project writes it by hand.
 *
 * @example writeFlow({ pit: 'P3', 'leave-out': ['P3-128'] }) // '{ pit: P3, leave-out: [P3-128] }'
 */
export function writeFlow(value: unknown): string {
  if (Array.isArray(value)) return `[${value.map(writeFlow).join(', ')}]`;
  if (typeof value === 'object' && value !== null) {
    const pairs = Object.entries(value).map(([key, inner]) => `${flowText(key)}: ${writeFlow(inner)}`);
    return pairs.length === 0 ? '{}' : `{ ${pairs.join(', ')} }`;
  }
  if (typeof value === 'string') return flowText(value);
  return value === undefined ? 'null' : JSON.stringify(value);
}

/** A value after a key of its own line: a text needs fewer quotes there. @example writeValue('a, b') // 'a, b' */
export function writeValue(value: unknown): string {
  if (typeof value !== 'string' || /[\n\r\u0085\u2028\u2029]/.test(value)) return writeFlow(value);
  return stringify({ k: value }, { lineWidth: 0 }).replace(/\n$/, '').slice('k: '.length);
}
