import type { ComponentChildren } from 'preact';
import type { Change } from '../../shared/bench/index.ts';
import type { Path } from '../../shared/lesson/index.ts';
import type { Shape } from './field.ts';

/** Where in a form a value stands, and what may be done there. */
export interface FormPlace {
  readonly path: Path;
  readonly id: string;
  /** The name of the nearest key, for readers of the screen. */
  readonly name: string;
  readonly change: (change: Change) => void;
  /** Puts the caret where this stands in the file. */
  readonly goToFile: (path: Path) => void;
  /** Shows a value by its shape, wherever in a form it stands. */
  readonly show: (shape: Shape, value: unknown, place: FormPlace, label?: string) => ComponentChildren;
  /** The list of offered words that a key has, by the id of its `datalist`; null where any words will do. */
  readonly offered: (key: string) => string | null;
}
