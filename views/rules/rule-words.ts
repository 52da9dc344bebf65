import type { RuleCard } from './rule-card.ts'

export const EFFECT_WORDS: Readonly<Record<RuleCard['type'], string>> = {
  excludes: 'excludes',
  weakens: 'speaks against',
  favours: 'speaks for',
  requires: 'asks for something',
  places: 'says where',
  tests: 'asks for a test',
  warns: 'warns',
  headline: 'words the answer',
  leaves: 'says what is left to do',
  asks: 'asks before ordering',
  grounds: 'words a verdict',
  combines: 'words the recommendation',
  multiplies: 'says whether misses multiply',
  hinges: 'words a close call',
  parts: 'says what puts one machine before another',
  alters: 'says what a change brings',
  matters: 'says what a value not given may do',
  notes: 'notes what limits a size',
  records: 'is written into the register or the check plan',
  prevents: 'keeps it out',
}

/** What a rule is asked of, in words. */
export const GROUND_WORDS: Readonly<Record<string, string>> = {
  brief: 'the brief as a whole',
  point: 'an inspection point',
  xray: 'x-ray machines',
  coil: 'metal detectors (balanced coil)',
  'static-field': 'magnetic-field detectors',
  optical: 'optical sorters',
  magnet: 'magnets',
  sieve: 'sieves',
  density: 'density separators',
  line: 'a line, once the machines are in order',
  use: 'a machine recommended',
  option: 'a machine in its place in the order',
  together: 'two machines that look for the same piece',
  close: 'two machines between which the order is close',
  apart: 'the machine recommended beside another one',
  change: 'a change of the line that was searched for',
  missing: 'a value that the brief does not give',
  record: 'the hazard register and check plan as a whole',
  hazard: 'a hazard of a line',
  control: 'a control of a hazard, before it is classed',
  classed: 'a control of a hazard with its class',
  check: 'a machine that is checked',
}

export const groundWords = (ground: string): string => GROUND_WORDS[ground] ?? ground
