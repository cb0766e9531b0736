import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { writeSvg } from '../../shared/drawing/index.ts';
import { nearest } from '../../shared/lesson/index.ts';
import { drawable } from '../../shared/library/index.ts';
import { commandWords } from '../../shared/words/en/command.ts';
import { readLibrary } from '../loaders/read-library.ts';
import type { ExitCode, Io } from './io.ts';

const VIEWS = ['face', 'full', 'lying'] as const;
const MM_PER_PX = 0.25;

/** `draw FINDID [--view face|full|lying] [--mm-per-px N]`: a find's drawing as SVG. */
export async function draw(argv: readonly string[], io: Io): Promise<ExitCode> {
  const { values, positionals } = parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: { view: { type: 'string' }, 'mm-per-px': { type: 'string' }, content: { type: 'string' } },
  });
  const [id] = positionals;
  const view = VIEWS.find((known) => known === (values.view ?? 'full'));
  const mmPerPx = Number(values['mm-per-px'] ?? MM_PER_PX);
  if (id === undefined || view === undefined || !(mmPerPx > 0)) {
    io.complain(commandWords.drawNeeds(VIEWS));
    return 2;
  }
  const { library } = await readLibrary(values.content ?? join(io.home, 'content'), join(io.home, 'content'));
  const finds = library.sites.flatMap(({ pits }) => pits.flatMap((pit) => pit.finds));
  const find = finds.find((candidate) => candidate.id === id);
  if (find === undefined) {
    const known = finds.map((candidate) => candidate.id);
    io.complain(commandWords.findUnknown(id, nearest(id, known), known.length));
    return 1;
  }
  io.write(writeSvg(drawable(find), { view, detail: 'large', scaleBar: view !== 'lying' }, mmPerPx));
  return 0;
}
