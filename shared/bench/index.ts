export { changeData, isSame, type Change } from './change.ts';
export { changeYaml } from './change-yaml.ts';
export { addPart, changeBlock, changeHead, changeProse, movePart, removePart } from './edit-lesson.ts';
export { outline, type BlockPiece, type Outline, type ProsePiece, type YamlPiece } from './outline.ts';
