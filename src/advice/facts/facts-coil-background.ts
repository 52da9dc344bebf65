import type { CoilAssessment } from '../../coil/assessment.ts'
import type { FactWriter } from './fact-sheet.ts'

type CalculationAt = (name: string) => string | undefined

/** What food and pack add to the signal, and the frequencies that listen to it. */
export function writeBackground(write: FactWriter, assessment: CoilAssessment, at: CalculationAt): void {
  const { conductivity, background, layers, frequenciesKHz } = assessment
  write.computed('coil.conductivitySPerM', conductivity.valueSPerM, at('food.conductivity'))
  write.computed('coil.conductivityState', conductivity.state)
  if (conductivity.lowSPerM > 0)
    write.computed('coil.conductivityRange', conductivity.highSPerM / conductivity.lowSPerM)
  write.computed('coil.productSignal', assessment.productSignal)
  const { residual } = assessment
  if (residual) {
    write.computed('coil.residualPct', residual.amplitudePct, at('product.residual'))
    write.computed('coil.residualDeg', residual.phaseDeg, at('product.residual'))
    write.computed('coil.residualFrom', residual.read ? 'as read on the line' : 'as assumed for such food')
  }
  const films = layers.filter(({ film }) => film)
  write.computed('coil.foilLayers', layers.length - films.length)
  write.computed('coil.filmLayers', films.length)
  write.computed('coil.sheetSiemens', Math.max(0, ...layers.map(({ conductanceS }) => conductanceS)))
  write.computed('coil.frequencyCount', frequenciesKHz.length)
  write.computed('coil.frequencies', frequenciesKHz.join(', '))
  if (frequenciesKHz.length === 0) return
  const lowest = Math.min(...frequenciesKHz)
  write.computed('coil.lowestKHz', lowest)
  write.computed('coil.highestKHz', Math.max(...frequenciesKHz))
  const there = background.find(({ frequencyKHz }) => frequencyKHz === lowest)
  if (!there) return
  write.computed('coil.productOverSteelBall', there.productOverSteelBall, at(`product.${lowest}`))
  write.computed('coil.layersOverSteelBall', there.layersOverSteelBall, at(`pack.0.${lowest}`))
  write.computed('coil.insidePct', 100 * there.insideShare)
}
