/** What a pack says beside its lesson, and what the verb that makes it says. */
export const packWords = {
  withoutScript:
    'This lesson needs a browser that runs scripts. It asks for nothing from elsewhere: everything it needs is in this file.',
  foot: 'One file, and no network needed. What you do stays on this device; no name is asked for.',
  invented: (site: string): string => `${site} is invented: its pits, finds, numbers and people.`,
  needs: (): string => 'pack needs a lesson: pitlore pack FILE [--out PACK.html]',
  written: (file: string, kilobytes: number, hasFonts: boolean): string =>
    `wrote ${file}: ${kilobytes} kB compressed${hasFonts ? '' : ', with the faces of the device it opens on'}. Open it by double click.\n`,
  tooLarge: (kilobytes: number, most: number): string =>
    `the pack is ${kilobytes} kB compressed, over the ${most} kB a pack is held to: it opens, slowly on an old tablet`,
  exists: (file: string): string =>
    `${file} is there already; nothing was written. Choose another name with --out.`,
};
