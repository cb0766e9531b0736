import type * as z from 'zod';
import { lineMap } from '../lesson/point.ts';
import { placeFaults, problemAt, type SourceText } from '../lesson/place-faults.ts';
import type { Fault, Problem } from '../lesson/problem.ts';
import { readYaml } from '../lesson/read-yaml.ts';
import { shape } from '../lesson/shape-faults.ts';

/** A file of the library as read: its value, or null; and what is wrong in it. */
export interface ReadFile<Value> {
  readonly value: Value | null;
  readonly problems: readonly Problem[];
  /** Turns faults found later (an unknown id, say) into problems at their place in this file. */
  readonly place: (faults: readonly Fault[]) => readonly Problem[];
}

/**
 * Reads a YAML file of the library against its schema.
 *
 * @example readYamlFile('a.yaml', 'name: Wendle Marsh', z.strictObject({ name: z.string() })).value // { name: 'Wendle Marsh' }
 */
export function readYamlFile<Value>(file: string, given: string, schema: z.ZodType<Value>): ReadFile<Value> {
  const shift = given.startsWith('\uFEFF') ? 1 : 0;
  const text = given.slice(shift);
  const source: SourceText = { file, lines: lineMap(text), shift };
  const read = readYaml(text);
  const place = (faults: readonly Fault[]): readonly Problem[] => placeFaults(source, faults, read.locate);
  const unread = read.faults.map(({ span, ...fault }) => problemAt(source, span, fault));
  if (unread.length > 0) return { value: null, problems: unread, place };
  const shaped = shape(schema, read.data ?? {});
  return { value: shaped.value, problems: place(shaped.faults), place };
}
