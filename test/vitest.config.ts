import { defineConfig } from 'vitest/config';

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['test/**/*.test.ts'],
    globalSetup: ['test/support/demo-files.ts'],
    setupFiles: ['test/support/quiet-console.ts'],
    testTimeout: 30_000,
    hookTimeout: 60_000,
    reporters: ['default'],
    pool: 'forks',
    // The default leaves a core idle, which is half of a machine of two.
    maxWorkers: '100%',
  },
});
