import * as fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  EDGE_CLASSES,
  EXPOSURES,
  plainSituation,
  safetyReport,
  SETTINGS,
  STATION_KINDS,
  type Situation,
  type StationUse,
} from '../../../shared/safety/index.ts';
import { readLibrary } from '../../../src/loaders/read-library.ts';

const { library } = await readLibrary('content');
const rules = library.safety;
const frameworks = [...new Set(rules.ratios.map(({ framework }) => framework))].filter(
  (id) => id !== 'local',
);
const age = fc.integer({ min: 4, max: 16 });

const station = fc.record(
  {
    kind: fc.constantFrom(...STATION_KINDS),
    childrenAtOnce: fc.integer({ min: 0, max: 70 }),
    edgeClass: fc.constantFrom(...EDGE_CLASSES),
    exposure: fc.constantFrom(...EXPOSURES),
    spectatorsAtMetres: fc.double({ min: 0, max: 9, noNaN: true }),
    dry: fc.boolean(),
    pupilsFlake: fc.boolean(),
    pupilsSwing: fc.boolean(),
    pupilsGrind: fc.boolean(),
    pupilsHeat: fc.boolean(),
    pupilsThrow: fc.boolean(),
    poweredTool: fc.boolean(),
  },
  { requiredKeys: ['kind', 'childrenAtOnce'] },
);

const situation: fc.Arbitrary<Situation> = fc
  .record({
    children: fc.integer({ min: 0, max: 120 }),
    youngest: age,
    frameworks: fc.subarray(frameworks),
    setting: fc.constantFrom(...SETTINGS),
    stations: fc.array(station, { maxLength: 4 }),
    supervisorsAvailable: fc.option(fc.integer({ min: 0, max: 30 })),
  })
  .map((given) => ({
    ...plainSituation(given.children, given.youngest, given.frameworks, given.setting),
    ...given,
  }));

const numbers = (of: Situation): readonly number[] => {
  const { adults } = safetyReport(rules, of);
  const { ratioAdults, stationSupervisors, supervisors, practitioners, totalAdults, firstAiders } = adults;
  return [ratioAdults, stationSupervisors, supervisors, practitioners, totalAdults, firstAiders];
};

const noneFell = (before: readonly number[], after: readonly number[]): void => {
  for (const [index, value] of before.entries()) expect(after[index]).toBeGreaterThanOrEqual(value);
};

const ids = (of: Situation): readonly string[] => safetyReport(rules, of).refusals.map(({ id }) => id);

test('a child more never lowers any number, wherever that child stands', () => {
  fc.assert(
    fc.property(situation, fc.nat({ max: 3 }), (before, at) => {
      noneFell(numbers(before), numbers({ ...before, children: before.children + 1 }));
      const stations = before.stations.map((each, index) =>
        index === at ? { ...each, childrenAtOnce: each.childrenAtOnce + 1 } : each,
      );
      noneFell(numbers(before), numbers({ ...before, children: before.children + 1, stations }));
    }),
  );
});

test('a framework more never lowers any number', () => {
  fc.assert(
    fc.property(situation, fc.constantFrom(...frameworks), (before, more) => {
      noneFell(numbers(before), numbers({ ...before, frameworks: [...before.frameworks, more] }));
    }),
  );
});

test('splitting a station in two never lowers the supervisors', () => {
  fc.assert(
    fc.property(situation, station, fc.nat({ max: 70 }), (before, whole, part) => {
      const first = Math.min(part, whole.childrenAtOnce);
      const at = (childrenAtOnce: number): StationUse => ({ ...whole, childrenAtOnce });
      const [one, two] = [[at(whole.childrenAtOnce)], [at(first), at(whole.childrenAtOnce - first)]];
      noneFell(numbers({ ...before, stations: one }), numbers({ ...before, stations: two }));
    }),
  );
});

test('an older youngest child never adds a refusal of what is in the hand', () => {
  fc.assert(
    fc.property(situation, age, (before, older) => {
      if (older < before.youngest || ids(before).includes('X05')) return;
      expect(ids({ ...before, youngest: older })).not.toContain('X05');
    }),
  );
});

