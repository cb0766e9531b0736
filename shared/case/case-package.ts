/**
 * The parts of a CASE package that we write. Field names and which are needed: 1EdTech, Competencies and Academic
 * Standards Exchange (CASE) Service, version 1.1, information model, 24 January 2025 (RF in a public transcription).
 */
interface Entity {
  /** A UUID. */
  readonly identifier: string;
  /** Stable; it need not lead anywhere. */
  readonly uri: string;
  /** ISO 8601 date and time. */
  readonly lastChangeDateTime: string;
  /** What the standard has no field for: ours stands under `pitlore`. */
  readonly extensions?: { readonly pitlore: object };
}

export interface CfDocument extends Entity {
  readonly creator: string;
  readonly title: string;
  readonly caseVersion: '1.1';
  readonly publisher?: string;
  readonly description?: string;
  readonly language: string;
  readonly version?: string;
  readonly notes: string;
}

export interface CfItem extends Entity {
  readonly fullStatement: string;
  readonly CFItemType: string;
  readonly humanCodingScheme?: string;
  readonly subject?: readonly string[];
  readonly language: string;
  readonly educationLevel: readonly string[];
}

interface Link {
  readonly title: string;
  readonly identifier: string;
  readonly uri: string;
}

/** The tree is not nested: each item is tied to what it belongs to, the child as origin. */
export interface CfAssociation extends Entity {
  readonly associationType: 'isChildOf';
  readonly sequenceNumber: number;
  readonly originNodeURI: Link;
  readonly destinationNodeURI: Link;
}

export interface CasePackage {
  readonly CFDocument: CfDocument;
  readonly CFItems: readonly CfItem[];
  readonly CFAssociations: readonly CfAssociation[];
}
