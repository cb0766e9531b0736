import type { FindToDraw, PitToCut } from '../../../shared/drawing/index.ts';

type Row = readonly [
  id: number,
  objectType: string,
  lengthMm: number,
  widthMm: number,
  thicknessMm: number,
  state: string,
  material: string,
  more?: { readonly count?: number; readonly side?: 'left' | 'right'; readonly decoration?: string },
];

const find = ([id, objectType, lengthMm, widthMm, thicknessMm, state, material, more]: Row): FindToDraw => ({
  id: `WDM-${id}`,
  objectType,
  material,
  state,
  lengthMm,
  widthMm,
  thicknessMm,
  count: 1,
  ...more,
});

/** The nine pits of Wendle Marsh, an invented site: every size and mass is made up (status: invented). */
export const PITS: readonly { readonly pit: PitToCut; readonly finds: readonly FindToDraw[] }[] = [
  {
    pit: {
      id: 'P1',
      lengthMm: 1150,
      widthMm: 1080,
      depthMm: 420,
      profile: 'bowl',
      cut: 1100,
      topLevelMOd: 8.62,
      fills: [
        { context: 1101, description: 'mid brown sandy silt', thicknessMm: 180 },
        { context: 1102, description: 'dark grey silt with charcoal', thicknessMm: 160 },
        { context: 1103, description: 'gravelly silt', thicknessMm: 80 },
      ],
    },
    finds: (
      [
        [101, 'flake', 52, 38, 9, 'whole', 'flint'],
        [102, 'flake', 34, 29, 6, 'broken', 'flint'],
        [103, 'blade', 68, 19, 6, 'whole', 'flint'],
        [104, 'end-scraper', 46, 37, 12, 'whole', 'flint'],
        [105, 'serrated-flake', 57, 21, 6, 'whole', 'flint'],
        [106, 'core', 64, 55, 43, 'whole', 'flint'],
        [107, 'serrated-flake', 49, 19, 5, 'broken', 'flint'],
        [108, 'hammerstone', 69, 63, 50, 'worn', 'quartzite'],
        [109, 'cattle-bone', 128, 46, 31, 'broken', 'bone'],
        [110, 'charcoal', 24, 17, 13, 'burnt', 'charcoal'],
        [111, 'hazelnut-shells', 12, 10, 2, 'burnt', 'charred-shell', { count: 14 }],
        [112, 'burnt-flint', 58, 49, 37, 'burnt', 'flint'],
        [113, 'natural-pebble', 61, 43, 30, 'whole', 'flint'],
        [114, 'brick-fragment', 38, 27, 19, 'broken', 'brick'],
      ] satisfies readonly Row[]
    ).map(find),
  },
  {
    pit: {
      id: 'P2',
      lengthMm: 980,
      widthMm: 930,
      depthMm: 310,
      profile: 'bowl',
      cut: 1200,
      topLevelMOd: 8.58,
      fills: [
        { context: 1201, description: 'mid brown sandy silt', thicknessMm: 190 },
        { context: 1202, description: 'yellow brown gravelly silt', thicknessMm: 120 },
      ],
    },
    finds: (
      [
        [115, 'axe-roughout', 168, 74, 46, 'broken', 'flint'],
        [116, 'flake', 61, 47, 13, 'whole', 'flint'],
        [117, 'flake', 48, 41, 10, 'whole', 'flint'],
        [118, 'flake', 39, 26, 6, 'broken', 'flint'],
        [119, 'hammerstone', 82, 71, 58, 'worn', 'quartzite'],
        [120, 'pig-jaw', 96, 42, 21, 'broken', 'bone', { side: 'right' }],
        [121, 'charcoal', 19, 15, 11, 'burnt', 'charcoal'],
        [122, 'natural-pebble', 49, 41, 33, 'whole', 'flint'],
      ] satisfies readonly Row[]
    ).map(find),
  },
  {
    pit: {
      id: 'P3',
      lengthMm: 1060,
      widthMm: 1010,
      depthMm: 450,
      profile: 'steep-sided',
      cut: 1300,
      topLevelMOd: 8.66,
      fills: [
        { context: 1301, description: 'mid brown sandy silt', thicknessMm: 200 },
        { context: 1302, description: 'black silt with charcoal', thicknessMm: 90 },
        { context: 1303, description: 'grey brown silt', thicknessMm: 160 },
      ],
    },
    finds: (
      [
        [123, 'pig-jaw', 118, 49, 24, 'broken', 'bone', { side: 'left' }],
        [124, 'bone-pin', 92, 7, 5, 'whole', 'bone'],
        [125, 'polishing-stone-fragment', 121, 94, 38, 'broken', 'sandstone'],
        [126, 'chalk-disc', 63, 60, 18, 'whole', 'chalk'],
        [127, 'grooved-ware-sherd', 83, 66, 12, 'broken', 'pottery', { decoration: 'cordon' }],
        [128, 'flake', 44, 33, 8, 'whole', 'flint'],
        [129, 'charcoal', 28, 20, 14, 'burnt', 'charcoal'],
        [130, 'hazelnut-shells', 11, 9, 2, 'burnt', 'charred-shell', { count: 22 }],
        [131, 'natural-pebble', 55, 38, 27, 'whole', 'flint'],
      ] satisfies readonly Row[]
    ).map(find),
  },
  {
    pit: {
      id: 'P4',
      lengthMm: 1320,
      widthMm: 1250,
      depthMm: 380,
      profile: 'bowl',
      cut: 1400,
      topLevelMOd: 8.55,
      fills: [
        { context: 1401, description: 'mid brown sandy silt', thicknessMm: 170 },
        { context: 1402, description: 'dark grey silt with charcoal', thicknessMm: 210 },
      ],
    },
    finds: (
      [
        [132, 'bone-pin', 61, 6, 5, 'broken', 'bone'],
        [133, 'pig-jaw', 104, 44, 22, 'broken', 'bone', { side: 'right' }],
        [134, 'cattle-bone', 162, 58, 40, 'broken', 'bone'],
        [135, 'cattle-bone', 94, 41, 29, 'broken', 'bone'],
        [136, 'grooved-ware-sherd', 62, 51, 10, 'broken', 'pottery', { decoration: 'plain' }],
        [137, 'grooved-ware-sherd', 52, 43, 11, 'broken', 'pottery', { decoration: 'plain' }],
        [138, 'end-scraper', 38, 34, 11, 'whole', 'flint'],
        [139, 'flake', 57, 36, 9, 'whole', 'flint'],
        [140, 'quern-fragment', 142, 118, 61, 'broken', 'sandstone'],
        [141, 'hazelnut-shells', 12, 9, 2, 'burnt', 'charred-shell', { count: 31 }],
        [142, 'charcoal', 22, 18, 12, 'burnt', 'charcoal'],
        [143, 'bottle-glass', 41, 29, 5, 'broken', 'glass'],
      ] satisfies readonly Row[]
    ).map(find),
  },
  {
    pit: {
      id: 'P5',
      lengthMm: 1010,
      widthMm: 990,
      depthMm: 470,
      profile: 'steep-sided',
      cut: 1500,
      topLevelMOd: 8.64,
      fills: [
        { context: 1501, description: 'mid brown sandy silt', thicknessMm: 210 },
        { context: 1502, description: 'grey brown silt', thicknessMm: 260 },
      ],
    },
    finds: (
      [
        [144, 'pig-jaw', 121, 51, 25, 'broken', 'bone', { side: 'left' }],
        [145, 'bone-pin', 104, 8, 6, 'broken', 'bone'],
        [146, 'polishing-stone-fragment', 98, 83, 35, 'broken', 'sandstone'],
        [147, 'chalk-disc', 58, 56, 20, 'whole', 'chalk'],
        [148, 'ground-edge-fragment', 43, 31, 9, 'broken', 'flint'],
        [149, 'grooved-ware-sherd', 69, 57, 11, 'broken', 'pottery', { decoration: 'cordon' }],
        [150, 'flake', 51, 30, 7, 'whole', 'flint'],
        [151, 'blade', 59, 17, 5, 'broken', 'flint'],
        [152, 'charcoal', 21, 16, 12, 'burnt', 'charcoal'],
        [153, 'hazelnut-shells', 11, 10, 2, 'burnt', 'charred-shell', { count: 9 }],
      ] satisfies readonly Row[]
    ).map(find),
  },
  {
    pit: {
      id: 'P6',
      lengthMm: 1480,
      widthMm: 1390,
      depthMm: 620,
      profile: 'steep-sided',
      cut: 1600,
      topLevelMOd: 8.51,
      fills: [
        { context: 1601, description: 'mid brown sandy silt', thicknessMm: 220 },
        { context: 1602, description: 'grey silt', thicknessMm: 230 },
        { context: 1603, description: 'blue grey organic silt, wet', thicknessMm: 170 },
      ],
    },
    finds: (
      [
        [154, 'antler-pick', 412, 96, 54, 'worn', 'antler'],
        [155, 'cordage', 186, 7, 7, 'broken', 'plant-fibre'],
        [156, 'cattle-bone', 214, 82, 38, 'whole', 'bone'],
        [157, 'polishing-stone-fragment', 76, 69, 29, 'broken', 'sandstone'],
        [158, 'ground-edge-fragment', 36, 27, 8, 'broken', 'flint'],
        [159, 'core', 71, 62, 48, 'whole', 'flint'],
        [160, 'flake', 66, 42, 11, 'whole', 'flint'],
        [161, 'serrated-flake', 63, 24, 7, 'whole', 'flint'],
        [162, 'end-scraper', 51, 42, 13, 'worn', 'flint'],
        [163, 'charcoal', 31, 22, 15, 'burnt', 'charcoal'],
        [164, 'natural-pebble', 72, 51, 38, 'whole', 'flint'],
      ] satisfies readonly Row[]
    ).map(find),
  },
  {
    pit: {
      id: 'P7',
      lengthMm: 1240,
      widthMm: 1190,
      depthMm: 360,
      profile: 'bowl',
      cut: 1700,
      topLevelMOd: 8.49,
      fills: [
        { context: 1701, description: 'mid brown sandy silt', thicknessMm: 200 },
        { context: 1702, description: 'dark grey silt with charcoal', thicknessMm: 160 },
      ],
    },
    finds: (
      [
        [165, 'polished-axe', 104, 58, 34, 'broken', 'flint'],
        [166, 'ground-edge-fragment', 51, 38, 11, 'broken', 'flint'],
        [167, 'ground-edge-fragment', 29, 22, 6, 'broken', 'flint'],
        [168, 'oblique-arrowhead', 41, 24, 5, 'whole', 'flint'],
        [169, 'flake', 46, 35, 8, 'burnt', 'flint'],
        [170, 'flake', 58, 40, 10, 'whole', 'flint'],
        [171, 'blade', 72, 22, 7, 'whole', 'flint'],
        [172, 'end-scraper', 44, 39, 12, 'burnt', 'flint'],
        [173, 'grooved-ware-sherd', 67, 49, 11, 'broken', 'pottery', { decoration: 'grooved' }],
        [174, 'hammerstone', 74, 66, 52, 'worn', 'quartzite'],
        [175, 'burnt-flint', 63, 52, 41, 'burnt', 'flint'],
        [176, 'charcoal', 25, 19, 14, 'burnt', 'charcoal'],
        [177, 'hazelnut-shells', 12, 10, 2, 'burnt', 'charred-shell', { count: 18 }],
        [178, 'iron-nail', 64, 9, 8, 'whole', 'iron'],
      ] satisfies readonly Row[]
    ).map(find),
  },
  {
    pit: {
      id: 'P8',
      lengthMm: 1030,
      widthMm: 970,
      depthMm: 440,
      profile: 'steep-sided',
      cut: 1800,
      topLevelMOd: 8.6,
      fills: [
        { context: 1801, description: 'mid brown sandy silt', thicknessMm: 190 },
        { context: 1802, description: 'black silt with charcoal', thicknessMm: 80 },
        { context: 1803, description: 'grey brown silt', thicknessMm: 170 },
      ],
    },
    finds: (
      [
        [179, 'pig-jaw', 113, 47, 23, 'broken', 'bone', { side: 'left' }],
        [180, 'bone-pin', 86, 7, 5, 'whole', 'bone'],
        [181, 'polishing-stone-fragment', 109, 77, 41, 'broken', 'sandstone'],
        [182, 'chalk-disc', 66, 63, 17, 'broken', 'chalk'],
        [183, 'grooved-ware-sherd', 76, 61, 12, 'broken', 'pottery', { decoration: 'cordon' }],
        [184, 'oblique-arrowhead', 37, 22, 5, 'broken', 'flint'],
        [185, 'flake', 42, 28, 7, 'whole', 'flint'],
        [186, 'charcoal', 27, 21, 15, 'burnt', 'charcoal'],
        [187, 'cattle-bone', 88, 39, 27, 'broken', 'bone'],
        [188, 'natural-pebble', 47, 36, 26, 'whole', 'flint'],
      ] satisfies readonly Row[]
    ).map(find),
  },
  {
    pit: {
      id: 'P9',
      lengthMm: 890,
      widthMm: 860,
      depthMm: 280,
      profile: 'bowl',
      cut: 1900,
      topLevelMOd: 8.47,
      fills: [
        { context: 1901, description: 'mid brown sandy silt', thicknessMm: 160 },
        { context: 1902, description: 'gravelly silt', thicknessMm: 120 },
      ],
    },
    finds: (
      [
        [189, 'chalk-disc', 54, 51, 16, 'broken', 'chalk'],
        [190, 'flake', 49, 37, 9, 'whole', 'flint'],
        [191, 'leaf-arrowhead', 39, 18, 4, 'whole', 'flint'],
        [192, 'core', 58, 49, 39, 'burnt', 'flint'],
        [193, 'natural-pebble', 66, 62, 57, 'whole', 'flint'],
        [194, 'clay-pipe-stem', 46, 9, 9, 'broken', 'clay-pipe'],
      ] satisfies readonly Row[]
    ).map(find),
  },
];
