import type { ActivityOf } from '../../shared/activities/index.ts';
import { catalogues } from '../../shared/words/index.ts';

const words = catalogues.en.estimatePapers;

type GivenId = ActivityOf<'estimate'>['given'][number]['id'];

const names: Readonly<Record<GivenId, string>> = {
  size: words.givenSize,
  stone: words.givenStone,
  extent: words.givenExtent,
  grinder: words.givenGrinder,
  finish: words.givenFinish,
  preform: words.givenPreform,
  skill: words.givenSkill,
  diameter: words.givenDiameter,
  wood: words.givenWood,
  axe: words.givenAxe,
  stakes: words.givenStakes,
  nodule: words.givenNodule,
};

/** The name of something an estimate is given. @example givenWords('skill') // 'Made by' */
export const givenWords = (id: GivenId): string => names[id];
