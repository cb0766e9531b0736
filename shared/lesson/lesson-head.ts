import * as z from 'zod';
import { CLAIM_GRADES } from '../curriculum/index.ts';
import { BANDS } from '../library/bands.ts';
import { lessonNotes } from './notes-schema.ts';
import { lessonVisit } from './visit-schema.ts';

/** The head of a lesson file, as a lead writes it. */
export const lessonHead = z.strictObject({
  title: z.string().min(1).max(120).describe('What the lesson is called, in a few words'),
  about: z.string().min(1).max(240).optional().describe('One sentence for the list of lessons'),
  site: z.string().min(1).describe('The id of the site whose finds it uses'),
  bands: z.array(z.enum(BANDS)).min(1).max(BANDS.length).describe('The age bands it is for'),
  minutes: z.int().min(5).max(180).describe('How long the whole lesson takes, in minutes'),
  'read-aloud': z
    .boolean()
    .optional()
    .describe('True where an adult reads its words to the pupils: then they are not measured for readers'),
  claims: z
    .array(
      z.strictObject({
        outcome: z.string().min(1).describe('The id or code of an outcome'),
        grade: z.enum(CLAIM_GRADES).describe('How far the lesson goes towards it'),
      }),
    )
    .max(60)
    .optional()
    .describe('The outcomes the lesson practises, teaches or touches'),
  visit: lessonVisit
    .optional()
    .describe(
      'What runs beside it: the setting, and stations (kind, children, finds, edge, exposure, pupils …), held against the safety rules',
    ),
  notes: lessonNotes
    .optional()
    .describe(
      'For the teacher notes: kit, talk, misconceptions and adaptations of your own, and ids of ours to leave out',
    ),
  language: z.literal('en').optional().describe('The language of its words'),
});

export type LessonHead = z.output<typeof lessonHead>;
