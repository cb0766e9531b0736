import { describe, expect, test } from 'vitest';
import { asksBarter } from '../../../shared/activities/barter/asks.ts';
import { asksEstimate } from '../../../shared/activities/estimate/asks.ts';
import { compileLesson } from '../../../shared/compile/index.ts';
import { demoLibrary } from '../../demo.ts';
import { classOf, gatheringOf } from '../activities/barter/barter-of.ts';

const AXE = 'of: grinding-hours\nfor: { find: P7-165, length-mm: 150 }';
const MASS = 'of: axe-mass\nfor: { find: P7-165, length-mm: 150 }';
const FIRE =
  'make: { traders: 5, chain: 3, goods: [hide, flint, pot, hazelnuts, axe, cord, basket, antler], aim: axe }';

/** Faults of one claim for a lesson of one block. */
function faultOf(
  kind: string,
  block: string,
  bands: string,
  outcome: string,
  grade = 'practised',
): string | null {
  const text = `---\ntitle: One\nsite: wendle-marsh\nbands: ${bands}\nminutes: 60\nclaims:\n  - { outcome: ${outcome}, grade: ${grade} }\n---\n\`\`\`${kind}\ntitle: One\n${block}\nminutes: 8\n\`\`\`\n`;
  const { claims, problems } = compileLesson('one.md', text, demoLibrary, '1');
  const broken = problems.filter(({ code, grade: how }) => !code.startsWith('claim-') && how === 'error');
  expect(broken).toEqual([]);
  return claims[0]?.fault?.fault ?? null;
}

describe('claims that estimates and gatherings earn', () => {
  test.each([
    ['a task held against other times', 'estimate', `${AXE}\nask: choose`, '[7-9]', 'en-ma-y3-durations'],
    ['a number, then the worked figure', 'estimate', `${AXE}\nask: number`, '[7-9]', 'MNU 1-01a', 'taught'],
    ['a guess judged by it', 'estimate', `${AXE}\nask: number`, '[9-11]', 'MNU 2-01a', 'touched'],
    ['a least and a most', 'estimate', `${AXE}\nask: interval`, '[11-14]', 'en-ma-ks3-error-interval'],
    ['a mass in grams', 'estimate', `${MASS}\nask: number`, '[7-9]', '3.MD.A.2'],
    ['three swaps in a row', 'barter', FIRE, '[9-11]', '4.OA.A.3', 'touched'],
    ['too little of what is wanted', 'barter', FIRE, '[7-9]', 'nz-ss-l2-economic-choices'],
    ['too little in a class', 'barter', 'class: { pupils: 12 }', '[7-9]', 'nz-ss-l2-economic-choices'],
    ['what a token would change', 'barter', FIRE, '[11-14]', 'D2.Eco.5.6-8'],
  ])('%s', (_, kind, block, bands, outcome, grade = 'practised') => {
    expect(faultOf(kind, block, bands, outcome, grade)).toBeNull();
  });
});

