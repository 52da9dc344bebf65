import { defineConfig } from 'vitest/config'
import { BaseSequencer, type TestSpecification } from 'vitest/node'

const report = process.env.GRITWISE_TEST_REPORT
const BROWSER = 'test/browser/**/*.test.ts'

/** Files that take longest come first, so that no worker sits beside a long one at the end; then the usual order. */
const LONGEST = [
  'browser/sittings',
  'browser/reasoning',
  'browser/trial',
  'browser/trade-offs',
  'browser/first-pages',
  'browser/compare-and-exercises',
  'browser/walk',
  'words/words',
  'change/change',
  'trade-offs/size-against',
  'hostile/fuzz',
  'book/house-examples',
]

class LongestFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const turn = ({ moduleId }: TestSpecification) => {
      const at = LONGEST.findIndex((one) => moduleId.includes(`/${one}.`))
      return at < 0 ? LONGEST.length : at
    }
    return (await super.sort(files)).sort((a, b) => turn(a) - turn(b))
  }
}

export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    testTimeout: 180_000,
    hookTimeout: 180_000,
    expect: { poll: { timeout: 15_000 } },
    // The files of a worker share their modules, and with them what the program remembers of its physics.
    isolate: false,
    sequence: { sequencer: LongestFirst },
    reporters: report ? ['default', 'json'] : ['default'],
    ...(report ? { outputFile: { json: report } } : {}),
    projects: [
      {
        extends: true,
        test: {
          name: 'browser',
          // A file waits for the browser and the house most of the time.
          maxWorkers: 3,
          sequence: { groupOrder: 0 },
          include: [BROWSER],
          globalSetup: 'test/browser/served.ts',
        },
      },
      {
        extends: true,
        test: {
          name: 'rest',
          maxWorkers: 2,
          sequence: { groupOrder: 1 },
          include: ['test/**/*.test.ts', 'test/**/*.test.tsx'],
          exclude: [BROWSER],
          globalSetup: 'test/temporary.ts',
        },
      },
    ],
  },
})
