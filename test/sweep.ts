/**
 * How many cases a sweep takes: with every run of the tests a few, enough to fail where something breaks; with
 * `npm run sweeps` all of them.
 */
export const sweep = <Cases>(usually: Cases, inFull: Cases): Cases =>
  process.env.GRITWISE_SWEEPS === 'full' ? inFull : usually
