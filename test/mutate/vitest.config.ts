import { defineConfig } from 'vitest/config'

/** Tests that decide quickly whether a changed line is noticed: those of deciding, ordering, places and briefs. */
export default defineConfig({
  oxc: { jsx: { runtime: 'automatic', importSource: 'hono/jsx' } },
  test: {
    include: [
      'test/advice/assess/**/*.test.ts',
      'test/advice/decide/**/*.test.ts',
      'test/advice/order/**/*.test.ts',
      'test/brief/**/*.test.ts',
      'test/xray/places/**/*.test.ts',
    ],
    // Whole advices are left out: they are slow, and what they notice is noticed by the others.
    testNamePattern: '^(?!.*stands? in the advice)',
    testTimeout: 60_000,
  },
})
