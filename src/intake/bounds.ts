/** Bytes taken at once at any door: a body, a file, an address once unpacked. A full brief has about 60 kB. */
export const MOST_BYTES = 512 * 1024

/** Bytes of a table of test runs, or of a body that carries one: 100,000 rows. */
export const MOST_BYTES_OF_RUNS = 24 * 1024 * 1024

/** Steps down from the document to its deepest value; a brief needs 5, a rule as many as its conditions nest. */
export const MOST_DEPTH = 20

/** Values in one document: a brief with every list full has about 5,000. */
export const MOST_VALUES = 20_000

/** Problems told at once: more would not be read, and say no more. */
export const MOST_PROBLEMS = 50
