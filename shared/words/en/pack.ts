/** What a pack says beside its lesson, and what the verb that makes it says. */
export const packWords = {
  withoutScript:
    'This lesson needs a browser that runs scripts. It asks for nothing from elsewhere: everything it needs is in this file.',
  foot: 'One file, and no network needed. What you do stays on this device; no name is asked for.',
  invented: (site: string): string => `${site} is invented: its pits, finds, numbers and people.`,
  resultsTitle: 'Bring back what was done',
  resultsLead:
    'A small file of the answers given on this device: which activity, and what was answered. No names, and nothing goes anywhere by itself.',
  resultsSave: 'Save the answers as a file',
  resultsNone: 'Read a record card first: then there is something to save.',
  resultsSaved: {
    one: 'Saved {count} activity as {file}. Look among your downloads.',
    other: 'Saved {count} activities as {file}. Look among your downloads.',
  },
  safetyTitle: 'Safety',
  papersTitle: 'Papers',
  papersLead:
    'Each is in this file and prints by itself, on A4 or Letter. The answers are in the teacher notes: show them to nobody before the end.',
  papersShow: 'Show',
  papersHide: 'Hide',
  papersPrint: 'Print',
  needs: (): string => 'pack needs a lesson: pitlore pack FILE [--out PACK.html]',
  written: (file: string, kilobytes: number, hasFonts: boolean): string =>
    `wrote ${file}: ${kilobytes} kB compressed${hasFonts ? '' : ', with the faces of the device it opens on'}. Open it by double click.\n`,
  tooLarge: (kilobytes: number, most: number): string =>
    `the pack is ${kilobytes} kB compressed, over the ${most} kB a pack is held to: it opens, slowly on an old tablet`,
  exists: (file: string): string =>
    `${file} is there already; nothing was written. Choose another name with --out.`,
};
