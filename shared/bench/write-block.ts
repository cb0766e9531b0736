import { writeFlow, writeValue } from './write-flow.ts';

const isBranch = (value: unknown): boolean => typeof value === 'object' && value !== null;

/** A value after its key: a list of branches with a line for each item, all else on one line. */
function writeKey(key: string, value: unknown): string {
  if (Array.isArray(value) && value.some(isBranch))
    return `${writeFlow(key)}:\n${value.map((item) => `  - ${writeFlow(item)}`).join('\n')}`;
  return `${writeFlow(key)}: ${writeValue(value)}`;
}

/**
 * A block as it stands in a lesson file.
 *
 * @example writeBlock('sort', { title: 'Who?', minutes: 8 }) // '```sort\ntitle: Who?\nminutes: 8\n```'
 */
export const writeBlock = (kind: string, values: Readonly<Record<string, unknown>>): string =>
  `\`\`\`${kind}\n${Object.entries(values)
    .map(([key, value]) => writeKey(key, value))
    .join('\n')}\n\`\`\``;
