import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';

/** The solver of a day, pressed: 1.2 MB in place of 3.5 in every copy kept for no signal. */
export function GET(): Response {
  const file = createRequire(join(process.cwd(), 'package.json')).resolve('highs/runtime');
  return new Response(gzipSync(readFileSync(file), { level: 9 }), {
    headers: { 'content-type': 'application/gzip' },
  });
}
