import { optionChance, shareWords, togetherChance } from '../../../views/fragment/fragment-words.ts'
import { sizeWords } from '../../../views/words/size.ts'
import type { FragmentAnswer, FragmentOption } from '../../contract/index.ts'

function optionLines(option: FragmentOption): string[] {
  const where = option.installed ? '' : ' (not named in the brief; if it stood here)'
  const any =
    option.chanceAnyOrientation === null
      ? []
      : [`over random orientations: ${optionChance({ ...option, chance: option.chanceAnyOrientation })}`]
  const head = `  ${option.label} [${option.equipment}]: ${optionChance(option)}${where}`
  if (option.excluded) return [head, `      ${option.excluded}`]
  return [
    head,
    ...(option.settings ? [`      at ${option.settings}`] : []),
    ...any.map((line) => `      ${line}`),
    ...option.because.map((line) => `      ${line}`),
    ...option.zones.map(
      ({ name, state, sizes, why }) =>
        `      ${name}: ${state}${sizes.expectedMm === null ? '' : `, from ${sizeWords(sizes.expectedMm)} mm`}. ${why}`,
    ),
    ...option.rules.map(({ rule, text }) => `      ${text} [${rule}]`),
  ]
}

/** Would we have found this? For a terminal. */
export function fragmentText(answer: FragmentAnswer): string {
  const lines = [answer.summary]
  if (answer.together)
    lines.push('', `All together: ${togetherChance(answer.together)}. ${answer.together.because}`)
  for (const { name, options, removals, stillEnters } of answer.points) {
    lines.push('', `== ${name}`, stillEnters, ...options.flatMap(optionLines))
    for (const { label, shareRemoved, because, unsuitable } of removals) {
      const share = `removes ${shareWords(shareRemoved)} of such pieces. ${because}`
      lines.push(`  upstream, ${label}: ${unsuitable === '' ? share : `not suitable. ${unsuitable}`}`)
    }
  }
  lines.push('', 'What no chance tells:', ...answer.questions.map((question) => `  ${question}`))
  lines.push('', 'Mind:', ...answer.cautions.map(({ text }) => `  ${text}`))
  const { gritwise, rules, reference } = answer.versions
  lines.push('', `gritwise ${gritwise}, rules ${rules}, reference ${reference}`)
  return `${lines.join('\n')}\n`
}
