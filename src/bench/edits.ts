import {
  addPart,
  changeBlock,
  changeHead,
  changeProse,
  movePart,
  outline,
  removePart,
  type Change,
  type YamlPiece,
} from '../../shared/bench/index.ts';
import { readYaml, type Path } from '../../shared/lesson/index.ts';
import { bench as words } from '../../shared/words/en/bench.ts';
import { say } from '../../shared/words/index.ts';
import type { BenchStore } from '../stores/bench.ts';
import type { Caret } from './FileText.tsx';

/** What may be done to the visit from its section and its forms; each is a change of the one text. */
export interface Edits {
  /** A change of the head (null) or of a part. */
  readonly change: (part: number | null, change: Change) => void;
  readonly prose: (part: number, text: string) => void;
  readonly move: (part: number, by: -1 | 1, name: string) => void;
  readonly remove: (part: number, name: string) => void;
  /** Puts in words (null) or a block of a kind. */
  readonly add: (at: number, kind: string | null) => void;
  readonly goToFile: (piece: YamlPiece, path: Path) => void;
}

interface Around {
  readonly bench: BenchStore;
  /** Said to readers of the screen, and shown. */
  readonly tell: (sentence: string) => void;
  readonly setCaret: (caret: Caret) => void;
  /** A block of a kind to begin from, as it stands in a file. */
  readonly starter: (kind: string) => string;
}

/** The edits of one bench. */
export function createEdits({ bench, tell, setCaret, starter }: Around): Edits {
  const textNow = (): string => bench.$visit.get()?.history.text ?? '';
  const write = (text: string | null, cause: string, told?: string): void => {
    if (text === null) tell(words.cannotWrite);
    else {
      bench.write(text, cause);
      if (told !== undefined) tell(told);
    }
  };
  return {
    change: (part, change) => {
      const text = textNow();
      const cause = `${part ?? 'head'} ${change.do} ${JSON.stringify(change.path)}`;
      write(part === null ? changeHead(text, change) : changeBlock(text, part, change), cause);
    },
    prose: (part, prose) => {
      write(changeProse(textNow(), part, prose), `prose ${part}`);
    },
    move: (part, by, name) => {
      const text = textNow();
      const told = say(words.moved, { name, place: part + by + 1, count: outline(text).parts.length });
      write(movePart(text, part, by), 'move', told);
    },
    remove: (part, name) => {
      write(removePart(textNow(), part), 'remove', say(words.removed, { name }));
    },
    add: (at, kind) => {
      const source = kind === null ? words.newProse : starter(kind);
      const told = say(words.added, { name: kind ?? words.prose, place: at + 1 });
      write(addPart(textNow(), at, source), 'add', told);
    },
    goToFile: ({ yaml, yamlFrom, indent }, path) => {
      const { from, to } = readYaml(yaml).locate(path);
      const lines = yaml.slice(0, from).split('\n').length;
      setCaret({
        from: yamlFrom + from + indent.length * lines,
        to: yamlFrom + to + indent.length * yaml.slice(0, to).split('\n').length,
      });
    },
  };
}
