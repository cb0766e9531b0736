import { htmlText, jsonText, scriptText, styleText } from './page-text.ts';

/** The parts of a pack. */
export interface PageParts {
  readonly lang: string;
  readonly title: string;
  /** The content security policy, as `pagePolicy` gives it. */
  readonly policy: string;
  readonly css: string;
  /** One module, with nothing to import. */
  readonly script: string;
  /** The lesson, as plain data: the script finds it under `[data-lesson]`. */
  readonly lesson: unknown;
  /** Said where scripts do not run. */
  readonly withoutScript: string;
}

/**
 * A lesson as one page that needs no other file: it opens from a disk, without a network.
 *
 * Every text of the lesson stands as data or as escaped text, so none of it can run.
 *
 * @example joinPage({ lang: 'en', title: '</script>', policy: '', css: '', script: '', lesson: {}, withoutScript: '' }).includes('<title>&lt;/script&gt;</title>') // true
 */
export const joinPage = ({ lang, title, policy, css, script, lesson, withoutScript }: PageParts): string =>
  `<!doctype html>
<html lang="${htmlText(lang)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${htmlText(policy)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${htmlText(title)}</title>
<link rel="icon" href="data:,">
<style>${styleText(css)}</style>
</head>
<body>
<noscript><p>${htmlText(withoutScript)}</p></noscript>
<div data-mount></div>
<script type="application/json" data-lesson>${jsonText(lesson)}</script>
<script type="module">${scriptText(script)}</script>
</body>
</html>
`;
