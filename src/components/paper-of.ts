import type { Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';

/** What the body of any paper is made from. */
export interface PaperOf {
  /** The lesson's name, as its pages have it. */
  readonly id: string;
  readonly plan: Plan;
  readonly library: Library;
  /** No site around it: a file of its own has nothing to link to. */
  readonly isLoose?: boolean;
  /** One part among those of a pack. */
  readonly isInPack?: boolean;
}
