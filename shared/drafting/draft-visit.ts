import { kindNames } from '../activities/index.ts';
import { derive, stream } from '../chance/index.ts';
import { compileLesson } from '../compile/index.ts';
import { offerClaims, type JudgedClaim } from '../curriculum/index.ts';
import { hasErrors, type Problem } from '../lesson/index.ts';
import { BANDS, youngest, type Library, type Site } from '../library/index.ts';
import { draftingWords as words } from '../words/en/drafting.ts';
import { chooseActivities, type Offer } from './choose-activities.ts';
import type { Candidate, Draft, DraftContext, DraftProgress, DraftRequest, MeritPart } from './draft.ts';
import { draftedKinds, drafters } from './drafters.ts';
import { pickClaims } from './pick-claims.ts';
import { writeLesson } from './write-lesson.ts';

const FILE = 'draft.md';
/** Of a lesson, this share goes to beginning, talking and ending, and no less than so many minutes. ASM. */
const TALK_SHARE = 0.2;
const LEAST_TALK = 3;
/** The limits of a lesson's head. */
const LEAST_MINUTES = 5;
const MOST_MINUTES = 180;

const nothing = (lacking: readonly string[]): Draft => ({
  text: null,
  activities: [],
  reasons: [],
  lacking: [...new Set(lacking)],
  claims: [],
  merit: 0,
  parts: [],
});

/** Why no lesson can be asked for so, or null. */
function unfit(library: Library, { bands, minutes }: DraftRequest): string | null {
  if (bands.length === 0) return words.lackBands();
  const stranger = bands.find(
    (band) => !BANDS.includes(band) || !library.bands.some((known) => known.band === band),
  );
  if (stranger !== undefined) return words.lackBand(stranger);
  if (!Number.isInteger(minutes) || minutes < LEAST_MINUTES || minutes > MOST_MINUTES) {
    return words.lackMinutes(LEAST_MINUTES, MOST_MINUTES);
  }
  return null;
}

/** What a candidate comes to, compiled alone: what it earns, and the first problem there is with it. */
interface Tried {
  /** Null where the problem is an error. */
  readonly offer: Offer | null;
  readonly problem: Problem | null;
}

function tryOne(candidate: Candidate, library: Library, site: Site, request: DraftRequest): Tried {
  const text = writeLesson(request, site, [candidate], []);
  const { plan, problems, facts } = compileLesson(FILE, text, library, request.seed);
  const error = problems.find(({ grade }) => grade === 'error');
  const problem = error ?? problems[0] ?? null;
  if (plan === null || facts === null) return { offer: null, problem };
  const offered = offerClaims(library.curricula, facts, []).filter((claim) => counts(claim, request));
  return { offer: { candidate, outcomes: new Set(offered.map(({ outcome }) => outcome)) }, problem };
}

/** Tries a candidate as it is, then plainer where that has a problem. */
function tryBoth(candidate: Candidate, library: Library, site: Site, request: DraftRequest): Tried {
  const first = tryOne(candidate, library, site, request);
  const { plainer } = candidate;
  if (first.problem === null || plainer === undefined) return first;
  const second = tryOne({ ...candidate, lines: plainer }, library, site, request);
  return second.offer === null ? first : second;
}

const counts = ({ known }: JudgedClaim, { subjects }: DraftRequest): boolean =>
  subjects === undefined || subjects.length === 0 || (known !== null && subjects.includes(known.subject));

/** The reasons of a draft: the lesson's, then each activity's, with their figures. */
function reasonsOf(
  chosen: { readonly parts: readonly MeritPart[]; readonly merit: number; readonly sets: number },
  activities: readonly Candidate[],
): readonly string[] {
  const tell = ({ name, value, weight, told }: MeritPart): string => words.part(name, value, weight, told);
  return [
    words.overall(chosen.merit, chosen.sets, activities.length),
    ...chosen.parts.filter(({ weight }) => weight > 0).map(tell),
    ...activities.flatMap(({ title, merit, summary, parts }) => [
      `${words.chosen(title, merit)} ${summary}`,
      ...parts.map(tell),
    ]),
  ];
}

/**
 * Drafts a lesson step by step, so that a page can answer between them: each kind offers the activities that make the
 * best of the finds, each offer is compiled, and every set of them that fits the time is weighed. Pure: the same
 * library, site, request and seed give the same draft.
 *
 * @param site The site whose finds are drawn on; it need not be one of the library's.
 */
