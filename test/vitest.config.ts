import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['test/**/*.test.ts'],
    setupFiles: ['test/support/quiet-console.ts'],
    testTimeout: 30_000,
    hookTimeout: 60_000,
    reporters: ['default'],
    pool: 'forks',
  },
});
