import { defineConfig } from 'vitest/config'

/** Folders of tests that run; `MUTATE_TESTS="advice/order"` narrows them to those of the part that is changed. */
const ALL = 'advice/assess advice/decide advice/order brief xray/places'

/** Tests that decide quickly whether a changed line is noticed: those of deciding, ordering, places and briefs. */
export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    include: (process.env.MUTATE_TESTS ?? ALL).split(' ').map((folder) => `test/${folder}/**/*.test.ts`),
    // Modules are loaded once for all files: what is loaded anew for every changed line takes longer than the tests.
    isolate: false,
    // Whole advices and random cases are left out: they are slow, and what they notice the others should notice too.
    testNamePattern: '^(?!.*(stands? in the advice|random|synthetic))',
    testTimeout: 60_000,
  },
})
