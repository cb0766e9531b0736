import type { Experiment, Figure, MakingFigures, Standing } from '../making/index.ts';

/** Where a figure of the making model comes from, with how much of it was read. */
export interface MakingSource {
  readonly id: string;
  readonly citation: string;
  /** "paper", "experiment log", "museum page", "practice"… */
  readonly kind: string;
  /** How much of it was read: "abstract", "whole page", "not read". */
  readonly read: string;
  /** Whether it tells of its own work or reports another's. */
  readonly reach: 'primary' | 'secondary' | 'none';
  readonly url?: string;
  readonly note?: string;
}

/** A measured axe head; mass in g, null where the record gives none. */
export interface Specimen {
  readonly id: string;
  readonly label: string;
  readonly stone: string;
  readonly lengthMm: number;
  readonly widthMm: number;
  readonly thicknessMm: number;
  readonly massG: number | null;
  readonly complete: boolean;
  readonly status: Standing;
  readonly sources: readonly string[];
  readonly note?: string;
}

/** A figure the model does not use but a lesson may tell; some have a log spread of their own. */
export interface OtherFigure extends Figure {
  readonly logSpread?: number;
}

/** Something found out, without a number. */
export interface Fact {
  readonly id: string;
  readonly statement: string;
  readonly status: Standing;
  readonly sources: readonly string[];
  readonly note?: string;
}

/** What is not known, and what to say of it. */
export interface Unknown {
  readonly id: string;
  readonly question: string;
  readonly say: string;
}

/** A comparison worth telling, with how it was worked out. */
export interface Surprise {
  readonly id: string;
  readonly say: string;
  readonly ratio?: number;
  readonly working: string;
  readonly status: Standing;
  readonly sources: readonly string[];
}

/** Everything in the file of making figures. Pages that only reckon need no more than `figures`. */
export interface MakingEvidence {
  readonly figures: MakingFigures;
  readonly experiments: readonly Experiment[];
  readonly specimens: readonly Specimen[];
  readonly otherFigures: readonly OtherFigure[];
  readonly facts: readonly Fact[];
  readonly unknowns: readonly Unknown[];
  readonly surprises: readonly Surprise[];
  readonly sources: readonly MakingSource[];
}
