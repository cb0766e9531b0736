import { render } from 'preact';
import { countSheets } from './count-sheets.ts';
import { pageCss } from './page-css.ts';
import { PrintPaper } from './PrintPaper.tsx';
import type { PrintAnswer, PrintAsk } from './print-view.ts';

// Runs in a frame of the Bench, shut off from it: it is told the papers of a visit, lays them out, prints or counts
// them, and says only that it has. Nothing in the papers can name a style or a script: they are words as data.
const mount = document.querySelector('[data-mount]');
const sheet = new CSSStyleSheet();
document.adoptedStyleSheets = [sheet];

const tell = (answer: PrintAnswer): void => {
  // The frame has no origin, and does not know its parent's; what it says is no secret.
  parent.postMessage(answer, '*');
};

function Printed({ visit, paths, isLarge, hasBacks }: PrintAsk) {
  const papers = visit.papers.filter(({ paper: { path } }) => paths.includes(path));
  const { head, date } = visit;
  return (
    <div class="frame">
      <main id="main">
        <input type="checkbox" data-large checked={isLarge} hidden />
        <input type="checkbox" data-backs checked={hasBacks && papers.length === 1} hidden />
        <svg class="sprite" aria-hidden="true">
          {visit.drawings.map(({ id, viewBox, markup }) => (
            <symbol key={id} id={id} viewBox={viewBox} dangerouslySetInnerHTML={{ __html: markup }} />
          ))}
        </svg>
        <div class="print-pack">
          {papers.map((printed) => (
            <PrintPaper key={printed.paper.path} printed={printed} head={head} date={date} />
          ))}
        </div>
      </main>
    </div>
  );
}

async function take(ask: PrintAsk): Promise<void> {
  if (mount === null) return;
  const { visit, paths, number, size } = ask;
  const names = visit.papers.flatMap(({ paper }) => (paths.includes(paper.path) ? [paper.name] : []));
  const [only = ''] = paths;
  sheet.replaceSync(`${pageCss(size)}${names.length === 1 ? (visit.feet[only] ?? '') : visit.feetTogether}`);
  document.documentElement.lang = visit.language;
  document.title = `${visit.head.title}: ${names.length === 1 ? names.join('') : visit.together}`;
  render(<Printed {...ask} />, mount);
  // A face that no word has asked for yet is not waited for by `fonts.ready`: sheets would be laid out in another.
  await Promise.all([...document.fonts].map((face) => face.load()));
  if (ask.act === 'count') tell({ answer: 'counted', number, sheets: countSheets(size) });
  else if (ask.act === 'look') tell({ answer: 'shown', number });
  else {
    // Where printing waits for the answer and where it does not, it is over when the browser says so.
    addEventListener('afterprint', () => tell({ answer: 'printed', number }), { once: true });
    print();
  }
}

addEventListener('message', ({ source, data }: MessageEvent<PrintAsk>) => {
  if (source === parent) void take(data);
});
