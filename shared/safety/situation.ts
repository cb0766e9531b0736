import type { EdgeClass, Exposure, Flag, PartBeyond, Setting, StationKind } from './vocabulary.ts';

/** A piece that a child meets: how sharp it is, and how near the child comes. */
export interface PieceMet {
  readonly edge: EdgeClass;
  readonly exposure: Exposure;
}

/** A station as it runs, with the children at it together. Distances in metres. */
export interface StationUse {
  readonly kind: StationKind;
  readonly childrenAtOnce: number;
  /** The sharpest class of the pieces there; taken from `finds` where it is left out. */
  readonly edgeClass?: EdgeClass;
  readonly exposure?: Exposure;
  /** Types of the objects there. */
  readonly finds?: readonly string[];
  /** Pieces of which each has its own class and exposure. */
  readonly pieces?: readonly PieceMet[];
  /** Where the nearest row stands; at the rope where it is left out. */
  readonly spectatorsAtMetres?: number;
  readonly plantWorkingOnRoute?: boolean;
  readonly metresToUnbarrieredEdge?: number;
  /** The work is done without water. */
  readonly dry?: boolean;
  readonly poweredTool?: boolean;
  /** Hide, horn, wool or bone that is raw, untreated or of unknown origin. */
  readonly rawMaterials?: boolean;
  readonly pupilsFlake?: boolean;
  readonly pupilsSwing?: boolean;
  readonly pupilsGrind?: boolean;
  readonly pupilsHeat?: boolean;
  readonly pupilsThrow?: boolean;
}

/** Everything the staffing and the refusals look at. Who is available is null where nobody has said yet. */
export interface Situation {
  readonly children: number;
  /** Whole years of the youngest child. */
  readonly youngest: number;
  readonly frameworks: readonly string[];
  readonly localChildrenPerAdult: number | null;
  readonly oneToOneAdults: number;
  readonly setting: Setting;
  readonly flags: readonly Flag[];
  /** The activity kinds of the lesson, for the hazards they bring. */
  readonly kinds: readonly string[];
  /** Stations running together. */
  readonly stations: readonly StationUse[];
  readonly openDay: boolean;
  /** Visitors expected over an open day. */
  readonly attendance: number;
  readonly parts: readonly PartBeyond[];
  readonly supervisorsAvailable: number | null;
  readonly practitionersAvailable: number | null;
  readonly firstAiders: number | null;
  readonly eyeSets: number | null;
  readonly edgedLetter: boolean;
  readonly handwashing: boolean;
  readonly kitTicked: boolean;
  /** A form asks for a pupil's name, picture, birthday, medical note or contact. */
  readonly asksForPersonalData: boolean;
}

/** A situation with nothing said but who comes and where: no station, nobody named yet. */
export const plainSituation = (
  children: number,
  youngest: number,
  frameworks: readonly string[],
  setting: Setting,
): Situation => ({
  children,
  youngest,
  frameworks,
  localChildrenPerAdult: null,
  oneToOneAdults: 0,
  setting,
  flags: [],
  kinds: [],
  stations: [],
  openDay: false,
  attendance: 0,
  parts: [],
  supervisorsAvailable: null,
  practitionersAvailable: null,
  firstAiders: null,
  eyeSets: null,
  edgedLetter: true,
  handwashing: true,
  kitTicked: true,
  asksForPersonalData: false,
});
