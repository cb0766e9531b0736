import type { Library } from '../../library/library.ts';
import type { Asks } from '../kind.ts';
import type { HandleActivity } from './activity.ts';

const SEVERAL_ROCKS = 3;

/** What a handling session asks: pieces met under an adult's eye, and what the stuff of a real one or a copy of it is. */
export function asksHandle({ pieces }: HandleActivity, { vocabulary }: Library): Asks {
  const met = pieces.filter(({ exposure }) => exposure !== 'look');
  // A cast has the shape of the thing and nothing of its stuff.
  const ofStuff = met.filter(({ is }) => is !== 'blunt-replica');
  const rocks = new Set(
    vocabulary.materials
      .filter(({ id, isRock }) => isRock && ofStuff.some(({ drawing }) => drawing.material === id))
      .map(({ id }) => id),
  );
  return {
    met: [
      ...(met.length > 0 ? ['real-objects', 'finds-as-evidence'] : []),
      ...(ofStuff.length > 0 ? ['materials'] : []),
      ...(ofStuff.some(({ prompts }) => prompts.some(({ sense }) => sense === 'feel')) ? ['properties'] : []),
      ...(rocks.size >= SEVERAL_ROCKS ? ['rocks'] : []),
    ],
    things: pieces.length,
  };
}
