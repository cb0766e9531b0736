import { describe, expect, test } from 'vitest';
import { kindNames } from '../../../shared/activities/index.ts';
import { compileLesson } from '../../../shared/compile/index.ts';
import { draftedKinds, draftSteps, draftVisit, type DraftRequest } from '../../../shared/drafting/index.ts';
import { BANDS, type Site } from '../../../shared/library/index.ts';
import { demoLibrary } from '../../demo.ts';
import { processorMs } from '../../processor-ms.ts';
import { seasonOf } from './season.ts';

const [demo] = demoLibrary.sites;
if (demo === undefined) throw new Error('no demo site');
const site: Site = demo;
const draft = (request: Partial<DraftRequest>): ReturnType<typeof draftVisit> =>
  draftVisit(demoLibrary, site, { bands: ['7-9', '9-11'], minutes: 45, seed: '1', ...request });
const compiled = (text: string | null, seed = '1'): ReturnType<typeof compileLesson> =>
  compileLesson('draft.md', text ?? '', demoLibrary, seed);

describe('a draft from the demo’s finds', () => {
  test.each(BANDS.flatMap((band) => [20, 45, 90].map((minutes) => ({ band, minutes }))))(
    'for ages $band in $minutes minutes checks clean, without a caution',
    ({ band, minutes }) => {
      const { text, activities, reasons, merit } = draft({ bands: [band], minutes });
      const { plan, problems } = compiled(text);
      expect(problems).toEqual([]);
      expect(plan?.activities.length).toBe(activities.length);
      expect(activities.reduce((sum, activity) => sum + activity.minutes, 0)).toBeLessThanOrEqual(
        minutes * 0.8,
      );
      expect(merit).toBeGreaterThan(0.6);
      expect(reasons.length).toBeGreaterThan(5);
    },
  );

  test('the same seed gives the same bytes, another seed another draft', () => {
    const texts = ['1', '2', '3', '4', '5', '6'].map((seed) => draft({ seed }).text);
    expect(draft({ seed: '3' }).text).toBe(texts[2]);
    expect(new Set(texts).size).toBe(6);
  });

  test.each(draftedKinds.map((kind) => ({ kind })))('of $kind alone holds nothing else', ({ kind }) => {
    const { text, activities } = draft({ kinds: [kind] });
    expect(new Set(activities.map((activity) => activity.kind))).toEqual(new Set([kind]));
    expect(compiled(text).problems).toEqual([]);
  });

  test.each(kindNames.filter((kind) => !draftedKinds.includes(kind)))(
    'of %s alone there is none: that is for the lead to write',
    (kind) => {
      const { text, lacking } = draft({ kinds: [kind] });
      expect(text).toBeNull();
      expect(lacking.join()).toContain(`"${kind}" is not drafted`);
    },
  );

  test.each(['1', '2', '3', '4'])('keeps pinned finds (seed %s)', (seed) => {
    const pins = ['P1-105', 'P9-193', 'P4-143'];
    const { text, lacking } = draft({ pins, seed });
    const shown = JSON.stringify(compiled(text, seed).plan);
    for (const pin of pins) expect(shown).toContain(`"${pin}"`);
    expect(lacking).toEqual([]);
  });

  test('a pin that is no find, and pins that no activity can hold together, are told', () => {
    expect(draft({ pins: ['P1-999'] }).lacking).toEqual(['P1-999 is pinned, but is no find of this site.']);
    const { text, lacking } = draft({ kinds: ['estimate'], pins: ['P1-105'] });
    expect(text).not.toBeNull();
    expect(lacking).toContain('P1-105 is pinned, but no activity of this lesson can hold it.');
  });

  test('finds whose record is in question are kept out where there are others', () => {
    const doubtful = site.pits
      .flatMap(({ finds }) => finds.filter((_, index) => index % 2 === 0))
      .map(({ id }) => id);
    const { activities } = draft({ doubtful, kinds: ['sort'] });
    const used = activities.flatMap(({ finds }) => finds);
    expect(used.length).toBeGreaterThan(10);
    expect(used.filter((id) => doubtful.includes(id)).length / used.length).toBeLessThan(0.15);
  });

  test('subjects asked for are the subjects claimed, and every claim is earned', () => {
    const { claims, text } = draft({ subjects: ['maths'] });
    const subjects = new Set(claims.map(({ known }) => known?.subject));
    expect(subjects.size).toBeLessThanOrEqual(1);
    const { claims: judged } = compiled(text);
    expect(judged.every(({ fault }) => fault === null)).toBe(true);
    expect(draft({}).claims.length).toBeGreaterThan(5);
    expect(compiled(draft({}).text).plan?.claims.length).toBe(8);
  });

  test.each([
    { name: 'no time', request: { minutes: 4 }, said: 'A lesson takes from 5 to 180 minutes.' },
    { name: 'no band', request: { bands: [] }, said: 'No age band is named.' },
    { name: 'no kind', request: { kinds: [] }, said: 'No kind of activity is left to draw on.' },
  ])('$name: nothing is drafted, and it is said why', ({ request, said }) => {
    const { text, lacking } = draft(request);
    expect(text).toBeNull();
    expect(lacking).toContain(said);
  });

  test('a site without finds lacks them', () => {
    const empty = { ...site, pits: [] };
    const { text, lacking } = draftVisit(demoLibrary, empty, {
      bands: ['7-9'],
      minutes: 40,
      seed: '1',
      kinds: ['sort', 'compare', 'order', 'estimate'],
    });
    expect(text).toBeNull();
    expect(lacking).toContain('For trays at least 3 finds are wanted; there are 0.');
  });
});

describe('a season of 3,000 finds', () => {
  const season = seasonOf(site, 3000);

  test('is drafted from in under a second, in many short steps', () => {
    const request: DraftRequest = { bands: ['9-11'], minutes: 50, seed: '1' };
    let count = 0;
    let text: string | null = null;
    const milliseconds = processorMs(() => {
      const steps = draftSteps(demoLibrary, season, request);
      let step = steps.next();
      while (step.done !== true) {
        count += 1;
        step = steps.next();
      }
      ({ text } = step.value);
    });
    expect(milliseconds).toBeLessThan(1000);
    expect(count).toBeGreaterThan(40);
    const library = { ...demoLibrary, sites: [season] };
    expect(compileLesson('draft.md', text ?? '', library, '1').problems).toEqual([]);
  });

  test('keeps its pins among so many', () => {
    const pins = season.pits
      .flatMap(({ finds }) => finds.slice(0, 1))
      .map(({ id }) => id)
      .slice(0, 4);
    const { text, lacking } = draftVisit(demoLibrary, season, {
      bands: ['11-14'],
      minutes: 60,
      seed: '1',
      pins,
    });
    for (const pin of pins) expect(text).toContain(pin);
    expect(lacking.filter((said) => said.includes('pinned'))).toEqual([]);
  });
});
