import type { Finding } from '../../contract/index.ts'
import type { Ranked } from '../stages.ts'
import { joined } from './said.ts'

/** The findings of an option, each with what rules note of it where its physics notes nothing. */
export const notedFindings = ({ findings, outcomes }: Pick<Ranked, 'findings' | 'outcomes'>): Finding[] =>
  findings.map((finding) => {
    const noted = outcomes.filter((o) => o.type === 'notes' && o.contaminant === finding.contaminant)
    return { ...finding, note: finding.note || joined(noted) }
  })
