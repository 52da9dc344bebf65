/** What a person enters for all sides: in their own currency; null where left blank. */
export interface SharedCosts {
  readonly daysPerYear: number | null
  readonly perWorkHour: number | null
  readonly perKWh: number | null
  readonly perRejectedPack: number | null
}

/** What a person enters for one side; null where left blank. */
export interface OwnCosts {
  readonly price: number | null
  readonly years: number | null
  readonly upkeepPerYear: number | null
  readonly kW: number | null
  readonly workHoursPerDay: number | null
}

/** The line as the brief has it, and the one rate of false rejects. */
export interface LinePace {
  /** null where there are no packs: then false rejects cannot be counted in packs. */
  readonly packsPerMin: number | null
  readonly hoursPerDay: number
  /** The rate that sizes and clause hold at. */
  readonly falseRejectsPerPack: number
}

export type CostId = 'price' | 'upkeep' | 'energy' | 'work' | 'false-rejects'

/** One line of the yearly cost; null where something it needs was left blank. */
export interface CostLine {
  readonly id: CostId
  readonly perYear: number | null
  /** The blank fields this line waits for. */
  readonly waitsFor: readonly (keyof SharedCosts | keyof OwnCosts | 'packsPerMin')[]
}

export interface YearlyCost {
  readonly lines: readonly CostLine[]
  /** Sum of the lines that could be computed; null where none could. */
  readonly sum: number | null
  readonly complete: boolean
  readonly falseRejectsPerDay: number | null
}

type Blanks = CostLine['waitsFor'][number]

/**
 * Yearly cost of one side, each line from entered numbers only:
 * price ÷ years; upkeep; kW × hours × days × price of a kWh; work hours × days × price of an hour;
 * packs × false-reject share × worth of a pack. No price is assumed anywhere.
 */
export function yearlyCost(own: OwnCosts, shared: SharedCosts, pace: LinePace): YearlyCost {
  const given: Readonly<Record<Blanks, number | null>> = { ...own, ...shared, packsPerMin: pace.packsPerMin }
  const line = (id: CostId, needs: readonly Blanks[], compute: () => number): CostLine => {
    const waitsFor = needs.filter((name) => given[name] === null)
    return { id, perYear: waitsFor.length > 0 ? null : compute(), waitsFor }
  }
  const perDay =
    pace.packsPerMin === null ? null : pace.packsPerMin * 60 * pace.hoursPerDay * pace.falseRejectsPerPack
  const lines = [
    line('price', ['price', 'years'], () => own.price! / own.years!),
    line('upkeep', ['upkeepPerYear'], () => own.upkeepPerYear!),
    line(
      'energy',
      ['kW', 'daysPerYear', 'perKWh'],
      () => own.kW! * pace.hoursPerDay * shared.daysPerYear! * shared.perKWh!,
    ),
    line(
      'work',
      ['workHoursPerDay', 'daysPerYear', 'perWorkHour'],
      () => own.workHoursPerDay! * shared.daysPerYear! * shared.perWorkHour!,
    ),
    line(
      'false-rejects',
      ['packsPerMin', 'daysPerYear', 'perRejectedPack'],
      () => perDay! * shared.daysPerYear! * shared.perRejectedPack!,
    ),
  ]
  const computed = lines.flatMap(({ perYear }) => (perYear === null ? [] : [perYear]))
  return {
    lines,
    sum: computed.length > 0 ? computed.reduce((sum, one) => sum + one, 0) : null,
    complete: computed.length === lines.length,
    falseRejectsPerDay: perDay,
  }
}
