import * as z from 'zod';
import { CLAIM_GRADES } from '../curriculum/index.ts';
import { STATUSES } from '../library/status.ts';
import { caseWords } from '../words/en/case.ts';

/** What stands under `extensions.pitlore`, and what does where nothing does. */
const ours = <Schema extends z.ZodType>(schema: Schema) =>
  z.looseObject({ pitlore: schema.optional() }).optional();

const entity = {
  identifier: z.guid(caseWords.identifier),
  uri: z.string().min(1),
  lastChangeDateTime: z.iso.datetime({ offset: true, local: true, error: caseWords.dateTime }),
};

const link = z.looseObject({ title: z.string(), identifier: z.string().min(1), uri: z.string().min(1) });

const stage = z.strictObject({
  stage: z.string().min(1),
  from: z.int().min(3).max(19),
  to: z.int().min(4).max(20),
});

const outcome = z.strictObject({
  outcome: z.string().min(1),
  status: z.enum(STATUSES),
  source: z.strictObject({ ref: z.string(), at: z.string() }),
  never: z.string().optional(),
  evidence: z
    .array(z.strictObject({ kind: z.string(), when: z.string(), grade: z.enum(CLAIM_GRADES) }))
    .optional(),
});

/** A CASE package of anyone's: the fields the standard asks for, those we read, and any others, which are let be. */
export const packageSchema = z.looseObject({
  CFDocument: z.looseObject({
    ...entity,
    creator: z.string(),
    title: z.string().min(1),
    publisher: z.string().optional(),
    description: z.string().optional(),
    version: z.string().optional(),
    subject: z.array(z.string()).optional(),
    officialSourceURL: z.string().optional(),
    extensions: ours(
      z.strictObject({
        framework: z.string().regex(/^[a-z][a-z0-9-]*$/, 'small letters, digits and hyphens'),
        country: z.string(),
        licence: z.string(),
        agesKnown: z.string(),
        sources: z.array(
          z.strictObject({
            id: z.string(),
            citation: z.string(),
            seen: z.string(),
            url: z.string().nullable(),
          }),
        ),
      }),
    ),
  }),
  CFItems: z
    .array(
      z.looseObject({
        ...entity,
        fullStatement: z.string().min(1),
        abbreviatedStatement: z.string().optional(),
        humanCodingScheme: z.string().optional(),
        subject: z.array(z.string()).optional(),
        educationLevel: z.array(z.string()).optional(),
        extensions: ours(z.union([stage, outcome])),
      }),
    )
    .optional(),
  CFAssociations: z
    .array(
      z.looseObject({
        ...entity,
        associationType: z.string().min(1),
        originNodeURI: link,
        destinationNodeURI: link,
      }),
    )
    .optional(),
});

/** A package as it was read. */
export type ReadPackage = z.infer<typeof packageSchema>;
export type ReadItem = NonNullable<ReadPackage['CFItems']>[number];
