import type { UnscoredKind } from '../kind.ts';
import type { TalkActivity } from './activity.ts';
import { compileTalk } from './compile.ts';
import { paperTalk } from './paper.ts';
import { talkPlay, type TalkPlay } from './play.ts';
import { talkBlock, type TalkBlock } from './schema.ts';
import { startTalk } from './starter.ts';
import { sampleTalk, tellTalk, type TalkTold } from './tell.ts';

export const talk: UnscoredKind<TalkBlock, TalkActivity, TalkPlay, TalkTold> = {
  isScored: false,
  starter: startTalk,
  schema: talkBlock,
  playSchema: talkPlay,
  compile: compileTalk,
  tell: tellTalk,
  sample: sampleTalk,
  paper: paperTalk,
  // What happens in a talk only someone in the room can vouch for.
  shows: () => [],
};
