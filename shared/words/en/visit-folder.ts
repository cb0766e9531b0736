import type { Entry } from '../entry.ts';

/** What the Bench says of visits once they are saved as one file or opened from one; read only then. */
export const visitFolder = {
  // Saving
  saved: '{file} is saved. Look among your downloads. Its READ-ME says where to put it.',
  savedSeveral:
    '{files} are saved: together they are more than is opened at once. Look among your downloads.',
  savedPhotosLost: {
    one: '{count} photograph of {name} is no longer on this device, so it is not in the file.',
    other: '{count} photographs of {name} are no longer on this device, so they are not in the file.',
  },
  // Why a visit of a shelf has a folder of its own
  apartName: '{name} has a folder of its own, {folder}: another visit has the same name.',
  apartDiffers:
    '{name} has a folder of its own, {folder}: by the site {site} it does not mean the same finds as {other}.',
  apartUnnamed:
    '{name} has a folder of its own, {folder}: it carries what does not go with the site that its lesson names ({files}).',

  // Opening
  opened: '{name} is on the bench, as a new visit.',
  openedWith: '{name} is on the bench, as a new visit, with {what}.',
  openedBoth: '{files} and {photos}',
  openedFiles: { one: '{count} file of finds', other: '{count} files of finds' },
  openedPhotos: { one: '{count} photograph', other: '{count} photographs' },
  openedSeveral: {
    one: '{count} visit was taken in. {name} is on the bench.',
    other:
      '{count} visits were taken in, each as a new one. {name} is on the bench, the others are on the shelf.',
  },
  openedNone: 'Nothing of {file} was taken. Your visits are as they were.',
  sameName: 'There was a visit called {name} before; it is still on the shelf.',
  notKept: 'This device would not keep {names}: free some room, and open the file again.',

  // A zip as a whole
  noZip:
    '{file} is not a zip, whatever its name says. Nothing was changed. Ask for it again, or zip the folder anew.',
  broken:
    '{file} is cut short or damaged, so nothing was taken from it. Copy it again, or ask for it again; it may not have come through whole.',
  largerThanTold:
    '{file} holds more than it says it does, so it was not unpacked. Zip the folder anew on your own device.',
  tooLarge:
    '{file} would be {received} MB when unpacked, and at most {most} MB are taken at once. Take out what is no lesson, site, finds table or photograph, or zip it in parts.',
  tooLargeZip:
    '{file} is {received} MB, and at most {most} MB are taken at once. Take out what is no lesson, site, finds table or photograph, or zip it in parts.',
  tooMany: '{file} holds {received} files, and at most {most} are taken at once. Zip it in parts.',
} as const satisfies Readonly<Record<string, Entry>>;

/** Why one file of a zip or a folder was left out, and what to do about it. */
export const whyLeft = {
  outside: 'Its path leads out of the folder, so it was not touched.',
  'no-part':
    'It is no lesson, site, finds table or photograph where these lie: the Bench keeps nothing else.',
  'no-text': 'It is not a text in UTF-8. Save it again as UTF-8, and zip the folder anew.',
  'too-long': 'It is longer than a megabyte, which no lesson file is.',
  twice: 'Another file of the same name was there before it. Give it a name of its own.',
  'no-lesson':
    'There is no lesson beside it. Put a lesson file in the folder “lessons”, or bring a finds list under Finds in.',
  'not-named':
    'No lesson in this folder names it. Write its site in the head of a lesson, and zip the folder anew.',
  'photo-name':
    'A site file cannot name it. Use letters, digits and hyphens alone, and end in .jpg, .png or .webp.',
  'photo-turned':
    'It says that it must be turned to stand upright. Turn it in a picture program, save it, and zip the folder anew.',
  empty: 'It is an empty file. Copy the picture again.',
  'not-a-picture': 'It is no picture, whatever its name says.',
  'other-picture': 'It is a picture of a kind that not every browser shows. Save it as a JPEG.',
  broken: 'It is a picture that is cut short or damaged. Copy it again.',
  'too-many-points':
    'It has a hundred million points or more. Save it smaller: 1,600 along its longer side are plenty.',
  locked: 'It is locked with a password. Zip the folder anew without one.',
  'packed-otherwise':
    'It is packed in a way that is not read here. Zip the folder anew with your system’s own “Compress” or “Send to”.',
  damaged: 'It is damaged: its bytes are not those that were packed. Copy the zip again.',
} as const;

/** A visit as the note inside a zip tells of it. */
interface Noted {
  readonly name: string;
  /** Where it lies: '' beside the note. */
  readonly folder: string;
  /** Why it lies apart, as a sentence; null where it does not. */
  readonly why: string | null;
  /** The site whose finds it goes by and does not carry; null where it carries them. */
  readonly goesBy: string | null;
}

/** The note inside a zip, as lines: what it is and where to put it. */
export function readMe(visits: readonly Noted[], files: readonly string[]): readonly string[] {
  const isOne = visits.length === 1;
  const apart = visits.filter(({ folder }) => folder !== '');
  const lacking = visits.filter(({ goesBy }) => goesBy !== null);
  return [
    isOne ? `PITLORE: THE VISIT ${visits[0]?.name ?? ''}` : `PITLORE: ${visits.length} VISITS OF A SHELF`,
    '',
    'What this is',
    isOne
      ? 'A visit built on the Bench of Pitlore: its lesson file, with the finds and photographs that were brought to it.'
      : 'Visits built on the Bench of Pitlore: their lesson files, with the finds and photographs that were brought to them.',
    '',
    'To go on with it on the Bench, on any device',
    'Keep the zip file as it is. On the page Bench, under "On the shelf", press "Open a lesson file or a saved visit" and choose',
    'the zip file, or drop it on the page. It comes as a new visit: nothing that is there is changed.',
    '',
    'To have it in a site of your own',
    'Unpack the zip file into the folder "content" of the site. That is all: "lessons" and "sites" join the folders of that name.',
    'Where your system makes a folder of its own from the zip, move what lies inside that folder. Where it asks whether to',
    'replace a file, look at both first.',
    ...(apart.length === 0
      ? []
      : [
          '',
          'Folders of their own',
          ...apart.map(({ why }) => why ?? ''),
          'For these, copy what lies inside such a folder into "content", not the folder itself.',
        ]),
    ...(lacking.length === 0
      ? []
      : [
          '',
          'Not in here',
          ...lacking.map(
            ({ name, goesBy }) =>
              `${name} goes by the finds of the site ${goesBy ?? ''}, which must be there already where it is opened.`,
          ),
        ]),
    '',
    'What lies in it',
    ...files,
    '',
  ];
}
