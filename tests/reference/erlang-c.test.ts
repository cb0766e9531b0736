import { describe, expect, test } from 'vitest';
import { stream, uniform, uniformBelow } from '../../shared/chance/index.ts';
import { dropIn, placesForWait } from '../../shared/day/index.ts';

const HOURS_A_YEAR = 365 * 24;

function queueOf(perHour: number, minutes: number, places: number) {
  const { queue } = dropIn({ perHour, minutes, places });
  if (queue === null) throw new Error('no steady queue');
  return queue;
}

describe('published tables', () => {
  // Bronson 1982, ex. 24.6, as listed on a Lisbon university page on queues (RF): 300 a year, two days, three places.
  test('three places, 300 a year', () => {
    const queue = queueOf(300 / HOURS_A_YEAR, 2 * 24 * 60, 3);
    expect(queue.meanQueue).toBeCloseTo(0.352, 3);
    expect(queue.meanThere).toBeCloseTo(1.996, 3);
    expect((queue.meanWaitMinutes + 2 * 24 * 60) / (60 * HOURS_A_YEAR)).toBeCloseTo(0.006654, 6);
    expect(queue.emptyShare).toBeCloseTo(0.17754, 5);
    expect(queue.waitShare).toBeCloseTo(0.29075, 5);
  });

  // The same, ex. 23.3 (RF): one place, 24 an hour, 30 an hour served.
  test('one place, 24 an hour', () => {
    const queue = queueOf(24, 2, 1);
    expect(queue.meanThere).toBeCloseTo(4, 9);
    expect(queue.meanWaitMinutes + 2).toBeCloseTo(10, 9);
    expect(queue.emptyShare).toBeCloseTo(0.2, 9);
  });

  // The same, ex. 23.14 (RF): one place, 30 an hour, a minute and a half.
  test('one place, 30 an hour', () => {
    const queue = queueOf(30, 1.5, 1);
    expect(queue.meanQueue).toBeCloseTo(2.25, 9);
    expect(queue.meanWaitMinutes).toBeCloseTo(4.5, 9);
    expect(queue.emptyShare).toBeCloseTo(0.25, 9);
  });

  // A worked question of an open mathematics collection (RF): 2 a minute, three minutes, ten places: "about 0.10".
  test('ten places, load six', () => {
    expect(queueOf(120, 3, 10).waitShare).toBeCloseTo(0.1013, 4);
  });

  // By hand: p0 = 1 / (1 + 2 + 2 + 8/6 * 3) = 1/9, share that waits 4 * 1/9, in line 4/9 * 2 / 1.
  test('three places, load two: exact', () => {
    const queue = queueOf(60, 2, 3);
    expect(queue.waitShare).toBeCloseTo(4 / 9, 12);
    expect(queue.meanQueue).toBeCloseTo(8 / 9, 12);
    expect(queue.emptyShare).toBeCloseTo(1 / 9, 12);
  });
});

// The balance of comings and goings, state by state, summed far out: no formula of Erlang's in it.
test('two hundred stations at random agree with the balance of states', () => {
  const chance = stream('queues');
  for (let round = 0; round < 200; round += 1) {
    const places = 1 + uniformBelow(chance, 12);
    const load = places * (0.05 + 0.85 * uniform(chance));
    const minutes = 1 + 20 * uniform(chance);
    const perHour = (load * 60) / minutes;
    const states = [1];
    for (let there = 1; there < 3000; there += 1)
      states.push(((states[there - 1] ?? 0) * load) / Math.min(there, places));
    const whole = states.reduce((sum, state) => sum + state, 0);
    const mean = (of: (there: number) => number): number =>
      states.reduce((sum, state, there) => sum + (state / whole) * of(there), 0);
    const queue = queueOf(perHour, minutes, places);
    expect(queue.emptyShare).toBeCloseTo(1 / whole, 9);
    expect(queue.waitShare).toBeCloseTo(
      mean((there) => (there >= places ? 1 : 0)),
      9,
    );
    expect(queue.meanQueue).toBeCloseTo(
      mean((there) => Math.max(0, there - places)),
      7,
    );
    expect(queue.meanThere).toBeCloseTo(
      mean((there) => there),
      7,
    );
    // Little 1961 (FM): those in line are arrivals times wait.
    expect((perHour / 60) * queue.meanWaitMinutes).toBeCloseTo(queue.meanQueue, 9);
  }
});

test('the fewest places for a wait, read off the waits of three, four and five places', () => {
  // 20 an hour, 8 minutes: 3 places wait 19 min, 4 wait 2.3, 5 wait 0.6 (worked out apart).
  const least = (mostWaitMinutes: number) => placesForWait({ perHour: 20, minutes: 8, mostWaitMinutes });
  expect([least(20), least(5), least(1)]).toEqual([3, 4, 5]);
  expect(placesForWait({ perHour: 1000, minutes: 240, mostWaitMinutes: 1 })).toBeNull();
});

test('parties that come as fast as they can leave, or faster: no steady queue', () => {
  expect(dropIn({ perHour: 30, minutes: 2, places: 1 })).toEqual({ load: 1, leastPlaces: 2, queue: null });
  expect(dropIn({ perHour: 60, minutes: 2.5, places: 2 })).toEqual({
    load: 2.5,
    leastPlaces: 3,
    queue: null,
  });
});