/** What must never be asked of children, each with the refusal that meets it. */
const forbidden: readonly {
  readonly what: string;
  readonly use: Partial<StationUse>;
  readonly id: string;
}[] = [
  { what: 'a pupil flakes', use: { pupilsFlake: true }, id: 'X01' },
  { what: 'a pupil swings an edged tool', use: { pupilsSwing: true }, id: 'X02' },
  { what: 'stone is ground dry', use: { kind: 'wet-grinding-demo', dry: true }, id: 'X03' },
  { what: 'a pupil grinds stone', use: { pupilsGrind: true }, id: 'X04' },
  {
    what: 'a pupil lifts an acute edge',
    use: { kind: 'sharp-handling', edgeClass: 'E3', exposure: 'handle' },
    id: 'X05',
  },
  {
    what: 'a pupil uses a sharp edge',
    use: { kind: 'sharp-handling', edgeClass: 'E2', exposure: 'use' },
    id: 'X05',
  },
  { what: 'a powered tool runs', use: { poweredTool: true }, id: 'X06' },
  {
    what: 'the row stands inside the rope',
    use: { kind: 'knapping-demo', spectatorsAtMetres: 2.9 },
    id: 'X12',
  },
  { what: 'a machine works on the route', use: { kind: 'site-tour', plantWorkingOnRoute: true }, id: 'X13' },
  { what: 'an edge is open', use: { kind: 'site-tour', metresToUnbarrieredEdge: 1.9 }, id: 'X13' },
  { what: 'a pupil handles hot pitch', use: { pupilsHeat: true }, id: 'X15' },
  { what: 'pupils throw', use: { pupilsThrow: true }, id: 'X16' },
];

test.each(forbidden)(
  '$what: refused at every age, in every setting, beside anything ($id)',
  ({ use, id }) => {
    fc.assert(
      fc.property(situation, station, (before, plain) => {
        const bad: StationUse = { ...plain, ...use };
        const { refusals } = safetyReport(rules, { ...before, stations: [...before.stations, bad] });
        expect(refusals.some((refusal) => refusal.id === id && refusal.outcome === 'refuse')).toBe(true);
      }),
    );
  },
);

test.each([
  { edge: 'E1', youngest: 6, isRefused: true },
  { edge: 'E1', youngest: 7, isRefused: false },
  { edge: 'E2', youngest: 10, isRefused: true },
  { edge: 'E2', youngest: 11, isRefused: false },
  { edge: 'E3', youngest: 16, isRefused: true },
] as const)(
  'class $edge in the hand at $youngest: refused $isRefused (ages: judgement)',
  ({ edge, youngest, isRefused }) => {
    const base = plainSituation(6, youngest, ['england-visits'], 'hall');
    const stations = [
      { kind: 'sharp-handling', childrenAtOnce: 6, edgeClass: edge, exposure: 'handle' },
    ] as const;
    expect(ids({ ...base, stations }).includes('X05')).toBe(isRefused);
  },
);

test('a find nobody classed, or real flint of which nothing is said, is in nobody’s hand', () => {
  const base = plainSituation(6, 16, ['england-visits'], 'hall');
  for (const finds of [['strange-thing'], undefined]) {
    const use: StationUse = { kind: 'sharp-handling', childrenAtOnce: 6, ...(finds && { finds }) };
    expect(ids({ ...base, stations: [use] })).toContain('X05');
  }
});

test('a sharp piece on a table for blunt ones needs the practitioner all the same', () => {
  const base = plainSituation(8, 12, ['england-visits'], 'hall');
  const use: StationUse = { kind: 'blunt-handling', childrenAtOnce: 8, edgeClass: 'E2', exposure: 'handle' };
  expect(safetyReport(rules, { ...base, stations: [use] }).adults.practitioners).toBe(1);
});

test('every type of find in the vocabulary has a class', () => {
  const unclassed = library.vocabulary.objectTypes.filter(({ id }) => rules.edgeOfType[id] === undefined);
  expect(unclassed.map(({ id }) => id)).toEqual([]);
});
