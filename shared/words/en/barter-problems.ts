import { oneOf, quoted, writeNearest } from './problems.ts';

interface Sentences {
  readonly expected: string;
  readonly received: string;
  readonly mend: string;
}

const range = (least: number, most: number): string => (least === most ? `${least}` : `${least} to ${most}`);

/** Sentences for what can be wrong in a barter block. */
export const barterProblems = {
  settingUnclear: (written: readonly string[]): Sentences => ({
    expected: 'one of "make", "world" and "class"',
    received: written.length === 0 ? 'none of them' : written.map(quoted).join(' and '),
    mend:
      written.length === 0
        ? 'add "make: { traders: 4, chain: 3 }", and the gathering is made for you'
        : 'keep one of them; a second gathering is a second block',
  }),
  goodUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `a good that is known here: ${oneOf(known, 'in the help page')}`,
    received: quoted(written),
    mend: writeNearest(near, known),
  }),
  goodRepeated: (good: string): Sentences => ({
    expected: 'each good once',
    received: `${quoted(good)} a second time`,
    mend: 'remove one of the two',
  }),
  pitUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `a pit of this site: ${oneOf(known, 'in the site file')}`,
    received: quoted(written),
    mend: writeNearest(near, known, 'in the site file'),
  }),
  goodsTooFew: (given: number, needed: number): Sentences => ({
    expected: `${needed} goods or more for so long a chain`,
    received: `${given}`,
    mend: `name ${needed - given} more, or ask for a shorter chain`,
  }),
  keepingTooFew: (given: number, needed: number): Sentences => ({
    expected: `${needed} goods or more that keep and may be swapped`,
    received: `${given}`,
    mend: 'name more goods that do not spoil and are not only given',
  }),
  classGoodsTooFew: (given: number, needed: number): Sentences => ({
    expected: `${needed} goods or more that keep and may be swapped`,
    received: `${given}`,
    mend: 'name more goods, or leave "goods" out',
  }),
  aimUnknown: (written: string, near: string | null, known: readonly string[]): Sentences => ({
    expected: `one of the goods: ${oneOf(known, 'under goods')}`,
    received: quoted(written),
    mend: writeNearest(near, known, 'under goods'),
  }),
  aimOnlyGiven: (aim: string): Sentences => ({
    expected: 'an aim that may be swapped',
    received: `${quoted(aim)}, which is only given`,
    mend: 'choose another aim',
  }),
  tradersUnfit: (given: number, least: number, most: number, band: string): Sentences => ({
    expected: `${range(least, most)} traders at ages ${band}`,
    received: `${given}`,
    mend: `write "traders: ${Math.min(Math.max(given, least), most)}", or choose another band`,
  }),
  chainUnfit: (given: number, least: number, most: number, band: string): Sentences => ({
    expected: `a chain of ${range(least, most)} at ages ${band}`,
    received: `${given}`,
    mend: `write "chain: ${Math.min(Math.max(given, least), most)}", or choose another band`,
  }),
  unmade: (tried: number, traders: number, goods: number): Sentences => ({
    expected: 'a gathering with something to choose and a way to the aim',
    received: `none among ${tried} that were tried`,
    mend:
      goods <= traders
        ? `name ${traders + 1 - goods} more, so that each trader has something, or ask for fewer traders`
        : 'name one more good, or ask for a chain that is one shorter',
  }),
};

/** How a thing of a pit is named as a good: with its article, and many of it. */
export function goodNames(label: string): { readonly one: string; readonly many: string } {
  if (/(?:charcoal|glass|cord|flint|shells)$/.test(label)) return { one: `some ${label}`, many: label };
  const [first = '', ...rest] = label.split(' of ');
  return {
    one: `${/^[aeiou]/i.test(label) ? 'an' : 'a'} ${label}`,
    many: [`${first}s`, ...rest].join(' of '),
  };
}
