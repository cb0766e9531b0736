import { describe, expect, test } from 'vitest';
import {
  edgeAtStation,
  edgeOfPiece,
  handlingTable,
  nearestAt,
  plainSituation,
  safetyReport,
  type StationUse,
} from '../../../shared/safety/index.ts';
import { demoLibrary } from '../../demo.ts';

const rules = demoLibrary.safety;

describe('the class of one piece', () => {
  test.each([
    { what: 'a scraper as found', type: 'end-scraper', isNewlyStruck: false, stated: undefined, edge: 'E2' },
    { what: 'one struck anew', type: 'end-scraper', isNewlyStruck: true, stated: undefined, edge: 'E3' },
    {
      what: 'one struck anew and rubbed down',
      type: 'end-scraper',
      isNewlyStruck: true,
      stated: 'E1',
      edge: 'E1',
    },
    { what: 'one said to be blunt', type: 'end-scraper', isNewlyStruck: false, stated: 'E0', edge: 'E1' },
    { what: 'glass said to be blunt', type: 'bottle-glass', isNewlyStruck: false, stated: 'E0', edge: 'E3' },
    {
      what: 'a pebble, whole or copied',
      type: 'natural-pebble',
      isNewlyStruck: true,
      stated: undefined,
      edge: 'E0',
    },
    {
      what: 'a pebble with a break in it',
      type: 'natural-pebble',
      isNewlyStruck: false,
      stated: 'E2',
      edge: 'E2',
    },
    { what: 'a blunt copy', type: 'blunt-replica', isNewlyStruck: false, stated: undefined, edge: 'E0' },
    {
      what: 'a thing nobody classed',
      type: 'strange-thing',
      isNewlyStruck: false,
      stated: undefined,
      edge: 'E3',
    },
  ] as const)('$what: $edge', ({ type, isNewlyStruck, stated, edge }) => {
    expect(edgeOfPiece(rules, type, isNewlyStruck, stated)).toBe(edge);
  });
});

describe('a station with pieces of which each has its own exposure', () => {
  const table = (pieces: StationUse['pieces'], kind: StationUse['kind'] = 'blunt-handling'): StationUse => ({
    kind,
    childrenAtOnce: 6,
    ...(pieces && { pieces }),
  });
  const refused = (use: StationUse, youngest: number): readonly string[] =>
    safetyReport(rules, { ...plainSituation(6, youngest, [], 'hall'), stations: [use] }).refusals.map(
      ({ id, say }) => `${id}: ${say}`,
    );
  const arrow = { edge: 'E3', exposure: 'look' } as const;
  const pebble = { edge: 'E0', exposure: 'handle' } as const;

  test('an arrowhead looked at beside a pebble in the hand is not an arrowhead in the hand', () => {
    const use = table([arrow, pebble]);
    expect(edgeAtStation(rules, use)).toBe('E3');
    expect(nearestAt(rules, use)).toEqual(pebble);
    expect(refused(use, 5)).toEqual([]);
    expect(handlingTable([arrow, pebble], false)).toBe('blunt-handling');
  });

  test('the exposure that is too near is named', () => {
    expect(refused(table([pebble, { edge: 'E2', exposure: 'touch-held' }]), 6)).toEqual([
      'X05: This piece is too sharp for this age to touch held.',
    ]);
  });

  test('finds of the station are still looked at beside its pieces', () => {
    const use: StationUse = { ...table([pebble]), finds: ['obsidian'] };
    expect(refused(use, 16)).toHaveLength(1);
    expect(refused({ ...table([pebble]), edgeClass: 'E3' }, 16)).toHaveLength(1);
  });

  test('whatever the table is called, an edge in reach needs a practitioner', () => {
    for (const kind of ['blunt-handling', 'table-activity', 'sharp-handling'] as const) {
      const use = table([{ edge: 'E1', exposure: 'touch-held' }], kind);
      const { adults } = safetyReport(rules, { ...plainSituation(6, 12, [], 'hall'), stations: [use] });
      expect(adults.practitioners).toBe(1);
    }
  });
});
