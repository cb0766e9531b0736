import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: ['tests/**/*.test.ts'],
    exclude: ['tests/site/**', 'node_modules/**'],
    testTimeout: 60_000,
    reporters: ['default'],
  },
});
