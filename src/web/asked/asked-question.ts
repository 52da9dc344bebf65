import { answerWords, classWords } from '../../../views/register/words.ts'
import { type Advice, ANSWER_KEYS, type Brief } from '../../contract/index.ts'
import { ANSWER_WORDS, CLASSES, type QuestionId } from '../../register/class/classify.ts'
import { LIKELIHOOD_WORDS, SEVERITY_WORDS } from '../../register/class/look-up.ts'

/** A question of the register as its page asks it. */
export interface AskedQuestion {
  readonly words: string
  /** What was filled in, in words, and the choice that stands for it. */
  readonly filled: string
  readonly chosen: string
  readonly choices: readonly { readonly value: string; readonly words: string }[]
  readonly hint: string
}

const WORDS: Readonly<Record<string, readonly [words: string, hint: string]>> = {
  severity: ['How grave is it if this contaminant is eaten?', ''],
  likelihood: [
    'How often does a piece of concern arrive, before any control?',
    'Say in the reason what it rests on: the finds of another site, a screen that broke.',
  ],
  median: ['How long is a piece of this contaminant, in the middle of all that arrive?', 'In mm.'],
  factor: [
    'How widely do the lengths spread?',
    'As a factor: two thirds lie between median ÷ factor and median × factor.',
  ],
  shape: [
    'How large is the test piece that stands for a piece of length 1?',
    '0.6 for a chunk, 0.15 for a sliver.',
  ],
  acceptable: ['Which level of this hazard is acceptable at the end of the line?', ''],
  'validation-by': ['By which date is this control validated on the product?', ''],
  'working-share': [
    'In which share of the time does this machine really take out what it sees?',
    '0.999, or lower.',
  ],
  interval: ['How many minutes lie between two checks of this machine?', 'In min; choose from the table.'],
  react: ['How long does it take until somebody reacts to a failed check?', 'In min.'],
  'minutes-per-check': ['How long does one check take?', 'In min.'],
  'reinspect-per-min': ['How much can be re-inspected in a minute?', 'Packs or kg.'],
  'minutes-per-reject': ['How long does it take to open one rejected pack?', 'In min.'],
  'key-holder': ['Who holds the key of the reject bin?', 'A role or a name.'],
  days: ['On how many days a year does the line run?', ''],
  separators: [
    'Which devices that separate (sieve, magnet, sorter) stand ahead of the detector at this point?',
    'Their names as in the list of devices, parted by commas; none for none.',
  ],
  'rework-to': ['At which step of the flow does rework come back in?', 'A step as the brief names it.'],
  retention: ['How long are records kept, and on what basis?', ''],
  author: ['Who answers for this register?', 'Name and competence.'],
  team: ['Who was in the team, with which competence?', ''],
  'flow-confirmed': ['When was the flow confirmed on site, and by whom?', ''],
  issue: ['Which issue is this, of which date?', ''],
  changed: ['What has changed since the last issue?', ''],
  'released-by': ['Who holds product and releases it?', 'A role or a name, for every shift.'],
}

/** The question behind a key such as "c0.p1.q5"; null where there is none. */
export function askedQuestion(brief: Brief, advice: Advice, key: string): AskedQuestion | null {
  const site = advice.checks.siteList.find(({ id }) => id === key)
  if (site) return { words: site.question, filled: '', chosen: '', choices: [], hint: '' }
  const [, c, p, last = ''] = /^(?:c(\d+))?\.?(?:p(\d+))?(?:plant)?\.([a-z0-9-]+)$/.exec(key) ?? []
  const kind = key.startsWith('plant.') ? 'plant' : c === undefined ? 'p' : p === undefined ? 'c' : 'cp'
  if (!(ANSWER_KEYS[kind] as readonly string[]).includes(last)) return null
  const filledIn = advice.register.overruled.find(({ question }) => question === key)?.filled
  const confirm = advice.register.confirm.find(({ id }) => id === key)
  const control = advice.register.hazards
    .filter(({ contaminant }) => String(contaminant) === c)
    .flatMap(({ controls }) => controls)
    .find(({ point }) => point === brief.points[Number(p)]?.name)
  const question = control?.questions.find(({ id }) => id === key)
  if (kind === 'cp' && last !== 'validation-by') {
    if (!control) return null
    if (last === 'class')
      return {
        words: `Class of ${control.label} at “${control.point}”`,
        filled: classWords(control.proposed),
        chosen: control.proposed,
        choices: CLASSES.map((value) => ({ value, words: classWords(value) })),
        hint: '',
      }
    return {
      words: question?.question ?? 'This question is not reached: an earlier answer settles the class.',
      filled: answerWords(filledIn ?? question?.answer ?? ''),
      chosen: filledIn ?? question?.answer ?? '',
      choices: ANSWER_WORDS[last as QuestionId].map((value) => ({ value, words: answerWords(value) })),
      hint: '',
    }
  }
  if (last === 'machine') {
    const there = advice.points[Number(p)]
    const standing = advice.register.lines
      .flatMap(({ controls }) => controls)
      .find(({ point }) => point === there?.name)?.equipment
    return there
      ? {
          words: `Which machine stands at “${there.name}”?`,
          filled:
            there.options.find(({ equipment }) => equipment === (filledIn ?? standing))?.label ?? 'none',
          chosen: standing ?? 'none',
          choices: [
            ...there.options.map(({ equipment, label }) => ({ value: equipment, words: label })),
            { value: 'none', words: 'none stands there' },
          ],
          hint: '',
        }
      : null
  }
  if (last === 'piece-check')
    return {
      words: 'What does your customer call the check with test pieces?',
      filled: filledIn ?? 'verification',
      chosen: filledIn ?? 'verification',
      choices: ['verification', 'monitoring'].map((value) => ({ value, words: value })),
      hint: '',
    }
  const [words, hint] = WORDS[last] ?? ['', '']
  const hazard = advice.register.hazards.find(({ contaminant }) => kind === 'c' && String(contaminant) === c)
  const scale = SCALES[last]
  if (hazard && scale) {
    const rated = filledIn ?? String(hazard[scale.of].value)
    const choices = scale.words.map((word, at) => ({ value: `${at + 1}`, words: `${at + 1}: ${word}` }))
    return { words, filled: choices[Number(rated) - 1]?.words ?? rated, chosen: rated, choices, hint }
  }
  const filled = filledIn ?? confirm?.value ?? standingOf(advice, key, Number(p)) ?? ''
  return { words, filled, chosen: filled, choices: [], hint }
}

const SCALES: Readonly<Record<string, { of: 'severity' | 'likelihood'; words: readonly string[] }>> = {
  severity: { of: 'severity', words: SEVERITY_WORDS },
  likelihood: { of: 'likelihood', words: LIKELIHOOD_WORDS },
}

/** What holds where no assumption of the register says it: of the check plan, of a hazard, of the plant. */
function standingOf({ checks, register }: Advice, key: string, point: number): string | undefined {
  const check = checks.points.find(({ pointIndex }) => pointIndex === point)
  if (key.endsWith('.interval') && check?.intervalMin != null) return `${check.intervalMin} min`
  const [, contaminant] = /^c(\d+)\.acceptable$/.exec(key) ?? []
  const hazard = register.hazards.find((one) => String(one.contaminant) === contaminant)
  return (
    check?.assumed.find(({ id }) => id === key)?.value ??
    hazard?.acceptableLevel.text ??
    register.plant.find(({ id }) => id === key)?.value
  )
}
