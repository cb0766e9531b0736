import type { Entry } from '../entry.ts';

/**
 * Why a swap does not happen, as the trader says it or as the pupil is told. A key is the reason's code, with `-them`
 * or `-pupil` where either side may be the reason.
 */
export const barterRefusals = {
  'trader-unknown': 'Nobody of that name is here.',
  'good-unknown': 'Nobody here knows that thing.',
  'nothing-passes': 'Choose what you give and what you take.',
  'same-both-ways': '“The same for the same? Then nothing changes.”',
  'too-many-things': {
    one: '“One thing at a time on one side, please.”',
    other: '“No more than {count} things on one side, and one on the other.”',
  },
  'does-not-have-them': '“I do not have {thing} to give.”',
  'does-not-have-pupil': 'You do not have that to give.',
  promised: '“I owe you {thing} for your gift. I cannot swap it away.”',
  spoiled: '{Thing}: gone off by now. Nobody wants that.',
  'only-given': '“{Thing}: we never swap that. We only give it.”',
  'door-shut': '“I swap with those who have given me something first.”',
  'takes-no-gifts': '“I cannot take a gift. I would have nothing to give you back.”',
  'owes-already': '“I still owe you {thing}. Let me give you that first.”',
  'nothing-owed': '“I owe you nothing. What do you give?”',
  'owes-another': '“That is not what I owe you. I owe you {thing}.”',
  'too-soon': '“You gave me that only now. Come back later, and I will give you {thing}.”',
  'does-not-want-them': '“What would I do with {thing}? I have no use for it.”',
  'does-not-want-pupil': 'You have no use for {thing} yourself.',
  'has-enough-them': {
    one: '“I have {has} already. One is enough.”',
    other: '“I have {has} already. That is enough.”',
  },
  'has-enough-pupil': {
    one: 'You have {has} already. One is enough.',
    other: 'You have {has} already. That is enough.',
  },
  'one-is-enough-them': '“{Thing} would be enough. I have no use for more.”',
  'one-is-enough-pupil': '{Thing} would be enough. You have no use for more.',
  'worse-off-them': '“I would rather keep {mine} than have {yours}.”',
  'worse-off-pupil': 'You would rather keep {yours} than have {mine}.',
  'no-better-off-them': '“{Mine} or {yours}: all the same to me. I keep what I have.”',
  'no-better-off-pupil': '{Yours} or {mine}: all the same to you. No need to swap.',
} as const satisfies Readonly<Record<string, Entry>>;
