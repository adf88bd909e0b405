import { defineConfig } from 'vitest/config';

export default defineConfig({
  test: {
    include: [
      'packages/**/*.test.ts',
      'adapters/**/*.test.ts',
      'apps/**/*.test.ts',
      'truth/**/*.test.ts',
      'golden/**/*.test.ts',
      'bench/**/*.test.ts',
      'evaluation/**/*.test.ts',
      'scripts/**/*.test.ts',
    ],
    testTimeout: 120_000,
    hookTimeout: 120_000,
    pool: 'forks',
  },
});
