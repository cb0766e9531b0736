import { useState } from 'preact/hooks';
import type { Outline } from '../../shared/bench/index.ts';
import { bench as words } from '../../shared/words/en/bench.ts';
import { AddPart } from './AddPart.tsx';
import { Layer } from './Layer.tsx';
import type { LessonFields } from './field.ts';
import type { Edits } from './edits.ts';

interface Props {
  readonly read: Outline;
  readonly fields: LessonFields;
  readonly edits: Edits;
  readonly offered: (key: string) => string | null;
}

/** The visit as a section: the head on top, then each part a layer, as thick as it is long. */
export function VisitParts({ read, fields, edits, offered }: Props) {
  const [open, setOpen] = useState<number | 'head' | null>(null);
  const toggle = (which: number | 'head') => (): void => {
    setOpen(open === which ? null : which);
  };
  const goTo = (which: number): void => {
    setOpen(open === null || open === 'head' ? open : which);
  };
  return (
    <>
      <ol class="layers">
        <Layer
          name={words.head}
          about={words.headMeans}
          minutes={null}
          piece={{ what: 'head', head: read.head }}
          fields={fields.head}
          isOpen={open === 'head'}
          toggle={toggle('head')}
          edits={edits}
          offered={offered}
        />
        {read.parts.map((part, index) => {
          const minutes = part.part === 'block' ? part.data?.['minutes'] : null;
          const title = part.part === 'block' ? part.data?.['title'] : null;
          return (
            <Layer
              key={index}
              name={
                part.part === 'prose'
                  ? words.prose
                  : typeof title === 'string' && title !== ''
                    ? title
                    : words.blockUntitled
              }
              about={part.part === 'prose' ? part.text.replaceAll(/\s+/g, ' ').slice(0, 140) : part.kindName}
              minutes={typeof minutes === 'number' && minutes > 0 ? minutes : null}
              piece={{ what: 'part', part, number: index, count: read.parts.length }}
              fields={part.part === 'block' ? (fields.kinds[part.kindName] ?? []) : []}
              isOpen={open === index}
              toggle={toggle(index)}
              edits={{
                ...edits,
                move: (number, by, name) => {
                  edits.move(number, by, name);
                  goTo(number + by);
                },
                remove: (number, name) => {
                  edits.remove(number, name);
                  setOpen(null);
                },
              }}
              offered={offered}
            />
          );
        })}
      </ol>
      <AddPart
        kinds={Object.keys(fields.kinds)}
        add={(kind) => {
          const place = read.parts.length;
          edits.add(place, kind);
          setOpen(place);
        }}
      />
    </>
  );
}
