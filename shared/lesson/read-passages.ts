import { cutLesson } from './cut-lesson.ts';
import { blockPassages, type Passage } from './passages.ts';
import { lineMap } from './point.ts';
import { readBody } from './read-body.ts';
import { readYaml } from './read-yaml.ts';

/**
 * The words pupils read in a lesson file, in order: its prose, and the titles, questions, hints and reasons of its
 * blocks. A file without a head is read as prose throughout. Marks of Markdown are blanked, so that places hold.
 */
export function readPassages(text: string): readonly Passage[] {
  const { body } = cutLesson(text);
  const { prose, parts } = readBody({ file: '', lines: lineMap(text), shift: 0 }, body.text, body.offset);
  const ofBlocks = parts.flatMap((part): readonly Passage[] => {
    if (part.part === 'prose') return [];
    const { data, locate } = readYaml(part.block.yaml);
    const { toFile } = part.block;
    return blockPassages(
      data,
      (path) => {
        const { from, to } = locate(path);
        return { from: toFile(from), to: toFile(to) };
      },
      text,
    );
  });
  return [...prose, ...ofBlocks].toSorted((a, b) => a.offset - b.offset);
}
