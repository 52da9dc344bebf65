import type { Brief, RuleTrace } from '../../contract/index.ts'
import type { Rulebook } from '../book/rule-schema.ts'
import type { RuleScope } from '../book/rule-scope.ts'
import { decide } from '../decide/decide.ts'
import type { FactSheet } from '../facts/fact-sheet.ts'
import { toRuleTrace } from '../say/reason.ts'
import type { LineOutcome } from '../stages.ts'

type Place = Partial<Pick<LineOutcome, 'pointIndex' | 'equipment' | 'beside'>>

/** A way to ask the book about a piece that was found, and every rule asked, for the trace. */
export interface PieceAsker {
  readonly ask: (scope: RuleScope, facts: FactSheet, place: Place) => Promise<LineOutcome[]>
  readonly asked: readonly RuleTrace[]
}

/** Asks the rules and keeps what came of each; gives those that fired. */
export function pieceAsker(book: Rulebook, brief: Brief): PieceAsker {
  const asked: RuleTrace[] = []
  return {
    asked,
    ask: async (scope, { facts }, place) => {
      const decided = (await decide(book, scope, facts)).map(
        (outcome): LineOutcome => ({
          ...outcome,
          line: null,
          pointIndex: null,
          equipment: null,
          contaminant: null,
          ...place,
        }),
      )
      asked.push(...decided.map((outcome) => toRuleTrace(outcome, brief)))
      return decided.filter(({ outcome }) => outcome === 'fired')
    },
  }
}
