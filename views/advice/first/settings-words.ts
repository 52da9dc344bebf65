import type { Option } from '../../../src/contract/advice.ts'

/** "60 kV, 10 mA" or "100, 300 kHz"; empty where nothing is set. */
export function settingsWords({ settings }: Pick<Option, 'settings'>): string {
  const parts = [
    settings.kV === null ? '' : `${settings.kV} kV`,
    settings.mA === null ? '' : `${Number(settings.mA.toPrecision(2))} mA`,
    settings.frequenciesKHz.length === 0 ? '' : `${settings.frequenciesKHz.join(', ')} kHz`,
  ]
  return parts.filter((part) => part !== '').join(', ')
}
