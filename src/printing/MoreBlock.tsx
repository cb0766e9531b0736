import type { ComponentType } from 'preact';
import { CardBacks, CardPage, EmptyPage } from './card-pieces.tsx';
import { PupilSlips, TeacherSlip } from './slip-pieces.tsx';
import { Caution, Columns, Facts, Form, Grid, Lists, Marked } from './plain-pieces.tsx';
import { Hazards, Never, Risk, Sign, Station } from './safety-pieces.tsx';
import { Helper, Poster } from './table-pieces.tsx';
import type { MoreBlock as More, MoreName, PrintBlocks } from './print-view.ts';

/** Every piece that packs do not have with what shows it: neither compiles without the other. */
const shown: { readonly [Name in MoreName]: ComponentType<PrintBlocks[Name]> } = {
  caution: Caution,
  grid: Grid,
  form: Form,
  hazards: Hazards,
  marked: Marked,
  columns: Columns,
  facts: Facts,
  never: Never,
  station: Station,
  lists: Lists,
  risk: Risk,
  sign: Sign,
  'teacher-slip': TeacherSlip,
  'pupil-slips': PupilSlips,
  helper: Helper,
  poster: Poster,
  'card-page': CardPage,
  'card-backs': CardBacks,
  'empty-page': EmptyPage,
};

export const isMore = (block: { readonly block: string }): block is More => block.block in shown;

/** A piece of a paper that packs do not have. */
export function MoreBlock(block: More) {
  // The table pairs each name with its own component; the type cannot follow a pair through a union.
  const Shown = shown[block.block] as ComponentType<More>;
  return <Shown {...block} />;
}
