import { defineConfig } from '@playwright/test';

const PORT = Number(process.env['PITLORE_PORT'] ?? 4329);

export default defineConfig({
  testDir: 'tests/site',
  testMatch: '**/*.spec.ts',
  // Its own folder: it is emptied before a run, and the unit report lies beside it.
  outputDir: 'test-results/site',
  workers: 1,
  // Patience for a machine that does other work; a quiet one needs a few seconds a test.
  timeout: 120_000,
  // A key pressed between two frames of a busy machine: tried once more, and told as flaky.
  retries: 1,
  reporter: [['list'], ['json', { outputFile: 'test-results/site.json' }]],
  use: {
    // Each test is a new device, which would fetch all of the site to keep it. What is about the kept copy allows it.
    serviceWorkers: 'block',
    baseURL: `http://localhost:${PORT}`,
    launchOptions: {
      executablePath: process.env['CHROMIUM_PATH'] ?? '/usr/bin/chromium',
      args: ['--no-sandbox', '--disable-background-networking'],
    },
  },
  webServer: { command: `node tests/site/serve.ts ${PORT}`, port: PORT, reuseExistingServer: false },
});
