const many = (count: number, one: string, other = `${one}s`): string =>
  `${count} ${count === 1 ? one : other}`;

/** What a day file made from a lesson says: names to be written over, its note, and its comments. */
export const lessonDayWords = {
  // What cannot be a station, and why
  refused: (name: string, say: string): string => `“${name}” is left out. ${say}`,
  tooMany: (name: string, most: number): string =>
    `“${name}” is left out. A day holds ${most} stations at most.`,
  noStation: (title: string): string =>
    `“${title}” has nothing that can be a station of a day: put an activity in, or say in its head what runs beside it.`,

  // Stand-ins
  stationId: 'station',
  groupId: (number: number): string => `group-${number}`,
  groupName: (number: number): string => `Group ${number}`,
  practitionerId: (number: number): string => `practitioner-${number}`,
  practitionerRole: (station: string): string => `Practitioner: ${station}`,
  helperId: (number: number): string => `helper-${number}`,
  helperRole: (number: number): string => `Helper ${number}`,
  places: { tables: 'tables', rope: 'roped ground', trench: 'trench', digBox: 'dig box' },

  // What stands at the head of the file
  title: (lesson: string): string => `A day with “${lesson}”`,
  titleAgain: (title: string, number: number): string => `${title} (${number})`,
  note: (lesson: string): string =>
    `Made from the lesson “${lesson}” as it stood then; what is changed in the lesson later is not carried over. Bells, groups, pupils, adults, places and walks are stand-ins: write your own over them.`,
  noteShort: (slots: number): string =>
    `A school day has room for ${many(slots, 'slot')} of this length, and not every group can meet every station in them: take a group or a station out, or make the day longer.`,
  made: (lesson: string, file: string): readonly string[] => [
    `Made from the lesson “${lesson}” (${file}) as it stood then.`,
    'What is changed in the lesson later is not carried over: make a new day from it.',
    'A stand-in is a guess of ours (ASM), to be written over. All else is what the lesson and the safety rules say.',
  ],
  slots: (minutes: number, isSaid: boolean): readonly string[] => [
    isSaid
      ? `The times are stand-ins. A slot lasts ${many(minutes, 'minute')}, as the longest activity of the lesson does.`
      : `The times are stand-ins, the length of a slot among them: the lesson says no minutes.`,
  ],
  setting: (isSaid: boolean): string =>
    isSaid ? 'as the lesson says' : 'a stand-in: the lesson says no setting, and is held as in a classroom',
  walking: 'Minutes on foot: stand-ins, as the places are.',
  mustSee: 'A stand-in: every group meets every station once.',
  groups: (ages: string): readonly string[] => [
    `Groups, pupils and times are stand-ins. The ages are those of the lesson: ${ages}.`,
  ],
  stations: [
    'What each is, holds and asks of adults is as the lesson and the safety rules say; each place is a stand-in.',
    'Adults are for as many pupils as it holds: supervisors, and whoever does the work where there is one.',
  ],
  stationBehind: (minutes: number | null, isOfStrictest: boolean): string =>
    (minutes === null ? 'the lesson says no minutes' : `${many(minutes, 'minute')} in the lesson`) +
    (isOfStrictest ? '; edge and exposure are of the piece that asks for the oldest child' : ''),
  adults: [
    'Stand-ins: enough for all stations at once. Adults who come with a group may be among the helpers.',
    'Two adults with every group, always.',
  ],
  noAdults: 'Adults are not planned here: all stations at once ask for more than a day file names.',
} as const;
