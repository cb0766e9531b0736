import { shuffle } from '../../chance/index.ts';
import { nearest } from '../../lesson/nearest.ts';
import type { Fault } from '../../lesson/problem.ts';
import type { Source } from '../../library/library.ts';
import { talkProblems } from '../../words/en/talk-problems.ts';
import type { CompileContext, Compiled } from '../kind.ts';
import type { TalkActivity, TalkChoice, VoiceFrom } from './activity.ts';
import type { TalkBlock } from './schema.ts';

const PRACTICE = 'common-practice';
const INVENTED = 'invented';

/** Where a voice comes from; null where the work is not in the list. */
function voiceFrom(written: string, sources: readonly Source[]): VoiceFrom | null {
  if (written === PRACTICE) return { from: 'practice' };
  if (written === INVENTED) return { from: 'invented' };
  const source = sources.find(({ id }) => id === written);
  return source === undefined ? null : { from: 'work', citation: source.citation, status: source.status };
}

const lettered = (list: readonly string[]): readonly TalkChoice[] =>
  list.map((words, index) => ({ id: String.fromCodePoint(97 + index), words }));

/** Compiles a talk: every voice says where it comes from, and no stance is marked as the right one. */
export function compileTalk(
  id: string,
  block: TalkBlock,
  { library, chance }: CompileContext,
): Compiled<TalkActivity> {
  const { title, minutes, question, voices, evidence, stances = [] } = block;
  const faults: Fault[] = [];
  const heard = voices.flatMap(({ who, says, source: written }, index) => {
    const source = voiceFrom(written, library.sources);
    if (source !== null) return [{ who, says, source }];
    const known = [...library.sources.map((each) => each.id), PRACTICE, INVENTED];
    const near = nearest(written, known);
    faults.push({
      code: 'source-unknown',
      grade: 'error',
      path: ['voices', index, 'source'],
      ...talkProblems.sourceUnknown(written, near, known),
      ...(near === null ? {} : { replacement: near }),
    });
    return [];
  });
  for (const [index, stance] of stances.entries()) {
    if (stances.findIndex((other) => other.toLowerCase() === stance.toLowerCase()) === index) continue;
    const words = talkProblems.stanceRepeated(stance);
    faults.push({ code: 'stance-repeated', grade: 'error', path: ['stances', index], ...words });
  }
  if (faults.length > 0) return { activity: null, faults };
  const activity: TalkActivity = {
    id,
    kind: 'talk',
    title,
    minutes,
    question,
    voices: shuffle(chance, heard),
    evidence: lettered(evidence),
    stances: lettered(stances),
  };
  return { activity, faults };
}
