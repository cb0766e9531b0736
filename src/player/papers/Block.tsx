import type { ComponentType } from 'preact';
import { CompareTally } from '../CompareTally.tsx';
import { EstimateSubject } from '../EstimateSubject.tsx';
import { WorkStrip } from '../WorkStrip.tsx';
import { Cards } from './Cards.tsx';
import { Choices, Numbers, Places, Room, Scale, Ticks, Trays } from './hand-blocks.tsx';
import type { Blocks, BlockView } from './paper-view.ts';
import { Pieces } from './Pieces.tsx';
import { PitDrawn } from './PitDrawn.tsx';
import { Blanks, Table } from './tables.tsx';
import { Heading, List, Terms, Text, Voices } from './text-blocks.tsx';

/** Every piece of a paper with what shows it: neither compiles without the other. */
const shown: { readonly [Name in keyof Blocks]: ComponentType<Blocks[Name]> } = {
  text: Text,
  heading: Heading,
  list: List,
  terms: Terms,
  voices: Voices,
  table: Table,
  blanks: Blanks,
  pit: PitDrawn,
  room: Room,
  numbers: Numbers,
  trays: Trays,
  ticks: Ticks,
  choices: Choices,
  places: Places,
  scale: Scale,
  pieces: Pieces,
  subject: EstimateSubject,
  tally: CompareTally,
  strip: WorkStrip,
  cards: Cards,
};

/** A piece of a paper. */
export function Block(block: BlockView) {
  // The table pairs each name with its own component; the type cannot follow a pair through a union.
  const Shown = shown[block.block] as ComponentType<BlockView>;
  return <Shown {...block} />;
}
