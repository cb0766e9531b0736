import { defineConfig } from '@playwright/test';

const PORT = Number(process.env['PITLORE_PORT'] ?? 4329);

export default defineConfig({
  testDir: 'tests/site',
  testMatch: '**/*.spec.ts',
  workers: 1,
  // Patience for a machine that does other work; a quiet one needs a few seconds a test.
  timeout: 120_000,
  reporter: [['list'], ['json', { outputFile: 'test-results/site.json' }]],
  use: {
    baseURL: `http://localhost:${PORT}`,
    launchOptions: {
      executablePath: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-background-networking'],
    },
  },
  webServer: { command: `node tests/site/serve.ts ${PORT}`, port: PORT, reuseExistingServer: false },
});
