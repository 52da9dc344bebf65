import type { Register } from '../../src/contract/register.ts'

const OF_A_POINT: Readonly<Record<string, string>> = {
  machine: 'machine',
  separators: 'devices ahead of the detector',
  'working-share': 'working share',
  interval: 'time between checks',
  react: 'time to react',
  'minutes-per-check': 'time a check takes',
  'reinspect-per-min': 'pace of re-inspection',
  'minutes-per-reject': 'time to open a rejected pack',
  'key-holder': 'key of the reject bin',
}

const OF_A_PIECE: Readonly<Record<string, string>> = {
  severity: 'severity',
  likelihood: 'likelihood',
  median: 'median length',
  factor: 'spread of lengths',
  shape: 'test piece for the length',
  acceptable: 'acceptable level',
  class: 'class',
  'validation-by': 'day of validation',
}

/** What an answer of a person is about: "question 5, stone, after packing" for c0.p1.q5. */
export function aboutWords(
  question: string,
  { plant, hazards }: Pick<Register, 'plant' | 'hazards'>,
): string {
  const known = plant.find(({ id }) => id === question)
  if (known) return known.label
  const [, c, p, last = ''] = /^(?:c(\d+))?\.?(?:p(\d+))?\.?([a-z0-9-]+)$/.exec(question) ?? []
  const what = /^q\d$/.test(last)
    ? `question ${last.slice(1)}`
    : (OF_A_PIECE[last] ?? OF_A_POINT[last] ?? last)
  const hazard = hazards.find(({ contaminant }) => String(contaminant) === c)?.label
  const point = hazards
    .flatMap(({ controls }) => controls)
    .find(({ questions }) => p !== undefined && questions[0]?.id.includes(`.p${p}.`))?.point
  return [what, hazard, point].filter((word) => word !== undefined && word !== '').join(', ') || question
}
