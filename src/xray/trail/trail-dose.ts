import type { Calculation, XrayMachine } from '../../contract/index.ts'
import { archetypes } from '../../reference/index.ts'
import type { Dose } from '../beam/dose.ts'
import type { XrayBuild } from '../beam/exposure.ts'
import { entry } from './trail-entry.ts'

/** The trail of one pass's dose: to the tube's output, the machine's distances and the belt. Values in µGy. */
export function doseTrail(
  prefix: string,
  machine: XrayMachine,
  build: XrayBuild,
  speedMPerMin: number,
  dose: Dose,
  into: Map<string, Calculation>,
): void {
  const basis = archetypes.get(machine.id)?.sources ?? []
  const id = (name: string) => `${prefix}.${name}`
  const add = (name: string, ...rest: DropFirst<Parameters<typeof entry>>) =>
    into.set(id(name), entry(id(name), ...rest))
  add('source-to-detector', 'source to detector', 'SDD', build.sourceToDetectorMm, 'mm', GIVEN, [], basis)
  add(
    'food-distance',
    'source to the plane of the food',
    'r',
    dose.foodDistanceMm,
    'mm',
    'source to detector / M',
    [id('source-to-detector'), id('magnification')],
  )
  add(
    'kerma-per-mas',
    'air kerma of the beam at 1 m',
    'Y',
    dose.kermaPerMasMicroGy,
    'µGy/mAs',
    'Σ fluence · E · (μ_en/ρ of air), behind window, filter and the air down to the food',
    [id('kV')],
    ['seltzer-berger', 'tucker-1991', 'xraylib'],
  )
  add('beam-width', 'width of the beam at the belt', 'w', build.beamWidthMm, 'mm', GIVEN, [], basis)
  add('belt-speed', 'belt speed', 'v', speedMPerMin, 'm/min', 'from the brief')
  add('views', 'views', '', build.views, '', GIVEN, [], basis)
  add(
    'in-beam',
    'time a place of the food is in the beam',
    't',
    dose.inBeamS * 1000,
    'ms',
    'views · beam width / belt speed',
    [id('beam-width'), id('belt-speed'), id('views')],
  )
  add(
    'kerma',
    'air kerma of one pass in the plane of the food',
    'K',
    dose.kermaMicroGy,
    'µGy',
    'Y · (1000 mm / r)² · I · t; tube output ±25 %',
    [id('kerma-per-mas'), id('food-distance'), id('mA'), id('in-beam')],
  )
  add(
    'food-over-air',
    'dose in this food over air kerma',
    '',
    dose.foodOverAir,
    '',
    'mean of μ_en/ρ over the beam, food / air',
    [id('kV')],
    ['xraylib'],
  )
  add(
    'dose',
    'absorbed dose of the food in one pass',
    'D',
    dose.doseMicroGy,
    'µGy',
    'K · food/air; ±25 %; nothing taken off for packaging or food above, scatter left out',
    [id('kerma'), id('food-over-air')],
  )
}

const GIVEN = 'given by the machine, or assumed for one that does not say'

type DropFirst<T extends readonly unknown[]> = T extends readonly [unknown, ...infer Rest] ? Rest : never
