import preact from '@astrojs/preact';
import { defineConfig } from 'astro/config';
import { fileURLToPath } from 'node:url';

// A site under a folder of its own (https://example.org/dig/) is built with SITE_BASE=/dig/.
export default defineConfig({
  base: process.env['SITE_BASE'] ?? '/',
  trailingSlash: 'always',
  integrations: [preact()],
  vite: {
    worker: {
      // One library of readability asks for `require` before it says what it exports; a worker has none.
      plugins: () => [
        {
          name: 'exports-without-require',
          transform: (code, id) =>
            id.includes('/pluralize/') ? code.replace("typeof require === 'function' && ", '') : null,
        },
        {
          // The solver is served pressed (src/pages/day/highs.wasm.gz.ts); its loader would bring it whole as well.
          name: 'solver-served-pressed',
          transform: (code, id) =>
            id.includes('/highs/build/')
              ? code.replace('new URL("highs.wasm",import.meta.url).href', '""')
              : null,
        },
      ],
    },
    resolve: {
      alias: {
        // In a browser this reader of entities asks a page's own parser; the Bench reads lessons where there is no page.
        'decode-named-character-reference': fileURLToPath(
          import.meta.resolve('decode-named-character-reference'),
        ),
      },
    },
  },
  build: { inlineStylesheets: 'never' },
  devToolbar: { enabled: false },
  markdown: { syntaxHighlight: false },
  security: {
    csp: {
      directives: [
        "default-src 'self'",
        "img-src 'self' data:",
        "connect-src 'self'",
        "worker-src 'self'",
        "manifest-src 'self'",
        "object-src 'none'",
        "base-uri 'none'",
        "form-action 'none'",
      ],
    },
  },
});
