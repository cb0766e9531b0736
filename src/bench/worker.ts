import { siteOf, type OwnFiles } from '../../shared/bench/index.ts';
import {
  addUp,
  bandPlan,
  checkLesson,
  claimLines,
  compileLesson,
  type Plan,
} from '../../shared/compile/index.ts';
import { draftVisit } from '../../shared/drafting/index.ts';
import { rememberYaml } from '../../shared/lesson/index.ts';
import { lessonDay } from '../../shared/lesson-day/index.ts';
import { readContent, type ContentFile, type Library, type PhotoFiles } from '../../shared/library/index.ts';
import { papersOf } from '../components/papers.ts';
import { lessonView } from '../packs/lesson-view.ts';
import { packKey } from '../packs/pack-key.ts';
import type { BenchContent } from './content.ts';
import { offersOf } from './offers.ts';
import { takeFinds } from './take-finds.ts';
import { tellDraft } from './tell-draft.ts';
import { visitPapers } from '../visit-papers/visit-papers.ts';
import type { Answer, Ask, CheckAsk, DayAsk, DraftAsk, FindsAsk, PackPart, PapersAsk } from './protocol.ts';

// The parser, the checker and the compiler of the build, unchanged, beside the page: typing never waits for them.
const FRAMEWORKS = ['england-visits'];

const readRun = rememberYaml();

let content: BenchContent | null = null;
let fetching: Promise<BenchContent> | null = null;
let library: Library | null = null;
let readFrom: readonly ContentFile[] | null = null;
let ownPhotos: PhotoFiles = new Map();

const say = (answer: Answer): void => {
  postMessage(answer);
};

const photosOf = ({ photos }: BenchContent): ReadonlyMap<string, Uint8Array> =>
  new Map(
    Object.entries(photos).map(([name, coded]) => [
      name,
      Uint8Array.from(atob(coded), (sign) => sign.codePointAt(0) ?? 0),
    ]),
  );

/** The library with the lead's own files laid over the site's: read again only when those change. */
function libraryWith(from: BenchContent, own: readonly ContentFile[]) {
  const isOwn = (path: string): boolean => own.some((file) => file.path === path);
  const files = [...from.files.filter(({ path }) => !isOwn(path)), ...own];
  const read = readContent(files, from.home ?? files, new Map([...photosOf(from), ...ownPhotos]));
  library = read.library;
  readFrom = own;
  return read;
}

const sameFiles = (a: readonly ContentFile[] | null, b: readonly ContentFile[]): boolean =>
  a !== null &&
  a.length === b.length &&
  a.every((file, index) => file.path === b[index]?.path && file.text === b[index]?.text);

/** The library to answer from, with these files laid over it; null before the content is there. */
function libraryFor(own: readonly ContentFile[]): Library | null {
  if (content !== null && !sameFiles(readFrom, own)) libraryWith(content, own);
  return library;
}

/** The page as one band meets it, or as the youngest of its bands does. */
async function pageOf({ name, page }: CheckAsk, plan: Plan, from: Library): Promise<PackPart> {
  const band = plan.bands.find((each) => each === page?.band);
  const shown = band === undefined ? plan : bandPlan(plan, band);
  // Without a secure page there is no digest: the page can be looked at, and no pack is made.
  const key = await packKey(name, plan).catch(() => name);
  return { title: plan.title, language: plan.language, lesson: lessonView(key, shown, from) };
}

async function check(ask: CheckAsk): Promise<void> {
  const from = libraryFor(ask.files);
  if (from === null) return;
  const started = performance.now();
  const { plan, problems, claims } = checkLesson(`${ask.name}.md`, ask.text, from, ask.name, readRun);
  const tookMs = performance.now() - started;
  say({
    answer: 'checked',
    number: ask.number,
    name: ask.name,
    text: ask.text,
    problems,
    claims: claimLines(claims),
    added: plan === null ? null : addUp(from, plan, ask.pupils, FRAMEWORKS),
    bands: plan?.bands ?? [],
    page: ask.page === null || plan === null ? null : await pageOf(ask, plan, from),
    papers:
      plan === null
        ? []
        : papersOf(plan).map(({ path, name, whom, copies }) => ({ path, name, whom, copies })),
    tookMs,
  });
}

function papers(ask: PapersAsk): void {
  const from = libraryFor(ask.files);
  if (from === null) return;
  const { plan } = compileLesson(`${ask.name}.md`, ask.text, from, ask.name);
  const visit = plan === null ? null : visitPapers(plan, from);
  say({ answer: 'papers', number: ask.number, visit });
}

async function fetchContent(address: string): Promise<BenchContent> {
  const response = await fetch(address);
  if (!response.ok) throw new Error(`${address}: ${response.status}`);
  // Written by src/pages/bench/content.json.ts of the same build.
  return (await response.json()) as BenchContent;
}

async function open(address: string, { files: own, photos }: OwnFiles): Promise<void> {
  // Asked again while the first answer is on its way, both wait for that one: the later ask has the last word.
  fetching ??= fetchContent(address);
  content = await fetching.catch((error: unknown) => {
    fetching = null;
    throw error;
  });
  ownPhotos = photos;
  const { library: read, problems } = libraryWith(content, own);
  const isOwn = new Set(own.map(({ file }) => file));
  say({
    answer: 'opened',
    offers: offersOf(read),
    lessons: content.lessons,
    problems: problems.filter(({ file }) => isOwn.has(file)),
  });
}

function findsIn(ask: FindsAsk): void {
  const from = libraryFor(ask.files);
  if (content === null || from === null) return;
  const isOwn = (path: string): boolean => ask.files.some((file) => file.path === path);
  const files = [...ask.files, ...content.files.filter(({ path }) => !isOwn(path))];
  const told = takeFinds(ask, from, files, content.home ?? []);
  say({ answer: 'finds-in', number: ask.number, ...told });
}

function draft(ask: DraftAsk): void {
  const from = libraryFor(ask.files);
  const site = from?.sites.find(({ id }) => id === ask.site);
  if (from === null || site === undefined) return;
  say({ answer: 'drafted', number: ask.number, ...tellDraft(draftVisit(from, site, ask.request)) });
}

/** A day of the visit as it stands, by the same compiler and rules. */
function day(ask: DayAsk): void {
  const from = libraryFor(ask.files);
  if (from === null) return;
  const file = `${ask.name}.md`;
  const { plan } = compileLesson(file, ask.text, from, ask.name);
  const made = plan === null ? null : lessonDay(from.safety, plan, { ...ask, file });
  say({ answer: 'day', number: ask.number, made });
}

async function answer(ask: Ask): Promise<void> {
  switch (ask.ask) {
    case 'open':
      return open(ask.content, ask.own);
    case 'check':
      return check(ask);
    case 'finds-in':
      findsIn(ask);
      return undefined;
    case 'site':
      if (content !== null) {
        const site = siteOf(content.files, photosOf(content), ask.site);
        say({ answer: 'site', number: ask.number, site });
      }
      return undefined;
    case 'draft':
      draft(ask);
      return undefined;
    case 'day':
      day(ask);
      return undefined;
    case 'papers':
      papers(ask);
      return undefined;
    default:
      return ask satisfies never;
  }
}

addEventListener('message', ({ data }: MessageEvent<Ask>) => {
  answer(data).catch((error: unknown) => {
    say({ answer: 'failed', because: error instanceof Error ? error.message : String(error) });
  });
});
