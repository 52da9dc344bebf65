import { defineConfig } from 'vitest/config'

const report = process.env.GRITWISE_TEST_REPORT

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    include: ['test/**/*.test.ts', 'test/**/*.test.tsx'],
    testTimeout: 60_000,
    hookTimeout: 60_000,
    maxWorkers: 2,
    reporters: report ? ['default', 'json'] : ['default'],
    ...(report ? { outputFile: { json: report } } : {}),
  },
})
