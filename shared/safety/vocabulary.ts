/** How sharp a piece is: blunt, dulled and checked, sharp, acute. */
export const EDGE_CLASSES = ['E0', 'E1', 'E2', 'E3'] as const;
export type EdgeClass = (typeof EDGE_CLASSES)[number];

/** How near a child comes to a piece, least first. */
export const EXPOSURES = ['look', 'touch-held', 'handle', 'use'] as const;
export type Exposure = (typeof EXPOSURES)[number];

/** How near a child comes to a piece of which nothing is said: it is lifted. */
export const USUAL_EXPOSURE: Exposure = 'handle';

export const SETTINGS = [
  'classroom',
  'hall',
  'outdoors',
  'open-sided-shelter',
  'museum',
  'dig-site',
  'construction-site',
] as const;
export type Setting = (typeof SETTINGS)[number];

export const STATION_KINDS = [
  'knapping-demo',
  'wet-grinding-demo',
  'hafting-demo',
  'pitch-fire-demo',
  'sharp-handling',
  'blunt-handling',
  'animal-materials',
  'pigment',
  'mock-dig',
  'site-tour',
  'table-activity',
  'food-break',
] as const;
export type StationKind = (typeof STATION_KINDS)[number];

export const FLAGS = [
  'outdoors',
  'food',
  'photos',
  'unaccompanied-public',
  'vehicles-on-site',
  'edged-tools-carried',
  'excavation-open',
  'plant-on-site',
  'made-ground',
  'open-water',
  'power-supply',
  'under-fives-present',
  'siblings-present',
  'overnight-equipment',
  'hot-weather',
  'cold-wet',
  'long-grass',
  'loan-box',
] as const;
export type Flag = (typeof FLAGS)[number];

/** Parts of a day that are beyond what the product knows. */
export const PARTS_BEYOND = ['night', 'waterside', 'residential', 'overseas'] as const;
export type PartBeyond = (typeof PARTS_BEYOND)[number];
