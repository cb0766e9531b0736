import { parse, type HTMLElement, type Node } from 'node-html-parser';
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

function elements(node: Node): HTMLElement[] {
  return node.childNodes.flatMap((child) =>
    'tagName' in child ? [child as HTMLElement, ...elements(child)] : [],
  ); // nodes with a tag name are elements
}

describe('markup', () => {
  test('every tag opened is closed in its turn', () => {
    for (const markup of markups) {
      const open: string[] = [];
      for (const [, slash, name, rest] of markup.matchAll(/<(\/?)([a-z]+)([^>]*)>/g)) {
        if (slash === '/') expect(open.pop()).toBe(name);
        else if (!rest?.endsWith('/')) open.push(name ?? '');
      }
      expect(open).toEqual([]);
    }
  });

  test('only groups, paths and words, with attributes a strict policy allows: no style, no id, no link', () => {
    for (const markup of markups) {
      for (const element of elements(parse(markup))) {
        const name = element.tagName.toLowerCase();
        expect(Object.keys(ALLOWED)).toContain(name);
        const allowed: readonly string[] = ALLOWED[name as keyof typeof ALLOWED]; // the line above says it is one
        for (const attribute of Object.keys(element.attributes)) expect(allowed).toContain(attribute);
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
