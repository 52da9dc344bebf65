import type { Advice, Brief, Contaminant, Finding, LineMachine, Option } from '../contract/index.ts'

const pieceOf = ({ material, shape, lengthMm, faceMm2, placement }: Contaminant | Finding) => ({
  material,
  shape,
  lengthMm,
  faceMm2,
  placement,
})

/** An advice in short: its headline, what answers for each contaminant, every machine as set. */
export function inShort(brief: Brief, advice: Advice) {
  const recommended = new Set(advice.combination.uses.map(({ point, equipment }) => `${point}|${equipment}`))
  const machines = advice.points.flatMap(({ name, options }, at) =>
    options
      .filter(({ rank }) => rank !== null)
      .map((option) =>
        machineOf(advice, option, { line: brief.points[at]!.line, point: name, at }, recommended),
      ),
  )
  const answers = advice.answer.rows.map((row) => ({
    ...pieceOf(brief.contaminants[row.contaminant]!),
    line: row.line,
    askedMm: row.askedMm,
    promisedMm: row.promisedMm,
    expectedMm: row.expectedMm,
    equipment: row.equipment,
    point: row.point,
    meets: row.meets,
    left: { kind: row.left.kind, text: row.left.text },
  }))
  return { sentence: advice.answer.sentence, brief: brief.given, answers, machines }
}

function machineOf(
  advice: Advice,
  option: Option,
  { line, point, at }: { line: string; point: string; at: number },
  recommended: ReadonlySet<string>,
): LineMachine {
  const { equipment, label, family, burden, verdict, build, askFor, settings } = option
  return {
    line,
    point,
    equipment,
    label,
    family,
    burden,
    verdict,
    recommended: recommended.has(`${point}|${equipment}`),
    build,
    opening: family === 'coil' ? openingOf(advice, `p${at}.${equipment}`) : null,
    askFor,
    settings,
    findings: option.findings.map((finding) => ({
      ...pieceOf(finding),
      askedMm: finding.mustFindMm,
      promisedMm: finding.cautiousMm,
      expectedMm: finding.expectedMm,
      meets: finding.meets,
    })),
  }
}

function openingOf({ trace }: Advice, scope: string) {
  const fact = (id: string) => trace.facts.find((one) => one.scope === scope && one.id === id)?.value
  const heightMm = fact('coil.openingHeightMm')
  const widthMm = fact('coil.openingWidthMm')
  return typeof heightMm === 'number' && typeof widthMm === 'number' ? { heightMm, widthMm } : null
}
