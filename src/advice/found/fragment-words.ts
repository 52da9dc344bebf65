import type { Option } from '../../contract/index.ts'

/** What a machine sees one after the other: closed packs, or portions of a flow. */
export type Unit = 'packs' | 'portions'

/** A chance as packs or portions, without a certainty the model cannot have: "in about 95 of 100 packs". */
export function oftenWords(chance: number, unit: Unit): string {
  if (chance > 0.999) return `in nearly all ${unit}`
  if (chance < 0.001) return `in hardly any of the ${unit}`
  const hundred = chance * 100
  if (hundred >= 99 || hundred < 1) return `in about ${Math.round(chance * 1000)} of 1000 ${unit}`
  return `in about ${Math.round(hundred)} of 100 ${unit}`
}

/** The settings a machine runs at, "60 kV, 10 mA" or "100, 300 kHz". */
export function settingsText({ settings }: Pick<Option, 'settings'>): string {
  const parts = [
    settings.kV === null ? '' : `${settings.kV} kV`,
    settings.mA === null ? '' : `${Number(settings.mA.toPrecision(2))} mA`,
    settings.frequenciesKHz.length === 0 ? '' : `${settings.frequenciesKHz.join(', ')} kHz`,
  ]
  return parts.filter((part) => part !== '').join(', ')
}
