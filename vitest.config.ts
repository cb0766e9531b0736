import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/site/**', 'node_modules/**'],
    // Patience for a machine that does other work; each of the long ones takes under a minute on a quiet one.
    testTimeout: 180_000,
    reporters: ['default'],
  },
});
