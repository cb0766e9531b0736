import { readYaml, type YamlData } from './read-yaml.ts';

/** Reads a run of YAML, as {@link readYaml} does. */
export type ReadYaml = (text: string, most?: number) => YamlData;

/** More runs than a long lesson has; each takes a few kilobytes. */
const MOST_KEPT = 200;

/**
 * A reader that remembers the runs it read last. Between two letters typed all blocks of a lesson but one say what they
 * said before, and reading YAML is half of a check.
 *
 * @example
 * const read = rememberYaml();
 * read('minutes: 8') === read('minutes: 8'); // true
 */
export function rememberYaml(): ReadYaml {
  const kept = new Map<string, { readonly most: number; readonly read: YamlData }>();
  return (text, most = Number.POSITIVE_INFINITY) => {
    const before = kept.get(text);
    const entry = before?.most === most ? before : { most, read: readYaml(text, most) };
    // The one read longest ago stands first.
    kept.delete(text);
    kept.set(text, entry);
    const [oldest] = kept.keys();
    if (kept.size > MOST_KEPT && oldest !== undefined) kept.delete(oldest);
    return entry.read;
  };
}
