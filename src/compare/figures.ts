import type { Machine, Point } from '../contract/index.ts'
import type { Side } from './sides.ts'

/** One figure of a machine or its place: what it is called, and its value with its unit. */
export type Figures = ReadonlyMap<string, string>

const unit = (value: number | undefined, of: string) => (value === undefined ? undefined : `${value} ${of}`)
const range = (ends: readonly [number, number] | undefined, of: string) =>
  ends && `${ends[0]} to ${ends[1]} ${of}`

function machineFigures(machine: Machine, point: Point): Record<string, string | undefined> {
  const bounds = {
    'Widest pack': unit(machine.maxWidthMm, 'mm'),
    'Highest pack': unit(machine.maxHeightMm, 'mm'),
  }
  switch (machine.family) {
    case 'xray':
      return {
        ...bounds,
        'Tube voltage': unit(machine.kV, 'kV') ?? range(machine.kVRange, 'kV'),
        'Tube current':
          unit(machine.mA, 'mA') ?? ((machine.maxMA && `at most ${machine.maxMA} mA`) as string),
        'Tube power': unit(machine.maxPowerW, 'W'),
        'Energies recorded': String(machine.detectorLayers?.length ?? machine.windowsKeV?.length ?? 0),
        'Pixel size': unit(machine.pixelMm, 'mm'),
        Beam: machine.beam === 'side' ? 'from the side' : 'from above',
        Views: String(machine.views ?? 1),
        'Source to detector': unit(machine.sourceToDetectorMm, 'mm'),
        'Aluminium filter': unit(machine.filterAlMm, 'mm'),
        'Line rate': unit(machine.maxLinesPerSecond, 'lines/s'),
      }
    case 'coil':
    case 'static-field': {
      const high = machine.apertureHeightMm ?? point.apertureHeightMm
      const wide = machine.apertureWidthMm ?? point.apertureWidthMm
      return {
        ...bounds,
        Frequencies: machine.family === 'coil' ? `${machine.frequenciesKHz.join(', ')} kHz` : undefined,
        'Use of the frequencies':
          machine.family === 'coil' && machine.frequenciesKHz.length > 1
            ? machine.use === 'together'
              ? 'together'
              : 'chosen for the product'
            : undefined,
        Opening: high || wide ? `${high ?? '–'} × ${wide ?? '–'} mm` : undefined,
      }
    }
    default:
      return bounds
  }
}

/** What a machine is and is set to, and where it stands. */
export function figuresOf({ machine, option, point }: Side): Figures {
  const { kV, mA, frequenciesKHz } = option.settings
  const named: Record<string, string | undefined> = {
    'Inspection point': point.name,
    'Height of the food': `${point.heightMm} mm`,
    Speed: `${point.speedMPerMin} m/min`,
    ...machineFigures(machine, point),
    'Set to': [
      kV === null ? '' : `${kV} kV`,
      mA === null ? '' : `${Number(mA.toPrecision(2))} mA`,
      frequenciesKHz.length > 0 ? `${frequenciesKHz.join(', ')} kHz` : '',
    ]
      .filter(Boolean)
      .join(', '),
  }
  return new Map(Object.entries(named).filter((entry): entry is [string, string] => Boolean(entry[1])))
}
