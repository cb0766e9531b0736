import * as z from 'zod';

/** A key a lead may write, with what it says, read off the schema itself. */
export interface KeyLine {
  readonly key: string;
  readonly means: string;
  readonly isNeeded: boolean;
}

/** The keys of a block or a head, for the help page. */
export function schemaKeys(schema: z.ZodType): readonly KeyLine[] {
  const { properties = {}, required = [] } = z.toJSONSchema(schema, { io: 'input' });
  return Object.entries(properties).map(([key, property]) => ({
    key,
    means: typeof property === 'object' ? (property.description ?? '') : '',
    isNeeded: required.includes(key),
  }));
}
