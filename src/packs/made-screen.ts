import type { Plan } from '../../shared/compile/index.ts';
import type { Library } from '../../shared/library/index.ts';
import type { Symbol } from '../components/symbols.ts';
import type { Drawings } from './drawings.ts';
import type { ScreenView } from '../player/lesson-view.ts';

/** An activity's screen, what it asks, and the drawings it points to. */
export interface MadeScreen {
  readonly view: ScreenView;
  readonly question: string;
  readonly drawings: readonly Symbol[];
}

/** Where a screen stands. */
export interface ScreenPlace {
  /** What the device keeps a state under. */
  readonly lesson: string;
  readonly plan: Plan;
  readonly library: Library;
  /** The drawings of the pack so far, for what stands around a screen. */
  readonly around: Drawings;
}
