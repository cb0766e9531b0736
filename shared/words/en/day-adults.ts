interface Part {
  readonly groups: readonly string[];
  readonly children: number;
  readonly youngest: number;
  readonly where: string;
  readonly adults: number;
  readonly because: readonly string[];
  readonly refusals: readonly { readonly id: string; readonly outcome: string; readonly say: string }[];
}

/** What `adults` says of a day. */
export const dayAdultsWords = {
  lunch: 'lunch',
  free: 'nothing on',
  setting: (setting: string): string => `Setting: ${setting.replaceAll('-', ' ')}.\n`,
  plain: (stations: readonly string[]): string =>
    stations.length === 0
      ? ''
      : `No kind is said for ${stations.join(', ')}: counted as tables with paper. Say kind: in the day file.\n`,
  strictest: (
    bells: string,
    {
      totalAdults,
      supervisors,
      practitioners,
    }: {
      readonly totalAdults: number;
      readonly supervisors: number;
      readonly practitioners: number;
    },
  ): string =>
    `\nAt least ${totalAdults} adults at the strictest moment, ${bells}: ${supervisors} supervisors, ${practitioners} practitioners. Adults who come with the groups count among the supervisors.\n`,
  named: (adults: number): string =>
    adults === 0 ? '' : `The day file names ${adults} adults of its own.\n`,
  part: ({ groups, children, youngest, where, adults, because, refusals }: Part): string =>
    `\n${groups.join(', ')} (${children} pupils from age ${youngest}), ${where}: ${adults}\n${because.map((line) => `  - ${line}\n`).join('')}${refusals.map(({ id, outcome, say }) => `  ! ${id} (${outcome}): ${say}\n`).join('')}`,
  slots: (rows: readonly { readonly bells: string; readonly adults: number }[]): string =>
    `\nEach slot\n${rows.map(({ bells, adults }) => `  ${bells}  ${adults}\n`).join('')}`,
  noPlan: (file: string): string =>
    `${file} has no timetable to count adults by: see why with pitlore day ${file}`,
};
