import { mkdir, writeFile } from 'node:fs/promises';
import * as z from 'zod';
import { blockSchemas, kindNames } from '../../shared/activities/index.ts';
import { lessonHead } from '../../shared/lesson/index.ts';
import { dayFile, siteFile } from '../../shared/library/index.ts';

// Run before the site is built: the shapes of the files as JSON Schema, for editors that complete and underline.
const folder = 'public/schema';
const write = (name: string, schema: z.ZodType): Promise<void> =>
  writeFile(
    `${folder}/${name}.json`,
    `${JSON.stringify(z.toJSONSchema(schema, { target: 'draft-7', io: 'input' }), null, 2)}\n`,
  );

await mkdir(folder, { recursive: true });
await write('lesson-head', lessonHead);
await write('site', siteFile);
await write('day', dayFile);
for (const kind of kindNames) await write(`${kind}-block`, blockSchemas[kind]);
