import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer } from 'node:http';
import { extname, join, normalize } from 'node:path';

// A plain server of dist/ for the browser tests: like a school's own, it knows nothing but files.
const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.csv': 'text/csv; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.md': 'text/markdown; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

const port = Number(process.argv[2] ?? 4329);
const root = process.argv[3] ?? 'dist';

createServer((request, response) => {
  const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname));
  const file = join(root, path.endsWith('/') ? `${path}index.html` : path);
  stat(file)
    .then((found) => {
      if (!found.isFile()) throw new Error('a folder');
      response.writeHead(200, {
        'content-type': TYPES[extname(file)] ?? 'application/octet-stream',
        vary: 'Origin',
      });
      createReadStream(file).pipe(response);
    })
    .catch(() => {
      response.writeHead(404, { 'content-type': TYPES['.html'] });
      createReadStream(join(root, '404.html'))
        .on('error', () => response.end())
        .pipe(response);
    });
}).listen(port);
