import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type Server } from 'node:http';
import { extname, join, normalize } from 'node:path';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css',
  '.csv': 'text/csv; charset=utf-8',
  '.gz': 'application/gzip',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript',
  '.json': 'application/json',
  '.md': 'text/markdown; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
  '.woff2': 'font/woff2',
};

/**
 * A plain server of a folder for the browser tests: like a school's own, it knows nothing but files.
 *
 * @param instead What is sent in place of some files, by their address; it may change between two requests.
 * @param hear Is told of each file asked for.
 */
export function siteServer(
  root: string,
  instead: ReadonlyMap<string, string> = new Map(),
  hear: (address: string) => void = () => undefined,
): Server {
  return createServer((request, response) => {
    const path = normalize(decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname));
    const address = path.endsWith('/') ? `${path}index.html` : path;
    const file = join(root, address);
    const headers = { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream', vary: 'Origin' };
    hear(address);
    const own = instead.get(address);
    if (own !== undefined) {
      response.writeHead(200, headers).end(own);
      return;
    }
    stat(file)
      .then((found) => {
        if (!found.isFile()) throw new Error('a folder');
        response.writeHead(200, headers);
        createReadStream(file).pipe(response);
      })
      .catch(() => {
        response.writeHead(404, { 'content-type': TYPES['.html'] });
        createReadStream(join(root, '404.html'))
          .on('error', () => response.end())
          .pipe(response);
      });
  });
}
