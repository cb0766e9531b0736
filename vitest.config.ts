import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/site/**', 'node_modules/**'],
    // No test leaves anything behind, so a worker keeps what it has loaded: to load the library anew for each of 200 files
    // took longer than half of the tests.
    isolate: false,
    // One less than the cores would be one on most machines, while many tests wait for a program they have begun.
    maxWorkers: 2,
    // Patience for a machine that does other work; each of the long ones takes under a minute on a quiet one.
    testTimeout: 180_000,
    reporters: ['default'],
  },
});
