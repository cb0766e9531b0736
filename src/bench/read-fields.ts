import * as z from 'zod';
import { blockSchemas, kindNames } from '../../shared/activities/index.ts';
import { lessonHead } from '../../shared/lesson/index.ts';
import type { Field, LessonFields, Shape } from './field.ts';

type Json = z.core.JSONSchema.BaseSchema;

const asSchema = (schema: Json | boolean | undefined): Json => (typeof schema === 'object' ? schema : {});
const numberOr = (value: unknown): number | null => (typeof value === 'number' ? value : null);

/** Numbers without an end of their own carry the greatest whole number there is. */
const ends = (value: unknown): number | null => {
  const number = numberOr(value);
  return number === null || Math.abs(number) > 1_000_000 ? null : number;
};

function shapeOf(schema: Json): Shape {
  const options = schema.anyOf ?? schema.oneOf;
  if (options !== undefined) return { shape: 'either', of: options.map((each) => shapeOf(asSchema(each))) };
  if (schema.const !== undefined) return { shape: 'fixed', value: schema.const as string | number | boolean };
  if (schema.enum !== undefined) return { shape: 'choice', options: schema.enum.map(String) };
  switch (schema.type) {
    case 'integer':
    case 'number':
      return {
        shape: 'number',
        least: ends(schema.minimum) ?? (schema.exclusiveMinimum === 0 ? 0 : null),
        most: ends(schema.maximum),
        isWhole: schema.type === 'integer',
      };
    case 'boolean':
      return { shape: 'yes' };
    case 'array': {
      const { items } = schema;
      return {
        shape: 'list',
        item: shapeOf(asSchema(Array.isArray(items) ? items[0] : items)),
        most: numberOr(schema.maxItems),
      };
    }
    case 'object': {
      const fields = fieldsOf(schema);
      return fields.length === 0 ? { shape: 'open' } : { shape: 'group', fields };
    }
    case 'string':
    case 'null':
    case undefined:
      return { shape: 'text', most: numberOr(schema.maxLength) };
    default:
      return { shape: 'open' };
  }
}

function fieldsOf(schema: Json): readonly Field[] {
  const required = schema.required ?? [];
  const named = schema.properties ?? {};
  // A record says which keys it may have, each with the same shape.
  const { propertyNames, additionalProperties } = schema;
  const keys = asSchema(propertyNames).enum ?? [];
  const each = asSchema(additionalProperties);
  const recorded = Object.fromEntries(keys.map((key) => [String(key), each]));
  return Object.entries({ ...recorded, ...named }).map(([key, property]) => ({
    key,
    means: asSchema(property).description ?? '',
    isNeeded: required.includes(key),
    shape: shapeOf(asSchema(property)),
  }));
}

const read = (schema: z.ZodType): readonly Field[] => fieldsOf(z.toJSONSchema(schema, { io: 'input' }));

/** The fields of the head and of each kind, from the schemas a lesson is held against. */
export const readFields = (): LessonFields => ({
  head: read(lessonHead),
  kinds: Object.fromEntries(kindNames.map((kind) => [kind, read(blockSchemas[kind])])),
});