describe('claims that are not so', () => {
  test.each([
    [
      'times compared, but one number asked',
      'estimate',
      `${AXE}\nask: number`,
      '[7-9]',
      'en-ma-y3-durations',
    ],
    ['a figure checked, but none given', 'estimate', `${AXE}\nask: choose`, '[9-11]', 'MNU 2-01a'],
    [
      'an interval, but one number asked',
      'estimate',
      `${AXE}\nask: number`,
      '[11-14]',
      'en-ma-ks3-error-interval',
    ],
    ['a mass, but hours asked', 'estimate', `${AXE}\nask: number`, '[7-9]', '3.MD.A.2'],
    [
      'a unit chosen, but it is given',
      'estimate',
      `${AXE}\nask: number`,
      '[7-9]',
      'en-ma-y4-estimate-measures',
    ],
    ['units turned, but nothing is', 'estimate', `${AXE}\nask: number`, '[9-11]', 'en-ma-y5-time-conversion'],
    ['a mean, but none worked out', 'estimate', `${AXE}\nask: number`, '[9-11]', 'en-ma-y6-mean'],
    ['a rate, but none asked', 'barter', FIRE, '[7-9]', 'en-ma-y3-scaling'],
    ['a chain, but a class swaps at will', 'barter', 'class: { pupils: 12 }', '[9-11]', '4.OA.A.3'],
    ['money, but a class reads of no token', 'barter', 'class: { pupils: 12 }', '[11-14]', 'D2.Eco.5.6-8'],
    ['costs weighed, but nobody vouched', 'barter', FIRE, '[7-9]', 'D2.Eco.2.K-2'],
  ])('%s', (_, kind, block, bands, outcome) => {
    const fault = faultOf(kind, block, bands, outcome);
    expect(fault).toBe('no-evidence');
  });

  test('what only the older band is asked earns nothing for the younger', () => {
    const block = `${AXE}\nask: { 7-9: choose, 9-11: number }`;
    expect(faultOf('estimate', block, '[7-9, 9-11]', 'en-ma-y3-estimate-check')).toBe('no-evidence');
    expect(faultOf('estimate', block, '[7-9, 9-11]', 'en-ma-y3-durations')).toBeNull();
    expect(faultOf('estimate', block, '[7-9, 9-11]', 'en-ma-y6-estimate-accuracy', 'touched')).toBeNull();
    expect(faultOf('estimate', block, '[7-9, 9-11]', 'en-ma-y6-estimate-accuracy')).toBe('grade-too-high');
  });
});

describe('what a kind asks', () => {
  test('the example of an estimate', () => {
    const { metIn } = asksEstimate({ asks: [{ how: 'interval', bands: ['11-14'] }], choices: [], unit: 'h' });
    expect(metIn).toEqual([{ bands: ['11-14'], met: ['check-estimate', 'interval'] }]);
  });

  test('one stretch of time is nothing to compare', () => {
    const choice = { id: 'lesson', label: 'a lesson', hours: 1, status: 'ASM', source: 'x' } as const;
    const asks = [{ how: 'choose', bands: ['7-9'] }] as const;
    expect(asksEstimate({ asks, choices: [choice], unit: 'h' }).metIn).toEqual([{ bands: ['7-9'], met: [] }]);
  });

  test('where everyone can have what they want there is no scarcity', () => {
    const activity = gatheringOf(FIRE, '9-11');
    const { pupil, traders } = activity.world;
    const plenty = Object.fromEntries(activity.world.goods.map(({ id }) => [id, 20]));
    const [first, ...others] = traders;
    if (first === undefined) throw new Error('nobody');
    const rich = {
      ...activity,
      world: { ...activity.world, pupil, traders: [{ ...first, holds: plenty }, ...others] },
    };
    expect(asksBarter(activity).met).toContain('scarcity');
    expect(asksBarter(rich).met).not.toContain('scarcity');
  });

  test('a world with gifts, or one handover, is no chain of swaps', () => {
    const activity = gatheringOf(FIRE, '9-11');
    const { traders } = activity.world;
    const giving = traders.map((trader) => ({ ...trader, door: 'gift' as const }));
    expect(asksBarter(activity).met).toContain('chain-swap');
    expect(asksBarter({ ...activity, world: { ...activity.world, traders: giving } }).met).not.toContain(
      'chain-swap',
    );
    expect(asksBarter({ ...activity, par: 1 }).met).not.toContain('chain-swap');
  });

  test('where every want is met straight, a token changes nothing', () => {
    const activity = gatheringOf(FIRE, '11-14');
    const straight = { ...activity, coincidences: { ...activity.coincidences, oneSided: 0 } };
    expect(asksBarter(straight).metIn).toEqual([]);
  });

  test('things are counted: all at a gathering, a card each in a class', () => {
    const { world } = gatheringOf(FIRE, '9-11');
    const held = [world.pupil, ...world.traders].flatMap(({ holds }) => Object.values(holds));
    expect(asksBarter(gatheringOf(FIRE, '9-11')).things).toBe(
      held.reduce((total, count) => total + count, 0),
    );
    expect(asksBarter(classOf('class: { pupils: 12 }', '9-11')).things).toBe(12);
  });
});
