/** A wait as a band: a mean to the second would promise too much. */
const band = (minutes: number): string =>
  minutes < 1
    ? 'under a minute'
    : minutes < 5
      ? 'under 5 minutes'
      : minutes < 15
        ? '5 to 15 minutes'
        : 'over 15 minutes';

/** What `dropin` says. */
export const dropInWords = {
  needs: (): string =>
    'dropin needs three numbers: pitlore dropin --per-hour N --minutes M --places C [--json]',
  numberUnfit: (option: string, least: number, most: number, written: string): string =>
    `expected --${option} with a ${option === 'places' ? 'whole number' : 'number'} from ${least} to ${most}; received "${written}"`,
  head: (perHour: number, minutes: number): string =>
    `${perHour} parties an hour, ${minutes} minutes each (your numbers):\n`,
  row: (places: number, waitShare: number, meanWaitMinutes: number): string =>
    `  ${places} ${places === 1 ? 'place' : 'places'}: ${Math.round(waitShare * 100)} % wait; on average ${band(meanWaitMinutes)}\n`,
  grows: (places: number, least: number): string =>
    `  ${places} ${places === 1 ? 'place' : 'places'}: the queue grows all day; it takes ${least} at least\n`,
  there: (count: number): string =>
    `At work or waiting at your number of places, on average: ${Math.round(count)}.\n`,
  caution: (): string =>
    'Worked out for visitors who come at random (Erlang, Little: from memory). Real ones come in bursts and leave long queues: count again each hour.\n',
};
