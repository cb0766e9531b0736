import { expect, test } from 'vitest';
import {
  alikeByChance,
  bestGroup,
  siteByChance,
  type ChanceTally,
} from '../../../shared/assemblage/index.ts';
import { stream, uniform, uniformBelow, type Stream } from '../../../shared/chance/index.ts';
import { oneHeap, randomPresence } from './tables.ts';

const SITES = 2000;
const SHUFFLES = 99; // (1 + 99) × 5 % is a whole number, so that 5 % can be met exactly

/** Three standard errors of a share of 5 % seen on 2,000 sites. */
const THREE_ERRORS = 3 * Math.sqrt((0.05 * 0.95) / SITES);

/** The share of null sites on which a test raises its alarm. */
function alarmRate(test: (site: number) => boolean): number {
  let alarms = 0;
  for (let site = 0; site < SITES; site += 1) if (test(site)) alarms += 1;
  return alarms / SITES;
}

/** A site where chance alone put kinds into pits, rich pits and poor ones. */
function chanceSite(seed: string): ReturnType<typeof randomPresence> {
  const chance = stream(seed);
  const site = randomPresence(6 + uniformBelow(chance, 5), 15 + uniformBelow(chance, 20), 1, chance);
  const richness = site.pits.map(() => 0.2 + 0.5 * uniform(chance));
  return {
    ...site,
    rows: site.rows.map((row, pit) => row.map(() => (uniform(chance) < (richness[pit] ?? 0) ? 1 : 0))),
  };
}

test('whole site, both margins kept: false alarms at 5 % in 4 to 6 % of 2,000 sites', () => {
  const rate = alarmRate(
    (site) => siteByChance(chanceSite(`site ${site}`), SHUFFLES, stream(`s ${site}`)).chance <= 0.05,
  );
  console.info(`whole site: ${(100 * rate).toFixed(2)} %`);
  expect(rate).toBeGreaterThanOrEqual(0.04);
  expect(rate).toBeLessThanOrEqual(0.06);
});

test('two pits by Brainerd-Robinson, finds dealt: false alarms at 5 % in 4 to 6 % of 2,000 sites', () => {
  const rate = alarmRate((site) => {
    const counts = oneHeap([31, 23, 47, 19, 28], 12, stream(`heap ${site}`));
    const [pair] = alikeByChance(counts, {
      by: 'brainerd-robinson',
      shuffles: SHUFFLES,
      chance: stream(`p ${site}`),
      pairs: [[0, 1]],
    });
    return (pair?.chance ?? 0) <= 0.05;
  });
  console.info(`two pits by Brainerd-Robinson: ${(100 * rate).toFixed(2)} %`);
  expect(rate).toBeGreaterThanOrEqual(0.04);
  expect(rate).toBeLessThanOrEqual(0.06);
});

/** The chance with ties broken by lot: exactly fair, and so a check of the shuffle itself; not for showing to anyone. */
const byLot = (tally: ChanceTally, chance: Stream): number =>
  (tally.greater + uniform(chance) * (tally.atLeast - tally.greater + 1)) / (tally.draws + 1);

test('two pits by Jaccard take few values: the chance shown errs to the safe side, ties by lot are exact', () => {
  const alarms = { shown: 0, half: 0, lot: 0 };
  for (let site = 0; site < SITES; site += 1) {
    const chance = stream(`j ${site}`);
    const [pair] = alikeByChance(chanceSite(`pair ${site}`), {
      by: 'jaccard',
      shuffles: SHUFFLES,
      chance,
      pairs: [[0, 1]],
    });
    if (pair === undefined) continue;
    if (pair.chance <= 0.05) alarms.shown += 1;
    if (pair.midChance <= 0.05) alarms.half += 1;
    if (byLot(pair, chance) <= 0.05) alarms.lot += 1;
  }
  console.info(`two pits by Jaccard, of ${SITES}: ${JSON.stringify(alarms)}`);
  expect(alarms.shown / SITES).toBeLessThanOrEqual(0.05);
  expect(alarms.half).toBeGreaterThan(alarms.shown);
  expect(alarms.half / SITES).toBeLessThanOrEqual(0.06);
  expect(Math.abs(alarms.lot / SITES - 0.05)).toBeLessThan(THREE_ERRORS);
});

test('the best of all trios, held against the best, is as cautious; ties by lot are exact', () => {
  const alarms = { shown: 0, lot: 0 };
  for (let site = 0; site < SITES; site += 1) {
    const chance = stream(`t ${site}`);
    const best = bestGroup(chanceSite(`trio ${site}`), { size: 3, fewest: 2, most: 5 }, SHUFFLES, chance);
    if (best.chance <= 0.05) alarms.shown += 1;
    if (byLot(best, chance) <= 0.05) alarms.lot += 1;
  }
  console.info(`best trio, of ${SITES}: ${JSON.stringify(alarms)}`);
  expect(alarms.shown / SITES).toBeLessThanOrEqual(0.05);
  expect(Math.abs(alarms.lot / SITES - 0.05)).toBeLessThan(THREE_ERRORS);
});
