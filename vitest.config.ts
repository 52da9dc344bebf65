import { defineConfig } from 'vitest/config'

const report = process.env.GRITWISE_TEST_REPORT
const BROWSER = 'test/browser/**/*.test.ts'

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    testTimeout: 180_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 15_000 } },
    maxWorkers: 3,
    // The files of a worker share their modules, and with them what the program remembers of its physics.
    isolate: false,
    reporters: report ? ['default', 'json'] : ['default'],
    ...(report ? { outputFile: { json: report } } : {}),
    projects: [
      {
        extends: true,
        test: {
          name: 'browser',
          include: [BROWSER],
          globalSetup: 'test/browser/served.ts',
        },
      },
      {
        extends: true,
        test: {
          name: 'rest',
          include: ['test/**/*.test.ts', 'test/**/*.test.tsx'],
          exclude: [BROWSER],
          globalSetup: 'test/temporary.ts',
        },
      },
    ],
  },
})
