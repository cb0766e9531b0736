import { blockSchemas, compileBlock, isKindName, numbersOf, type Activity } from '../activities/index.ts';
import { derive, stream } from '../chance/index.ts';
import {
  byPlace,
  hasErrors,
  nearest,
  placeFaults,
  readLesson,
  type Fault,
  type Lesson,
  type LessonBlock,
  type Problem,
  type ReadYaml,
} from '../lesson/index.ts';
import { reaches, type ActivityFacts, type JudgedClaim, type LessonFacts } from '../curriculum/index.ts';
import type { Library, Site } from '../library/library.ts';
import { youngestAge } from '../library/bands.ts';
import { fileWords } from '../words/en/problems.ts';
import type { LessonWords } from './check-reading.ts';
import { checkClaims, factsOf, lessonFacts, vouchFaults } from './check-claims.ts';
import { notesFaults } from './check-notes.ts';
import { numberCautions } from './check-numbers.ts';
import { visitFaults } from './check-visit.ts';
import { USUAL_SETTING, type Plan, type PlanClaim, type PlanPart } from './plan.ts';
import { readVisit, type ReadVisit } from './read-visit.ts';

export interface CompiledLesson {
  /** Null where a problem is an error. */
  readonly plan: Plan | null;
  /** By place. */
  readonly problems: readonly Problem[];
  /** The title, where the head could be read, so that a page can name a lesson that does not compile. */
  readonly title: string | null;
  /** Each claim of the head, earned or not; [] where the head or the site could not be read. */
  readonly claims: readonly JudgedClaim[];
  /** What the lesson asks, for claims it could make; null where the head or the site could not be read. */
  readonly facts: LessonFacts | null;
  /** Its words, to be measured for its bands; null where the head could not be read, or an adult reads them out. */
  readonly words: LessonWords | null;
}

interface Named {
  readonly id: string;
  readonly kindName: string;
  readonly block: LessonBlock;
}

/** Each block's id: its own, or its kind and its place among the blocks of that kind. */
function nameBlocks(lesson: Lesson): readonly Named[] {
  const counts = new Map<string, number>();
  return lesson.parts.flatMap((part): readonly Named[] => {
    if (part.part === 'prose') return [];
    const { block } = part;
    const count = (counts.get(block.kindName) ?? 0) + 1;
    counts.set(block.kindName, count);
    // Every kind's schema has the keys of the block base, id among them.
    const own = (block.value as { readonly id?: string }).id;
    return [{ id: own ?? `${block.kindName}-${count}`, kindName: block.kindName, block }];
  });
}

/** An earned claim as papers and pages show it. */
const planClaim = ({ outcome, grade, framework, known, evidence }: JudgedClaim): readonly PlanClaim[] =>
  framework === null || known === null
    ? []
    : [
        {
          outcome,
          code: known.code,
          framework: framework.id,
          frameworkName: framework.name,
          stage: framework.stages.find(({ id }) => id === known.stage)?.label ?? known.stage,
          subject: known.subject,
          summary: known.summary,
          status: known.status,
          source: framework.sources.find(({ id }) => id === known.source.ref)?.citation ?? known.source.ref,
          sourceAt: known.source.at,
          grade,
          evidence: evidence.filter((row) => reaches(row.grade, grade)),
        },
      ];

function siteFault(written: string, sites: readonly Site[]): Fault {
  const known = sites.map(({ id }) => id);
  const near = nearest(written, known);
  const replacement = near === null ? {} : { replacement: near };
  return {
    code: 'site-unknown',
    grade: 'error',
    path: ['site'],
    ...fileWords.siteUnknown(written, near, known),
    ...replacement,
  };
}

function minutesFaults(lesson: Lesson, activities: readonly Activity[]): readonly Fault[] {
  const { head } = lesson;
  const sum = activities.reduce((total, { minutes }) => total + minutes, 0);
  if (head === null || sum <= head.minutes) return [];
  return [
    { code: 'minutes-over', grade: 'error', path: ['minutes'], ...fileWords.minutesOver(sum, head.minutes) },
  ];
}

/** All that pupils read of a lesson, in order. */
const wordsOf = ({ source, prose, parts }: Lesson, bands: LessonWords['bands']): LessonWords => ({
  source,
  bands,
  passages: [
    ...prose,
    ...parts.flatMap((part) => (part.part === 'prose' ? [] : part.block.passages)),
  ].toSorted((a, b) => a.offset - b.offset),
});

/** One activity longer than the youngest band it is for sits still. */
function lengthFaults(activity: Activity, lesson: Lesson, library: Library): readonly Fault[] {
  const limits = library.bands.find(({ band }) => lesson.head?.bands.includes(band) ?? false);
  if (limits === undefined || activity.minutes <= limits.minutesPerActivity) return [];
  const words = fileWords.minutesLong(activity.minutes, limits.minutesPerActivity, limits.band);
  return [{ code: 'minutes-over', grade: 'caution', path: ['minutes'], ...words }];
}

