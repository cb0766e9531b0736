import { SIDEWAYS } from './page-css.ts';
import type { PaperSize } from './print-view.ts';

/** Sides of a sheet in millimetres: ISO 216 A4 and the American letter. */
const SIDES_MM = { A4: [210, 297], Letter: [215.9, 279.4] } as const;
/** Margins of the style sheets in millimetres: head and foot, and both sides together. */
const MARGIN_HEAD_FOOT_MM = 15 + 17;
const MARGIN_SIDES_MM = 20 + 15;
/** Sideways, and cards, are as far from both edges. */
const MARGIN_EVEN_MM = 15 + 15;

/** What is left of a sheet for a paper's words, in millimetres. @example roomOf('signs', 'A4') // { across: 267, down: 178 } */
export function roomOf(path: string, size: PaperSize): { readonly across: number; readonly down: number } {
  const isSideways = SIDEWAYS.some((each) => each === path);
  const [short, long] = SIDES_MM[size];
  const sides = isSideways || path === 'cards' ? MARGIN_EVEN_MM : MARGIN_SIDES_MM;
  return {
    across: (isSideways ? long : short) - sides,
    down: (isSideways ? short : long) - MARGIN_HEAD_FOOT_MM,
  };
}

/** All rules of a sheet, however deep they stand. */
function* rulesIn(rules: CSSRuleList): Generator<CSSRule> {
  for (const rule of rules) {
    yield rule;
    if (rule instanceof CSSGroupingRule) yield* rulesIn(rule.cssRules);
  }
}

/** Makes the screen take what is said for print, as if on a sheet; what is given back undoes it. */
function asPrinted(): () => void {
  const undo: (() => void)[] = [];
  for (const sheet of document.styleSheets)
    for (const rule of rulesIn(sheet.cssRules)) {
      if (rule instanceof CSSMediaRule) {
        const { media } = rule;
        const before = media.mediaText;
        if (before.includes('print')) media.mediaText = 'all';
        // A sheet is wide enough for what gives way on a narrow screen.
        else if (before.includes('max-width')) media.mediaText = 'not all';
        else continue;
        undo.push(() => {
          media.mediaText = before;
        });
      } else if (rule instanceof CSSStyleRule && rule.style.breakBefore === 'page') {
        const { style } = rule;
        style.breakBefore = 'column';
        undo.push(() => {
          style.breakBefore = 'page';
        });
      }
    }
  return () => {
    for (const step of undo) step();
  };
}

function sheetsOf(article: HTMLElement, size: PaperSize): number {
  const { across, down } = roomOf(article.dataset['part'] ?? '', size);
  const { style } = article;
  // A paper laid in columns as large as a sheet takes as many columns as sheets.
  style.inlineSize = `${across}mm`;
  style.blockSize = `${down}mm`;
  style.columns = '1';
  style.columnGap = '0';
  style.columnFill = 'auto';
  const count = Math.max(1, Math.round(article.scrollWidth / article.clientWidth));
  article.removeAttribute('style');
  return count;
}

/** About how many sheets each paper takes that stands in this document: laid out as for print, and put back. */
export function countSheets(size: PaperSize): readonly { readonly path: string; readonly sheets: number }[] {
  const putBack = asPrinted();
  try {
    return [...document.querySelectorAll<HTMLElement>('.paper[data-part]')].map((article) => ({
      path: article.dataset['part'] ?? '',
      sheets: sheetsOf(article, size),
    }));
  } finally {
    putBack();
  }
}
