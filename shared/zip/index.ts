export {
  looksLikeZip,
  readZip,
  type FolderFile,
  type Limits,
  type ZipFault,
  type ZipRead,
} from './read-zip.ts';
export { readUtf8, writeUtf8 } from './utf-8.ts';
export { writeZip } from './write-zip.ts';
