/** What a station that people drop in on comes to, over a long day, by the simplest model of a queue. */
export interface DropIn {
  /** Parties at work at once on average, were there room for all: arrivals an hour times hours of stay. */
  readonly load: number;
  /** The fewest places at which the queue does not grow all day. */
  readonly leastPlaces: number;
  /** Null where parties come faster than they can leave: then the queue only grows. */
  readonly queue: {
    /** The share of parties that wait at all. */
    readonly waitShare: number;
    readonly meanWaitMinutes: number;
    readonly meanQueue: number;
    /** Waiting or at work. */
    readonly meanThere: number;
    /** The share of the time with nobody there. */
    readonly emptyShare: number;
  } | null;
}

/**
 * Parties that come at random to a station with some places, and stay about so long. Real visitors come in bursts and leave
 * long queues, so this is for comparing three places with four, not for a promise.
 *
 * Sources: Erlang 1917 (FM), the share that waits; Little 1961 (FM), waiting in line = arrivals × wait.
 *
 * @example dropIn({ perHour: 24, minutes: 2, places: 1 }).queue?.meanThere // 4
 */
export function dropIn({
  perHour,
  minutes,
  places,
}: {
  readonly perHour: number;
  readonly minutes: number;
  readonly places: number;
}): DropIn {
  const load = (perHour * minutes) / 60;
  const leastPlaces = Math.floor(load) + 1;
  if (places < leastPlaces) return { load, leastPlaces, queue: null };
  // The share turned away were nobody to wait, place by place: no factorials, so nothing overflows.
  let turnedAway = 1;
  // 1 over the share of the time that all `place` are taken, against nobody there: kept as a running sum of terms.
  let term = 1;
  let terms = 1;
  for (let place = 1; place <= places; place += 1) {
    turnedAway = (load * turnedAway) / (place + load * turnedAway);
    term = (term * load) / place;
    if (place < places) terms += term;
  }
  const free = places - load;
  const waitShare = turnedAway / (1 - (load / places) * (1 - turnedAway));
  const meanQueue = (waitShare * load) / free;
  return {
    load,
    leastPlaces,
    queue: {
      waitShare,
      meanWaitMinutes: (waitShare * minutes) / free,
      meanQueue,
      meanThere: meanQueue + load,
      emptyShare: 1 / (terms + (term * places) / free),
    },
  };
}

/** More places than this are no one table. ASM. */
const MOST_PLACES = 100;

/**
 * The fewest places at which parties wait no longer than that on average; null where not even a hundred do.
 *
 * @example placesForWait({ perHour: 20, minutes: 8, mostWaitMinutes: 5 }) // 4
 */
export function placesForWait({
  perHour,
  minutes,
  mostWaitMinutes,
}: {
  readonly perHour: number;
  readonly minutes: number;
  readonly mostWaitMinutes: number;
}): number | null {
  for (let places = 1; places <= MOST_PLACES; places += 1) {
    const { queue } = dropIn({ perHour, minutes, places });
    if (queue !== null && queue.meanWaitMinutes <= mostWaitMinutes) return places;
  }
  return null;
}
