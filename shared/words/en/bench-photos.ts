import type { Entry } from '../entry.ts';

/** The words of the Bench about the lead's own photographs. */
export const benchPhotos = {
  title: 'Photographs',
  lead: 'Show your own pictures of finds in the place of our drawings, where a find is looked at closely. Each is turned upright and shrunk here, on this device; what its file tells of place, device and time is left out. Your own files stay as they are. Take no picture with people in it, and be sure that you may show it.',
  needsVisit: 'Begin a visit first: photographs are kept with it.',
  elsewhere: 'The visit is open in another tab: take it over first.',

  // Taking in
  choose: 'Choose pictures',
  camera: 'Take one with the camera',
  dropHere: 'or drop pictures here',
  takingIn: 'Looking at {name} …',
  takingInMore: 'Looking at {name}; {count} to go …',
  ready: '{name} is ready. {about}',
  notTakenIn: '{name} is not taken in: see why below.',
  takenIn: '{width} by {height} points, {kilobytes} kB; the file has {was} kB.',
  refusedTitle: 'Not taken in',
  refused:
    '{name}: expected {expected}; received {received}. To mend it, {mend}. The file itself is left as it is, and nothing else is lost.',
  refusedClear: 'Clear this list',
  tooLarge: {
    expected: 'a file of at most {most} MB',
    received: '{megabytes} MB',
    mend: 'save it smaller in a program for pictures and choose that',
  },
  cannotOpen: {
    expected: 'a picture that this browser can open',
    received: 'one that it cannot',
    mend: 'save it as a JPEG and choose that',
  },
  tooFine: {
    expected: 'a picture that can be shrunk to {most} kB',
    received: 'one so full of small marks that it cannot',
    mend: 'cut it down to the find itself and choose that',
  },

  // What its file told
  carriedNone: 'The file said nothing of place, device or time.',
  carried: 'The file said {told}: that is left out.',
  carriedUnknown: 'It is drawn anew: whatever its file said of place, device and time is left out.',
  toldPlace: 'where it was taken',
  toldDevice: 'on what device',
  toldTime: 'when',
  toldOther: 'other things about it',

  // Before it is in the visit
  waitingTitle: {
    one: '{count} picture is not in the visit yet',
    other: '{count} pictures are not in the visit yet',
  },
  changeTitle: 'The photograph of {find}',
  preview: 'As it will stand in the lesson',
  site: 'Site',
  find: 'Which find does it show?',
  findNone: 'Choose a find',
  findOption: '{find}: {type}, {length} mm',
  findOptionHas: '{find}: {type}, {length} mm (has a photograph)',
  pit: 'Pit {pit}',
  replaces: '{find} has a photograph already: this one takes its place.',
  shows: 'What is to be seen in it?',
  showsHint:
    'For those who hear the lesson: colour, shape, marks. Not what it is; pupils may be asked that. At most {most} characters.',
  showsTells: 'This says “{word}”, which pupils may be asked to find out. Is that meant?',
  credit: 'Who took it, or owns it?',
  creditHint: 'Stands under it wherever it is shown: “Photograph: Wendle Marsh Field School”.',
  findMissing: 'Choose the find it shows: without it, the picture has no place in a lesson.',
  showsMissing: 'Write what is to be seen: pupils who cannot see it hear this instead.',
  creditMissing: 'Write who took it or owns it: a photograph is not shown without.',
  another: 'Choose another picture for it',
  put: 'Put it in the visit',
  putChange: 'Keep the change',
  leave: 'Leave it out',
  leaveChange: 'Leave it as it was',
  left: '{name} is left out.',
  putIn: 'The photograph of {find} is in the visit.',

  // The scale bar
  bar: 'Show a scale bar with it',
  barHint:
    'Put the two rings on the two ends of the find’s length, the longer way. The record says that {find} is {length} mm long, so its scale is known from that. Drag a ring, or go to it and press the arrow keys; with Shift held they move by one point.',
  barHintNone:
    'Put the two rings on the two ends of the find’s length, the longer way. Drag a ring, or go to it and press the arrow keys; with Shift held they move by one point.',
  barFirst: 'One end of the length',
  barSecond: 'The other end of the length',
  barPlace: '{x} across, {y} down',
  barLengthKnown:
    'The find’s length is {points} of the picture’s points, so the whole picture shows {width} mm from side to side.',
  barLength: 'The find’s length is {points} of the picture’s points.',

  // What is in the visit
  listTitle: { one: '{count} photograph in the visit', other: '{count} photographs in the visit' },
  listNone: 'No photograph is in the visit yet.',
  listFind: '{find}, {type}',
  listSite: 'of {site}',
  listShows: 'Shows: {shows}',
  listCredit: 'Credit: {credit}',
  listWeight: '{kilobytes} kB, {scale}',
  withBar: 'with a scale bar',
  withoutBar: 'without a scale bar',
  listGone: 'Its picture is no longer on this device. Choose it again, or take it out.',
  chooseAgain: 'Choose it again',
  change: 'Change the photograph of {find}',
  changeShort: 'Change',
  out: 'Take out the photograph of {find}',
  outShort: 'Take out',
  taken: 'The photograph of {find} is out. Its drawing stands instead.',
  putBack: 'Put it back',
  weight: '{site}: {sum} of at most {most} kB.',
  weightNear: 'There is little room left: about {count} more of the heaviest.',
  tooHeavy:
    'There is room for {most} kB of photographs at a site, and with this one they would be more. Take another out first; this one stays here meanwhile.',
  unwritten:
    'The site file could not be written. Save it as a file and mend it; the picture stays here meanwhile.',
  noSite: 'The finds of {site} could not be read. The picture stays here meanwhile; try again.',
  problemsTitle: 'To mend in your own files',
  problemAt: '{file}, line {line}, place {column}:',
} as const satisfies Readonly<Record<string, Entry | Readonly<Record<string, string>>>>;
