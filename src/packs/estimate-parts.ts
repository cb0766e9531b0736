import type { ActivityOf } from '../../shared/activities/index.ts';
import { describeFind } from '../../shared/drawing/index.ts';
import { catalogues, say, tellNumber } from '../../shared/words/index.ts';
import { givenWords } from '../components/estimate-given.ts';
import { beforeGrinding, patternOf, percent, tellWork, type Strip } from '../components/estimate-strip.ts';
import { spreadOf } from '../../shared/telling/figure-spread.ts';
import { numberSources } from '../../shared/telling/numbered-sources.ts';
import { statusWords } from '../../shared/telling/status-words.ts';
import type { StripView, SubjectView } from '../player/beside-view.ts';
import type { HowView } from '../player/lesson-view.ts';
import type { Drawings } from './drawings.ts';

const words = catalogues.en.estimatePapers;

/** What an estimate asks about. */
export const subjectOf = (
  { find, given }: Pick<ActivityOf<'estimate'>, 'find' | 'given'>,
  drawings: Drawings,
): SubjectView => ({
  find:
    find === null
      ? null
      : {
          drawn: drawings.find(find.drawing, 'full'),
          blind: describeFind(find.drawing).blind,
          name: find.name,
          particulars: [
            `${say(words.foundSize, {
              length: find.drawing.lengthMm,
              width: find.drawing.widthMm,
              thickness: find.drawing.thicknessMm,
            })} ${find.note ?? ''}`.trim(),
            say(words.findLine, { pit: find.pit.replace(/^P/, '') }),
          ].join(' · '),
          smallFind: find.smallFind,
        },
  given: given.map(({ id, value }) => ({ name: givenWords(id), value })),
});

/** The figures the record stands on, with their works numbered once. */
export function howOf({
  used,
  trials,
  citations,
}: Pick<ActivityOf<'estimate'>, 'used' | 'trials' | 'citations'>): HowView {
  const numbered = numberSources([...used, ...trials], citations);
  return {
    title: words.howTitle,
    lead: words.howLead,
    heads: [words.howFigure, words.howValue, words.howStatus, words.howSource],
    rows: used.map((figure) => ({
      label: figure.label,
      value: spreadOf(figure),
      status: statusWords(figure.status),
      works: numbered.numbersOf(figure.sources),
    })),
    trials: trials.map((trial) => `${trial.about}: ${numbered.numbersOf(trial.sources)}`),
    works: numbered.works,
  };
}

/** Beyond this share of the strip a number would run over its end. */
const LAST = 0.94;
/** The width of the enlarged stretch, as a share of the strip's. */
const ENLARGED = 0.6;

/** The strip of work, in shares of its width. */
export function stripOf(strip: Strip): StripView {
  const fine = beforeGrinding(strip);
  const at = (hours: number): string => percent(hours / strip.hours);
  const enlarged = fine === null ? '' : `. ${say(words.stripEnlarged, { time: tellWork(fine.hours) })}`;
  return {
    title: words.stripTitle,
    lead: words.stripLead,
    parts: strip.segments.map((segment) => ({
      x: at(segment.fromHours),
      width: percent(segment.share),
      pattern: patternOf(segment),
    })),
    marks: strip.marks.map((mark) => ({
      x: at(mark),
      text: tellNumber(mark),
      anchor: mark === 0 ? 'start' : mark / strip.hours > LAST ? 'end' : 'middle',
    })),
    fine:
      fine === null
        ? null
        : {
            end: at(fine.hours),
            parts: fine.segments.map((segment) => ({
              x: percent((ENLARGED * segment.fromHours) / fine.hours),
              width: percent((ENLARGED * segment.hours) / fine.hours),
              pattern: patternOf(segment),
            })),
          },
    scale: words.stripScale + enlarged,
    lines: strip.segments.map((segment) => ({
      pattern: patternOf(segment),
      text: say(words.stripLine, { label: segment.label, time: tellWork(segment.hours) }),
    })),
    times:
      strip.grindingPerShaping !== null && strip.grindingPerShaping > 1
        ? say(words.stripTimes, { times: tellNumber(strip.grindingPerShaping) })
        : null,
  };
}

/** The same strip, empty: to be filled in by hand. */
export const blankStripOf = (strip: Strip): StripView => ({
  ...stripOf(strip),
  lead: words.stripFill,
  parts: [],
  fine: null,
  scale: words.stripScale,
  lines: [],
  times: null,
});
