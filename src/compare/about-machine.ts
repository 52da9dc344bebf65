import { buildOf, linesPerSecond, MACHINE_DEFAULTS } from '../xray/beam/exposure.ts'
import type { Question } from './questions.ts'
import type { Side } from './sides.ts'

const XRAY_FIGURES: Readonly<Record<string, string>> = {
  sourceToDetectorMm: 'distance from source to detector',
  magnification: 'magnification at the belt',
  filterAlMm: 'aluminium filter',
  windowBeMm: 'beryllium window',
  anodeAngleDeg: 'anode angle',
  blurPixels: 'blur in pixels',
  beam: 'direction of the beam',
  views: 'number of views',
  beltMm: 'thickness of the belt',
  beamWidthMm: 'width of the beam at the belt',
}

/** What the description of the machine leaves open. */
export function aboutMachine({ machine, point, laid: { brief } }: Side): Question[] {
  const described = brief.equipment.some((one) => typeof one !== 'string' && one.id === machine.id)
  const asked: Question[] = []
  if (!described) {
    asked.push({
      ask:
        machine.family === 'xray'
          ? 'Give tube voltage, power, pixel size, detector layers and distances of the machine you offer.'
          : 'Give the frequencies and the opening of the machine you offer.',
      because: 'The sizes here are those of a class of machine, not of the one offered.',
    })
  }
  if (machine.family === 'xray') {
    if (described) {
      const open = Object.entries(XRAY_FIGURES).filter(([field]) => !(field in machine))
      if (open.length > 0) {
        asked.push({
          ask: `Give ${open.map(([, words]) => words).join(', ')}.`,
          because: `Not said; taken as ${open.map(([field]) => MACHINE_DEFAULTS[field as keyof typeof MACHINE_DEFAULTS]).join(', ')}.`,
        })
      }
    }
    if (machine.maxLinesPerSecond === undefined) {
      const lines = Math.ceil(linesPerSecond(buildOf(machine), point.speedMPerMin) / 10) * 10
      asked.push({
        ask: `Does the detector read ${lines} lines a second, which ${point.speedMPerMin} m/min needs?`,
        because: 'The line rate is not said; a slower one stretches the pixel along the travel.',
      })
    }
  }
  return asked
}
