import type { Brief, Plan } from '../../contract/index.ts'
import { materials } from '../../reference/index.ts'

const mm = (value: number) => `${Number(value.toFixed(2))} mm`
const share = (chance: number) => (chance > 0.995 ? 'over 99 %' : `${Math.round(chance * 100)} %`)
const missedWords = (misses: number) => (misses === 0 ? 'none missed' : `at most ${misses} missed`)

/** What makes a pack hardest to inspect, by family of machine (common practice, no source). */
const WORST: Record<string, string> = {
  xray: 'the thickest and most uneven fill of this line, with the packs piled as they come at their worst',
  coil: 'the product at its strongest signal (warmest, wettest or saltiest; frozen packs as their edges thaw), after a standstill as well as in full run',
}

/** How the trial is carried out; one act a sentence. */
export function stepsOf(plan: Omit<Plan, 'steps' | 'clause' | 'words'>, family: string): string[] {
  const { packs, lies, clean, chosen } = plan
  return [
    `Packs: ${packs} of normal production that span its thickness and filling, none of them shown to the machine when it was taught. The worst product at its worst moment: ${WORST[family] ?? WORST.xray}.`,
    'Each of these packs runs clean three times first. A pack rejected then carries no piece.',
    `Clean run: ${clean.packs.toLocaleString('en')} good packs in four blocks over the shift, at most ${clean.allowed} rejected${clean.minutes === null ? '' : ` (${Math.round(clean.minutes)} min of running)`}.`,
    'Settings are locked and written down before the first piece; who changes one starts again.',
    'The order is the one drawn by lot on the sheet: a third at the start, a third after a stop of 30 minutes, a third at the end of the shift.',
    'A piece counts as found when its pack lies in the reject bin, not when a lamp lights.',
    'Each piece is placed anew in its pack, once. Several runs of one piece in one pack count as one piece.',
    lies.length > 1 ? `Each size runs in every lie by itself: ${lies.join(', ')}.` : '',
    chosen
      ? `The clause counts only the pieces of ${mm(chosen.clause.sizeMm)}; the others draw the curve.`
      : '',
    "The plant's own fragments run beside it and are reported beside it; they are not in the clause.",
    'Every pack with a piece is marked, counted out and counted back, and none goes to sale. Nobody reaches into the machine or past a guard; interlocks stay as they are.',
  ].filter(Boolean)
}

/** "stone" where its kind is not known; a material of one's own keeps its name. */
const stuffOf = (material: string): string =>
  (materials.get(material)?.label ?? material).replace(', kind not known', '')

/** What both sides sign. */
export function clauseOf(plan: Omit<Plan, 'steps' | 'clause' | 'words'>, brief: Brief): string {
  const { chosen, clean, predicted, label, lies } = plan
  const point = brief.points.find(({ name }) => name === plan.point)!
  if (!chosen) return ''
  const { clause } = chosen
  const each = lies.length > 1 ? ` in each lie (${lies.join(', ')})` : ''
  const temperature = point.product.temperatureC
  return `${label} at ${plan.point}, at one locked setting, ${point.speedMPerMin} m/min, product at ${temperature} °C: ${clause.pieces} pieces of ${stuffOf(plan.material)} of ${mm(clause.sizeMm)}${each}, one a pack, at ${predicted.place}, ${missedWords(clause.misses)}; and ${clean.packs.toLocaleString('en')} clean packs with at most ${clean.allowed} rejected, at the same setting. Repeated on site with this product before acceptance.`
}

/** The plan in a sentence or two. */
export function planWords(plan: Omit<Plan, 'steps' | 'clause' | 'words'>): string {
  const { chosen, sizeMm, power, confidence, predicted, reachableMm } = plan
  if (!chosen)
    return `No count of pieces here shows ${mm(sizeMm)} with ${share(power)} power: the machine is predicted to find half at ${mm(predicted.a50)} and nine in ten at ${mm(predicted.a90)}, too much to show that.${reachableMm ? ` ${mm(reachableMm)} can be shown so.` : ''}`
  const { clause } = chosen
  return `${clause.pieces} pieces of ${mm(clause.sizeMm)} with ${missedWords(clause.misses)} show that ${mm(sizeMm)} is found 9 times in 10, ${share(confidence)} sure. If the machine is as predicted the trial shows it with chance ${share(clause.power.asPredicted)}; with sizes 5 % larger ${share(clause.power.fiveWorse)}, 10 % larger ${share(clause.power.tenWorse)}.`
}
