import * as z from 'zod';
import {
  ATTRIBUTES,
  type AttributeWords,
  type Material,
  type ObjectType,
  type Term,
  type Vocabulary,
} from './library.ts';
import { readYamlFile, type ReadFile } from './read-yaml-file.ts';
import { STATUSES } from './status.ts';

const SIGNS_SOURCE = 'common practice, no source';

const term = z.strictObject({ id: z.string(), label: z.string(), hint: z.string(), sign: z.string() });
const attributeWord = z.enum(ATTRIBUTES);

const vocabularyFile = z.strictObject({
  attributes: z.array(
    z.strictObject({ id: attributeWord, label: z.string(), question: z.string(), values: z.array(term) }),
  ),
  'object-types': z.array(
    term.extend({
      plain: z.string(),
      'shape-factor': z
        .strictObject({ least: z.number(), greatest: z.number(), status: z.enum(STATUSES) })
        .optional(),
      signs: z.partialRecord(attributeWord, z.string()).optional(),
    }),
  ),
  rocks: z.array(z.string()).optional(),
  densities: z.array(
    z.strictObject({ material: z.string(), value: z.number().positive(), status: z.enum(STATUSES) }),
  ),
});

/**
 * Reads the words finds are sorted by. Signs are common practice of the trade unless the file says otherwise.
 */
export function readVocabulary(file: string, text: string): ReadFile<Vocabulary> {
  const read = readYamlFile(file, text, vocabularyFile);
  if (read.value === null) return { ...read, value: null };
  const known = (plain: z.output<typeof term>): Term => ({ ...plain, status: 'CP', source: SIGNS_SOURCE });
  const objectTypes = read.value['object-types'].map(
    ({ plain, signs, 'shape-factor': factor, ...words }): ObjectType => ({
      ...known(words),
      plain,
      signs: signs ?? {},
      shapeFactor: factor ?? null,
    }),
  );
  const attributes = read.value.attributes.map((words): AttributeWords => ({
    id: words.id,
    label: words.label,
    question: words.question,
    values: words.id === 'object-type' ? objectTypes : words.values.map(known),
  }));
  const { densities, rocks = [] } = read.value;
  const materials = (attributes.find(({ id }) => id === 'material')?.values ?? []).map(
    (material): Material => {
      const density = densities.find((entry) => entry.material === material.id);
      return {
        ...material,
        isRock: rocks.includes(material.id),
        densityGPerCm3: density === undefined ? null : { value: density.value, status: density.status },
      };
    },
  );
  return { ...read, value: { attributes, objectTypes, materials } };
}
