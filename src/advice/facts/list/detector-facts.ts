import { type FactDefinition, type FactRow, factsOf } from './fact-definition.ts'

/** Facts of one machine that finds pieces, whatever it looks with. */
const OPTION: readonly FactRow[] = [
  ['fit.widthNeededMm', 'width the pack needs', 'mm', 'number'],
  ['fit.widthAllowedMm', 'widest pack the machine takes', 'mm', 'number'],
  ['fit.heightNeededMm', 'height the pack needs', 'mm', 'number'],
  ['fit.heightAllowedMm', 'highest pack the machine takes', 'mm', 'number'],
]
const COUNTS: readonly FactRow[] = [
  ['findings.unmet', 'contaminants expected to be missed at the size to find', '', 'number'],
  ['findings.close', 'contaminants found only on favourable assumptions', '', 'number'],
]
const CLEAN_RUN: readonly FactRow[] = [
  ['cleanRun.packs', 'clean packs run on the machine', '', 'number'],
  ['cleanRun.rejects', 'of these rejected', '', 'number'],
  ['cleanRun.overAsked', 'its rejects per pack ÷ those asked', '', 'number'],
  ['trial.lapsed', 'trials on the product that no longer count', '', 'number'],
  ['trial.lapsedBecause', 'what has changed since', '', 'string'],
]
const FINDING: readonly FactRow[] = [
  ['finding.possible', 'some size is within reach of the ideal machine', '', 'boolean'],
  ['finding.hasSize', 'some size is expected to be found', '', 'boolean'],
  ['finding.limitMm', 'largest size the model speaks of', 'mm', 'number'],
  ['finding.bestMm', 'best possible size', 'mm', 'number'],
  ['finding.expectedMm', 'expected size', 'mm', 'number'],
  ['finding.sureMm', 'size found 995 times in 1,000', 'mm', 'number'],
  ['finding.cautiousMm', 'cautious size', 'mm', 'number'],
  ['finding.chancePct', 'chance of finding the size to find', '%', 'number'],
  ['finding.spread', 'cautious ÷ expected size', '', 'number'],
  ['finding.widest', 'assumption that widens the range most', '', 'string'],
]

/** Facts that x-ray machines and metal detectors share; the name is there of every machine. The static-field detector has no sizes. */
export const DETECTOR_FACTS: readonly FactDefinition[] = [
  { id: 'machine.label', label: 'machine', unit: '', type: 'string', scope: 'option' },
  ...factsOf('option', OPTION, ['xray', 'coil', 'static-field']),
  ...factsOf('option', COUNTS, ['xray', 'coil']),
  ...factsOf('option', CLEAN_RUN, ['xray', 'coil']),
  ...factsOf('finding', FINDING, ['xray', 'coil']),
]
