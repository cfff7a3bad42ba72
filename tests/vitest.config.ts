import { defineConfig } from 'vitest/config'

/** A file for the results as JSON beside the lines on the screen: `npm cit` hands no arguments on. */
const report = process.env.TEST_REPORT

export default defineConfig({
  root: new URL('..', import.meta.url).pathname,
  test: {
    include: ['tests/**/*.test.ts'],
    testTimeout: 30_000,
    pool: 'forks',
    // one short of all, as it comes, leaves half of a farm's two cores idle
    maxWorkers: '100%',
    reporters: report ? ['default', ['json', { outputFile: report }]] : ['default'],
  },
})