export function* draftSteps(
  given: Library,
  site: Site,
  request: DraftRequest,
): Generator<DraftProgress, Draft, void> {
  const fault = unfit(given, request);
  if (fault !== null) return nothing([fault]);
  const library: Library = { ...given, sites: [...given.sites.filter(({ id }) => id !== site.id), site] };
  const finds = site.pits.flatMap((pit) => pit.finds);
  const known = new Set(finds.map(({ id }) => id));
  const pinned = request.pins ?? [];
  const pins = new Set(pinned.filter((id) => known.has(id)));
  const lacking = pinned.filter((id) => !known.has(id)).map(words.lackPinUnknown);
  const limits = library.bands.find(({ band }) => band === youngest(request.bands));
  if (limits === undefined) return nothing([words.lackBands()]);
  const minutesMost = Math.floor(request.minutes - Math.max(LEAST_TALK, request.minutes * TALK_SHARE));
  const asked = kindNames.filter((kind) => (request.kinds ?? draftedKinds).includes(kind));
  const kinds = asked.flatMap((kind) => {
    const drafter = drafters[kind];
    if (drafter === undefined) lacking.push(words.lackByLead(kind));
    return drafter === undefined ? [] : [{ kind, drafter }];
  });
  if (kinds.length === 0) return nothing([...lacking, words.lackKinds()]);
  const chance = derive(stream(request.seed), 'draft');
  const doubtful = new Set(request.doubtful);
  const base: Omit<DraftContext, 'chance'> = {
    library,
    site,
    finds,
    bands: request.bands,
    limits,
    minutesMost,
    pins,
    doubtful,
  };

  const of = kinds.length * 2 + 2;
  let done = 0;
  const offers: Offer[] = [];
  /** What compiles, but not without a caution: only where nothing else is left. */
  const doubted: Offer[] = [];
  for (const { kind, drafter } of kinds) {
    const drafting = drafter({ ...base, chance: derive(chance, kind) });
    let step = drafting.next();
    while (step.done !== true) {
      yield { done, of };
      step = drafting.next();
    }
    lacking.push(...step.value.lacking);
    done += 1;
    for (const drafted of step.value.candidates) {
      yield { done, of };
      const candidate: Candidate = { ...drafted, kind };
      const { offer, problem } = tryBoth(candidate, library, site, request);
      if (offer !== null && problem === null) offers.push(offer);
      else if (offer !== null) doubted.push(offer);
      if (problem !== null)
        lacking.push(words.lackCompiles(candidate.title, problem.expected, problem.received));
    }
    done += 1;
  }
  yield { done, of };
  const chosen = chooseActivities(
    offers.length > 0 ? offers : doubted,
    minutesMost,
    pins,
    derive(chance, 'set'),
  );
  if (chosen === null) return nothing([...lacking, words.lackAll()]);
  const activities = chosen.offers.map(({ candidate }) => candidate).toSorted((a, b) => a.place - b.place);
  const shown = new Set(activities.flatMap(({ finds: own }) => own));
  lacking.push(...[...pins].filter((id) => !shown.has(id)).map(words.lackPin));

  const bare = compileLesson(FILE, writeLesson(request, site, activities, []), library, request.seed);
  const offered =
    bare.facts === null
      ? []
      : offerClaims(library.curricula, bare.facts, []).filter((claim) => counts(claim, request));
  const claims = pickClaims(offered);
  yield { done: done + 1, of };
  const text = writeLesson(request, site, activities, claims);
  const { problems } = compileLesson(FILE, text, library, request.seed);
  const error = problems.find(({ grade }) => grade === 'error');
  if (hasErrors(problems))
    return nothing([...lacking, words.lackCompiles(FILE, error?.expected ?? '', error?.received ?? '')]);
  return {
    text,
    activities,
    reasons: [...reasonsOf(chosen, activities), words.claimed(claims.length, offered.length)],
    lacking: [...new Set(lacking)],
    claims: [...claims, ...offered.filter((claim) => !claims.includes(claim))],
    merit: chosen.merit,
    parts: chosen.parts,
  };
}

/** Drafts a lesson in one go. @example draftVisit(library, site, { bands: ['7-9'], minutes: 40, seed: '1' }).text */
export function draftVisit(library: Library, site: Site, request: DraftRequest): Draft {
  const steps = draftSteps(library, site, request);
  let step = steps.next();
  while (step.done !== true) step = steps.next();
  return step.value;
}
