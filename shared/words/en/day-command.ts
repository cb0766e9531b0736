const pad = (rows: readonly (readonly string[])[]): string => {
  const widths = (rows[0] ?? []).map((_, column) => Math.max(...rows.map((row) => row[column]?.length ?? 0)));
  return rows
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
};

/** What `day` says. */
export const dayCommandWords = {
  needs: (): string =>
    'day needs one day file: pitlore day DAY.yaml [--json] [--wet] [--seconds N] [--ics OUT.ics] [--keep PLAN.json [--from HH:MM]]',
  fromLessonNeeds: (): string =>
    '--from-lesson makes a day file and plans nothing, so it stands alone: pitlore day --from-lesson FILE [--pupils N] [--out DAY.yaml]. Then: pitlore day DAY.yaml',
  pupilsUnfit: (written: string, most: number): string =>
    `expected --pupils with a whole number from 1 to ${most}; received "${written}"`,
  madeFrom: (file: string): string =>
    `wrote ${file}. Write your own over what it calls a stand-in, then: pitlore day ${file}\n`,
  keepUnfit: (path: string): string => `expected in ${path} a plan that day --json wrote`,
  fromUnfit: (written: string): string =>
    `expected --from with a time such as 10:40, and --keep with the plan so far; received "${written}"`,
  moved: (cells: number): string =>
    `${cells} ${cells === 1 ? 'slot is' : 'slots are'} not as in the plan that was kept.\n`,
  secondsUnfit: (written: string): string =>
    `expected --seconds with a whole number from 1 to 600; received "${written}"`,
  noDate: (file: string): string => `${file} says no date, and a calendar needs one: add date: "2027-06-10"`,
  noCalendar: (path: string): string => `There is no plan, so ${path} was not written.`,
  lunch: 'lunch',
  free: '–',
  away: 'not here',
  off: '–',
  first: (title: string): string =>
    `${title}\nA draft for the lead: the number of adults, routes and safety are for your employer and the school to settle.\n`,
  leftOut: (names: readonly string[]): string =>
    names.length === 0 ? '' : `Left out in the rain: ${names.join(', ')}.\n`,
  groups: 'Group',
  adults: 'Adult',
  table: (rows: readonly (readonly string[])[]): string => `\n${pad(rows)}\n`,
  minutes: (idle: number, uneven: number, walking: number): string =>
    `\nMinutes with nothing on, all groups: ${idle}; between the group with most and with least: ${uneven}; on foot, all groups: ${walking}.\n`,
  optimal: (): string => 'No plan does better by these three, taken in this order (worked out).\n',
  bounded: (walking: number, least: number): string =>
    `This plan keeps every rule. The time ran out before it was shown to be the best: ${walking} minutes on foot, and none with the same waits has under ${least} (worked out).\n`,
  waitsOpen: (): string =>
    'This plan keeps every rule. The time ran out before it was shown that no other has shorter or more even waits.\n',
  impossible: (): string => 'There is no such day.\n',
  counted: (sentences: readonly string[]): string =>
    sentences.length === 0 ? '' : `By counting:\n${sentences.map((line) => `  ${line}\n`).join('')}`,
  conflict: (rules: readonly { readonly says: string; readonly frees: string }[], isLeast: boolean): string =>
    `${isLeast ? 'These cannot all hold; give up any one and the others can' : 'These cannot all hold'}:\n${rules.map(({ says, frees }) => `  ${says}\n    ${frees}.\n`).join('')}`,
  leastMissed: (count: number): string =>
    `With every other rule kept, at least ${count} must-see ${count === 1 ? 'visit' : 'visits'} would have to go.\n`,
  unknown: (): string =>
    'The time ran out before there was a plan, or a proof that there is none. Try more --seconds.\n',
};
