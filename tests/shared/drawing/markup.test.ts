import { optimize } from 'svgo';
import { describe, expect, test } from 'vitest';
import {
  drawFind,
  drawPitPlan,
  drawPitSection,
  drawStep,
  STEPS_DRAWN,
} from '../../../shared/drawing/index.ts';
import { madeFinds } from './made-finds.ts';
import { PITS } from './pits.ts';

const ALLOWED = {
  g: ['class', 'data-part', 'transform', 'fill', 'stroke', 'stroke-linecap', 'stroke-linejoin'],
  path: ['class', 'data-part', 'd', 'fill', 'stroke', 'stroke-width', 'stroke-dasharray', 'vector-effect'],
  text: ['class', 'fill', 'stroke', 'font-size', 'x', 'y', 'text-anchor'],
} as const;

const markups = [
  ...madeFinds(320).map((find) => drawFind(find, { view: 'full', scaleBar: true }).markup),
  ...PITS.map(({ pit, finds }) => drawPitPlan(pit, finds).markup),
  ...PITS.map(({ pit }) => drawPitSection(pit).markup),
  ...STEPS_DRAWN.map((step) => drawStep(step).markup),
];

interface Seen {
  readonly name: string;
  readonly attributes: readonly string[];
}

/** Every element of a drawing with its attributes, as a reference library reads them. */
function elements(inner: string): Seen[] {
  const seen: Seen[] = [];
  optimize(`<svg xmlns="http://www.w3.org/2000/svg">${inner}</svg>`, {
    plugins: [
      {
        name: 'look',
        fn: () => ({
          element: {
            enter: ({ name, attributes }) => {
              if (name !== 'svg') seen.push({ name, attributes: Object.keys(attributes) });
            },
          },
        }),
      },
    ],
  });
  return seen;
}

describe('markup', () => {
  test('a reference library reads every one as well-formed SVG, and refuses a planted breach', () => {
    for (const markup of markups) {
      expect(elements(markup)).toHaveLength([...markup.matchAll(/<[a-z]/g)].length);
    }
    expect(() => elements('<g><path d="M0 0"></g>')).toThrow();
  });

  test('only groups, paths and words, with attributes a strict policy allows: no style, no id, no link', () => {
    for (const markup of markups) {
      for (const { name, attributes } of elements(markup)) {
        expect(Object.keys(ALLOWED)).toContain(name);
        const allowed: readonly string[] = ALLOWED[name as keyof typeof ALLOWED]; // the line above says it is one
        expect(attributes.filter((attribute) => !allowed.includes(attribute))).toEqual([]);
      }
    }
  });

  test('colours are the text’s own, the paper’s, or none', () => {
    for (const markup of markups) {
      for (const [, value = ''] of markup.matchAll(/ (?:fill|stroke)="([^"]+)"/g)) {
        expect(['#fff', 'currentColor', 'none']).toContain(value);
      }
    }
  });

  test('path data is written in full: no NaN, no exponent, no more than two places', () => {
    for (const markup of markups) {
      for (const [, data = ''] of markup.matchAll(/ d="([^"]*)"/g)) {
        expect(data).toMatch(/^(?:[MhlcqzZ]|-?\d+|-?\d*\.\d{1,2}|\s)+$/);
      }
    }
  });
});
