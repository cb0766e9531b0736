export type { CarriedVisit } from './carried-visit.ts';
export { MOST_AT_ONCE, MOST_ZIP_BYTES } from './limits.ts';
export { openZip, type WhyLeftOfZip, type ZipOpened } from './open-zip.ts';
export { lotsWithin, saveZip, type SavedZip } from './save-zip.ts';
export { tellApart } from './tell.ts';
export { visitsOfFolder, type FolderRead } from './visits-of-folder.ts';
