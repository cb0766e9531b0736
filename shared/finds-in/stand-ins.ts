import { siteWords as words } from '../words/en/finds-in-site.ts';

/** Stand-ins for what only a plan and a section can tell: pits in a row, a metre across. */
const PIT_MM = 1000;
const FILL_MM = 150;
export const APART_M = 3;

/** What is made up for a pit that a list only names. */
export interface PitStandIn {
  readonly id: string;
  readonly cut: number;
  readonly eastM: number;
  readonly northM: number;
  readonly topLevelMOd: number;
  /** From the top down. */
  readonly contexts: readonly number[];
}

const text = (value: string): string => JSON.stringify(value);

/** A fill of a site file as it is read, all but its number a stand-in. */
export const fillValue = (context: number) => ({
  context,
  description: words.fill(),
  'thickness-mm': FILL_MM,
});

/** The same as it is written. */
export const fillLine = (context: number): string =>
  `{context: ${context}, description: ${text(words.fill())}, thickness-mm: ${FILL_MM}}`;

/** A pit of a site file as it is read. */
export const pitValue = (pit: PitStandIn) => ({
  id: pit.id,
  cut: pit.cut,
  centre: { 'east-m': pit.eastM, 'north-m': pit.northM },
  'top-level-m-od': pit.topLevelMOd,
  'length-mm': PIT_MM,
  'width-mm': PIT_MM,
  'depth-mm': pit.contexts.length * FILL_MM,
  profile: 'bowl',
  fills: pit.contexts.map(fillValue),
});

/** The same as it is written, line by line after its dash. */
export const pitLines = (pit: PitStandIn): readonly string[] => [
  `id: ${text(pit.id)}`,
  `cut: ${pit.cut}`,
  `centre: {east-m: ${pit.eastM}, north-m: ${pit.northM}}`,
  `top-level-m-od: ${pit.topLevelMOd}`,
  `length-mm: ${PIT_MM}`,
  `width-mm: ${PIT_MM}`,
  `depth-mm: ${pit.contexts.length * FILL_MM}`,
  'profile: bowl',
  'fills:',
  ...pit.contexts.map((context) => `- ${fillLine(context)}`),
];
