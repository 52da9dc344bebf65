import type { Plan } from '../../src/contract/plan.ts'
import type { Option } from '../brief/sheet.ts'
import type { Names } from '../words/contaminant.ts'

/** What a person asks of a plan, as typed. */
export interface PlanTyped {
  readonly contaminant: string
  readonly size: string
  readonly machine: string
  readonly power: string
  readonly confidence: string
}

export interface PlanPageProps {
  readonly title: string
  readonly packed: string
  readonly typed: PlanTyped
  readonly problems: ReadonlyMap<string, string>
  readonly contaminants: readonly Option[]
  readonly machines: readonly Option[]
  readonly plan: Plan | null
  readonly names: Names
}

/** The address that asks for the same plan. */
export const planQuery = (packed: string, typed: PlanTyped): string =>
  new URLSearchParams({ b: packed, ...typed }).toString()

export const POWER_CHOICES = ['0.8', '0.9', '0.95'] as const
export const CONFIDENCE_CHOICES = ['0.9', '0.95', '0.99'] as const
