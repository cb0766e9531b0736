export { appendItem, type Item } from './append-item.ts';
export { changeData, isSame, type Change } from './change.ts';
export { changeYaml } from './change-yaml.ts';
export { addPart, changeBlock, changeHead, changeProse, movePart, removePart } from './edit-lesson.ts';
export { findInName } from './find-in-name.ts';
export { begin, keptPast, redo, undo, write, type History } from './history.ts';
export { KEPT_VERSION, readKept, type KeptVisit, type ReadKept } from './kept-visit.ts';
export { NO_FILES, type OwnFiles } from './own-files.ts';
export {
  carryPhotos,
  ownPhotos,
  photosWeight,
  putPhoto,
  takeOutPhoto,
  type OwnPhoto,
  type PhotoToPut,
} from './own-photos.ts';
export { addSite, siteFileOf, siteOf } from './own-site.ts';
export { outline, type BlockPiece, type Outline, type ProsePiece, type YamlPiece } from './outline.ts';
export { takeBack, takeIn, type Taking } from './taking.ts';
export { writeBlock } from './write-block.ts';
