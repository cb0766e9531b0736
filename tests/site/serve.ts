import { siteServer } from './site-server.ts';

// Serves dist/ for the browser tests: serve.ts PORT [FOLDER]
siteServer(process.argv[3] ?? 'dist').listen(Number(process.argv[2] ?? 4329));
