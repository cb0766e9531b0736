import type * as z from 'zod';
import { nameValue, shapeWords } from '../words/en/problems.ts';
import { nearest } from './nearest.ts';
import type { Fault, Path, ProblemCode } from './problem.ts';

const TYPE_NAMES: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  int: 'a whole number',
  boolean: 'true or false',
  array: 'a list',
  object: 'keys and values',
  record: 'keys and values',
};

const typeName = (type: string): string => TYPE_NAMES[type] ?? type;

/** Steps through wrappers (optional, default, transform) to the schema within. */
function unwrap(schema: z.core.$ZodType): z.core.$ZodType {
  const { def } = schema._zod;
  if ('innerType' in def) return unwrap(def.innerType as z.core.$ZodType); // wrappers keep a schema there
  if (def.type === 'pipe') return unwrap((schema as z.core.$ZodPipe)._zod.def.in);
  return schema;
}

/** The keys that may stand in the object at a path; [] where there is no object. */
function keysAt(schema: z.core.$ZodType, path: Path): readonly string[] {
  const here = unwrap(schema);
  const { def } = here._zod;
  if (def.type === 'union') {
    return (here as z.core.$ZodUnion)._zod.def.options.flatMap((option) => keysAt(option, path));
  }
  const [step, ...rest] = path;
  if (def.type === 'object') {
    const shape = (here as z.core.$ZodObject)._zod.def.shape;
    if (step === undefined) return Object.keys(shape);
    const next = shape[String(step)];
    return next === undefined ? [] : keysAt(next, rest);
  }
  if (def.type === 'array' && step !== undefined)
    return keysAt((here as z.core.$ZodArray)._zod.def.element, rest);
  if (def.type === 'record' && step !== undefined)
    return keysAt((here as z.core.$ZodRecord)._zod.def.valueType, rest);
  return [];
}

function valueAt(data: unknown, path: Path): unknown {
  return path.reduce<unknown>(
    (value, step) =>
      typeof value === 'object' && value !== null
        ? (value as Record<string | number, unknown>)[step]
        : undefined,
    data,
  );
}

const error = (
  code: ProblemCode,
  path: Path,
  words: Pick<Fault, 'expected' | 'received' | 'mend'>,
  more: Partial<Pick<Fault, 'atKey' | 'replacement'>> = {},
): Fault => ({ code, grade: 'error', path, ...words, ...more });

function wordFault(path: Path, known: readonly string[], value: unknown): Fault {
  const written = typeof value === 'string' || typeof value === 'number' ? String(value) : null;
  if (written === null)
    return error('value-unfit', path, shapeWords.wrongType(`one of: ${known.join(', ')}`, value));
  const near = nearest(written, known);
  return error(
    'word-unknown',
    path,
    shapeWords.unknownWord(written, near, known),
    near === null ? {} : { replacement: near },
  );
}

/** The branch of a union that the value was meant for: the one whose faults lie deepest inside it. */
function branch(
  errors: readonly (readonly z.core.$ZodIssue[])[],
  value: unknown,
): readonly z.core.$ZodIssue[] | null {
  // A list is never meant as the one word that would do in its place.
  const isWord = typeof value !== 'object';
  const misses = ({ path, code }: z.core.$ZodIssue): boolean =>
    path.length === 0 && (code === 'invalid_type' || (code === 'invalid_value' && !isWord));
  const meant = errors.filter((issues) => !issues.some(misses));
  return meant.length === 0 ? null : (meant.toSorted((a, b) => a.length - b.length)[0] ?? null);
}

/** A key that is missing because it is misspelt is told once, at the misspelling. */
const withoutConsequences = (faults: readonly Fault[]): readonly Fault[] =>
  faults.filter(
    ({ code, path }) =>
      code !== 'key-missing' ||
      !faults.some(
        (other) =>
          other.code === 'key-unknown' &&
          other.replacement === path.at(-1) &&
          JSON.stringify(other.path.slice(0, -1)) === JSON.stringify(path.slice(0, -1)),
      ),
  );

