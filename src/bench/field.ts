/** What a value of a lesson file may be, as a form shows it; read off the schemas when the site is built. */
export type Shape =
  | { readonly shape: 'text'; readonly most: number | null }
  | {
      readonly shape: 'number';
      readonly least: number | null;
      readonly most: number | null;
      readonly isWhole: boolean;
    }
  | { readonly shape: 'yes' }
  | { readonly shape: 'fixed'; readonly value: string | number | boolean }
  | { readonly shape: 'choice'; readonly options: readonly string[] }
  | { readonly shape: 'list'; readonly item: Shape; readonly most: number | null }
  | { readonly shape: 'group'; readonly fields: readonly Field[] }
  /** Keys of one's own: written in the file, not in a form. */
  | { readonly shape: 'open' }
  | { readonly shape: 'either'; readonly of: readonly Shape[] };

/** A key a lead may fill in. */
export interface Field {
  readonly key: string;
  readonly means: string;
  readonly isNeeded: boolean;
  readonly shape: Shape;
}

/** The fields of the head, and of each kind by its name. */
export interface LessonFields {
  readonly head: readonly Field[];
  readonly kinds: Readonly<Record<string, readonly Field[]>>;
}

/** True where a value is one that the shape allows, as far as a form must know to show it. */
export function fits(shape: Shape, value: unknown): boolean {
  switch (shape.shape) {
    case 'text':
      return typeof value === 'string';
    case 'number':
      return typeof value === 'number';
    case 'yes':
      return typeof value === 'boolean';
    case 'fixed':
      return value === shape.value;
    case 'choice':
      return typeof value === 'string' && shape.options.includes(value);
    case 'list':
      return Array.isArray(value);
    case 'group':
    case 'open':
      return typeof value === 'object' && value !== null && !Array.isArray(value);
    case 'either':
      return shape.of.some((each) => fits(each, value));
    default:
      return shape satisfies never;
  }
}

/** What stands in a new value until something is written. */
export function blank(shape: Shape): unknown {
  switch (shape.shape) {
    case 'text':
      return '';
    case 'number':
      return shape.least ?? 1;
    case 'yes':
      return true;
    case 'fixed':
      return shape.value;
    case 'choice':
      return shape.options[0] ?? '';
    case 'list':
      return [];
    case 'open':
      return {};
    case 'group':
      return Object.fromEntries(
        shape.fields.filter(({ isNeeded }) => isNeeded).map((field) => [field.key, blank(field.shape)]),
      );
    case 'either': {
      const [first] = shape.of;
      return first === undefined ? '' : blank(first);
    }
    default:
      return shape satisfies never;
  }
}