/**
 * Compiles a lesson file against a library: the plan, or the problems that stand in its way. Pure: the same file,
 * library and seed give the same bytes. Any text at all gives one or the other.
 *
 * @param file The name problems carry.
 * @param seed Deals the finds; another seed, another order.
 * @param readRun Reads its YAML, as `rememberYaml` gives it; the same problems and plan come of it.
 */
export function compileLesson(
  file: string,
  text: string,
  library: Library,
  seed: string,
  readRun?: ReadYaml,
): CompiledLesson {
  const lesson = readLesson(file, text, blockSchemas, readRun);
  const { head, source } = lesson;
  const problems: Problem[] = [...lesson.problems];
  const site = library.sites.find(({ id }) => id === head?.site);
  if (head !== null && site === undefined) {
    problems.push(...placeFaults(source, [siteFault(head.site, library.sites)], lesson.locateHead));
  }
  const activities: Activity[] = [];
  const ids = new Map<LessonBlock, string>();
  const asked: ActivityFacts[] = [];
  let claims: readonly JudgedClaim[] = [];
  let facts: LessonFacts | null = null;
  let visit: ReadVisit | null = null;
  if (head !== null && site !== undefined) {
    const chance = stream(seed);
    const seen = new Set<string>();
    for (const { id, kindName, block } of nameBlocks(lesson)) {
      if (!isKindName(kindName)) continue;
      if (seen.has(id)) {
        const fault: Fault = {
          code: 'id-repeated',
          grade: 'error',
          path: ['id'],
          ...fileWords.idRepeated(id),
        };
        problems.push(...placeFaults(source, [fault], block.locate));
        continue;
      }
      seen.add(id);
      const context = {
        library,
        site,
        bands: head.bands,
        setting: head.visit?.setting ?? USUAL_SETTING,
        chance: derive(chance, id),
      };
      // The block passed this kind's schema when the lesson was read.
      const { activity, faults } = compileBlock(
        kindName,
        id,
        block.value as Parameters<typeof compileBlock>[2],
        context,
      );
      problems.push(...placeFaults(source, faults, block.locate));
      if (activity === null) continue;
      activities.push(activity);
      // Every kind's schema has the keys of the block base, vouched among them.
      const { vouched = [] } = block.value as { readonly vouched?: readonly string[] };
      problems.push(...placeFaults(source, vouchFaults(vouched, library.curricula), block.locate));
      asked.push(factsOf(activity, vouched, library));
      ids.set(block, id);
      problems.push(...placeFaults(source, lengthFaults(activity, lesson, library), block.locate));
      // It compiled from this value, so it is of this kind.
      const numbers = numbersOf(activity, block.value as Parameters<typeof numbersOf>[1]);
      problems.push(...numberCautions(source, block, numbers, head.bands, library.curricula));
    }
    problems.push(...placeFaults(source, minutesFaults(lesson, activities), lesson.locateHead));
    if (head.visit !== undefined) {
      visit = readVisit(head.visit, site, library);
      const faults = [
        ...visit.faults,
        ...visitFaults(library.safety, head.visit, visit.visit, youngestAge(head.bands)),
      ];
      problems.push(...placeFaults(source, faults, lesson.locateHead));
    }
    if (head.notes !== undefined)
      problems.push(...placeFaults(source, notesFaults(head.notes, library.notes), lesson.locateHead));
    facts = lessonFacts(head, site, asked);
    const checked = checkClaims(head.claims ?? [], facts, library.curricula, !hasErrors(problems));
    claims = checked.judged;
    problems.push(...placeFaults(source, checked.faults, lesson.locateHead));
  }
  const sorted = problems.toSorted(byPlace);
  const title = head?.title ?? null;
  const words = head === null || head['read-aloud'] === true ? null : wordsOf(lesson, head.bands);
  if (head === null || site === undefined || hasErrors(sorted))
    return { plan: null, problems: sorted, title, claims, facts, words };
  const parts = lesson.parts.flatMap((part): readonly PlanPart[] => {
    if (part.part === 'prose') return [part];
    const id = ids.get(part.block);
    return id === undefined ? [] : [{ part: 'activity', activity: id }];
  });
  const plan: Plan = {
    format: 'pitlore-plan/1',
    title: head.title,
    about: head.about ?? null,
    language: 'en',
    bands: head.bands,
    minutes: head.minutes,
    seed,
    site: {
      id: site.id,
      name: site.name,
      code: site.code,
      status: site.status,
      story: site.story,
      organisation: site.organisation,
      periodLabel: site.period.label,
      periodFromBce: site.period.fromBce,
      periodToBce: site.period.toBce,
      periodStatus: site.period.status,
      periodNote: site.period.note,
    },
    parts,
    activities,
    claims: claims.flatMap(planClaim),
    ...(visit === null ? {} : { visit: visit.visit }),
    ...(head.notes === undefined ? {} : { notes: head.notes }),
    ...(head['read-aloud'] === true ? { readAloud: true } : {}),
  };
  return { plan, problems: sorted, title, claims, facts, words };
}