function issueFaults(
  schema: z.core.$ZodType,
  data: unknown,
  issue: z.core.$ZodIssue,
  base: Path,
): readonly Fault[] {
  // Paths in plain data hold only texts and numbers.
  const path = [...base, ...(issue.path as (string | number)[])];
  const value = valueAt(data, path);
  switch (issue.code) {
    case 'unrecognized_keys': {
      const known = keysAt(schema, path);
      const present = Object.keys(value ?? {});
      return issue.keys.map((key) => {
        const near = nearest(
          key,
          known.filter((word) => !present.includes(word)),
        );
        const replacement = near === null ? {} : { replacement: near };
        return error('key-unknown', [...path, key], shapeWords.unknownKey(key, near, known), {
          atKey: true,
          ...replacement,
        });
      });
    }
    case 'invalid_type': {
      const last = path.at(-1);
      if (value === undefined && typeof last === 'string') {
        return [error('key-missing', path, shapeWords.missing(last, typeName(issue.expected)))];
      }
      return [error('value-unfit', path, shapeWords.wrongType(typeName(issue.expected), value))];
    }
    case 'invalid_value':
      if (value === undefined && typeof path.at(-1) === 'string') {
        const words = shapeWords.missing(
          String(path.at(-1)),
          `one of ${issue.values.map(String).join(', ')}`,
        );
        return [error('key-missing', path, words)];
      }
      return [wordFault(path, issue.values.map(String), value)];
    case 'too_small': {
      const what = issue.origin === 'string' ? `${issue.minimum} characters` : `${issue.minimum}`;
      return [error('value-unfit', path, shapeWords.tooSmall(what, value))];
    }
    case 'too_big': {
      const what = issue.origin === 'string' ? `${issue.maximum} characters` : `${issue.maximum}`;
      return [error('value-unfit', path, shapeWords.tooBig(what, value))];
    }
    case 'invalid_union': {
      if (value === undefined && typeof path.at(-1) === 'string') {
        return [
          error(
            'key-missing',
            path,
            shapeWords.missing(String(path.at(-1)), 'see the help page for its forms'),
          ),
        ];
      }
      const meant = branch(issue.errors, value);
      if (meant !== null) return meant.flatMap((inner) => issueFaults(schema, data, inner, path));
      const forms = issue.errors.flatMap((issues) =>
        issues.flatMap((inner) =>
          inner.code === 'invalid_type'
            ? [typeName(inner.expected)]
            : inner.code === 'invalid_value'
              ? inner.values.map((word) => `"${String(word)}"`)
              : [],
        ),
      );
      return [
        error(
          'value-unfit',
          path,
          shapeWords.wrongType([...new Set(forms)].join(', or ') || 'another value', value),
        ),
      ];
    }
    case 'invalid_format':
    case 'not_multiple_of':
    case 'invalid_key':
    case 'invalid_element':
    case 'custom':
      return [
        error('value-unfit', path, {
          expected: issue.message,
          received: nameValue(value),
          mend: `write ${issue.message}`,
        }),
      ];
    default:
      return issue satisfies never;
  }
}

/** Data that fits its schema, or the faults that say why it does not. */
export type Shaped<Data> =
  | { readonly value: Data; readonly faults: readonly [] }
  | { readonly value: null; readonly faults: readonly Fault[] };

/**
 * Holds outside data against a schema; one fault for each thing wrong, with the nearest known word.
 *
 * @example shape(z.strictObject({ minutes: z.number() }), { minutes: 8 }).value // { minutes: 8 }
 */
export function shape<Data>(schema: z.ZodType<Data>, data: unknown): Shaped<Data> {
  const result = schema.safeParse(data);
  return result.success
    ? { value: result.data, faults: [] }
    : {
        value: null,
        faults: withoutConsequences(
          result.error.issues.flatMap((issue) => issueFaults(schema, data, issue, [])),
        ),
      };
}
