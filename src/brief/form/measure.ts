import { quoted } from '../../contract/quoted.ts'

/** What was read from a field: the value in the field's own unit, or what to do about it. */
export type Reading = { ok: true; value: number; plain: boolean } | { ok: false; because: string }

type Convert = (given: number) => number

const times =
  (factor: number): Convert =>
  (given) =>
    given * factor

/**
 * Units a person may type, by the unit the brief keeps. Factors are exact by definition
 * (inch 25.4 mm, pound 453.59237 g: international yard and pound agreement, 1959).
 */
const UNITS: Readonly<Record<string, Readonly<Record<string, Convert>>>> = {
  mm: {
    mm: times(1),
    cm: times(10),
    dm: times(100),
    m: times(1000),
    in: times(25.4),
    inch: times(25.4),
    inches: times(25.4),
    '"': times(25.4),
    ft: times(304.8),
    µm: times(1e-3),
    um: times(1e-3),
    micron: times(1e-3),
    microns: times(1e-3),
    mil: times(0.0254),
  },
  'mm²': { 'mm²': times(1), mm2: times(1), 'cm²': times(100), cm2: times(100), in2: times(645.16) },
  'm/min': {
    'm/min': times(1),
    'm/s': times(60),
    'cm/s': times(0.6),
    'mm/s': times(0.06),
    'm/h': times(1 / 60),
    'ft/min': times(0.3048),
    fpm: times(0.3048),
    'ft/s': times(18.288),
    'in/s': times(1.524),
  },
  g: {
    g: times(1),
    kg: times(1000),
    mg: times(1e-3),
    oz: times(28.349523125),
    lb: times(453.59237),
    lbs: times(453.59237),
  },
  'kg/h': {
    'kg/h': times(1),
    'kg/min': times(60),
    'kg/s': times(3600),
    't/h': times(1000),
    'g/s': times(3.6),
    'lb/h': times(0.45359237),
    'lb/min': times(27.2155422),
  },
  'per minute': {
    'per minute': times(1),
    'per min': times(1),
    '/min': times(1),
    'per second': times(60),
    '/s': times(60),
    'per hour': times(1 / 60),
    '/h': times(1 / 60),
  },
  min: { min: times(1), minutes: times(1), h: times(60), hours: times(60), s: times(1 / 60) },
  h: { h: times(1), hours: times(1), min: times(1 / 60) },
  '°C': {
    '°C': times(1),
    '°F': (f) => ((f - 32) * 5) / 9,
    K: (kelvin) => kelvin - 273.15,
    C: times(1),
    F: (f) => ((f - 32) * 5) / 9,
  },
  '°': { '°': times(1), deg: times(1), degrees: times(1), rad: times(180 / Math.PI) },
  '%': { '%': times(1), 'g/100g': times(1), 'g/kg': times(0.1) },
  'mg/kg': { 'mg/kg': times(1), ppm: times(1), 'mg/100g': times(10), 'g/kg': times(1000) },
  'g/cm³': {
    'g/cm³': times(1),
    'g/cm3': times(1),
    'g/ml': times(1),
    'kg/l': times(1),
    'kg/m³': times(1e-3),
    'kg/m3': times(1e-3),
  },
  'S/m': {
    'S/m': times(1),
    'mS/m': times(1e-3),
    'mS/cm': times(0.1),
    'µS/cm': times(1e-4),
    'uS/cm': times(1e-4),
  },
  'Ω per square': {
    'Ω per square': times(1),
    'Ω/sq': times(1),
    'ohm/sq': times(1),
    'ohm per square': times(1),
  },
  kHz: { kHz: times(1), Hz: times(1e-3), MHz: times(1000) },
  kV: { kV: times(1), V: times(1e-3) },
  mA: { mA: times(1), A: times(1000), µA: times(1e-3) },
  W: { W: times(1), kW: times(1000) },
  '': { '%': times(0.01) },
}

const PLAIN = /^\d+(?:[.,]\d+)?$|^[.,]\d+$/
const SPACED = /^\d{1,3}(?:[\s'’]\d{3})+(?:[.,]\d+)?$/
const COMMA_GROUPS = /^\d{1,3}(?:,\d{3})+\.\d+$|^\d{1,3}(?:,\d{3}){2,}$/
const POINT_GROUPS = /^\d{1,3}(?:\.\d{3})+,\d+$|^\d{1,3}(?:\.\d{3}){2,}$/
const EITHER = /^[1-9]\d{0,2},\d{3}$/
const POWER = /^\d+(?:\.\d+)?e[+-]?\d{1,3}$/i

function decimal(digits: string): number | string {
  if (POWER.test(digits)) return Number(digits)
  if (EITHER.test(digits)) {
    const [whole, part] = digits.split(',')
    return `"${digits}" can be read two ways: write ${whole}${part} or ${whole}.${part}`
  }
  if (COMMA_GROUPS.test(digits)) return Number(digits.replaceAll(',', ''))
  if (POINT_GROUPS.test(digits)) return Number(digits.replaceAll('.', '').replace(',', '.'))
  if (SPACED.test(digits)) return Number(digits.replace(/[\s'’]/g, '').replace(',', '.'))
  if (PLAIN.test(digits)) return Number(digits.replace(',', '.'))
  return `write a number, like 45 or 4.5; "${digits}" was given`
}

const ONE_IN = /^1\s*(?:in|:)\s*([\d,.'][\d\s,.']*)$/i
const FRACTION = /^(?:(\d{1,4})[\s-]+)?(\d{1,3})\s*\/\s*([1-9]\d{0,2})\s*([^\d\s].*)?$/
const NUMBER_THEN_UNIT = /^([+\-−]?)\s*([.,]?\d(?:[\d.,\s'’]*\d)?(?:e[+-]?\d{1,3})?)\s*([^\d\s].*)?$/i

/** Characters of a quantity with its unit: no reader looks at more. */
const LONGEST = 60

/**
 * Reads a typed quantity: spaces, comma or point, with or without a unit.
 * @param typed as entered, e.g. "3 cm", "1 500", "12,5", "1/8 in", "75 °F", "1 in 1,000"
 * @param unit the unit the brief keeps ("mm", "m/min", "g", "°C", "" …); a bare number is in it
 * @returns the value in `unit`; `plain` is false where the reader deserves to see what was understood
 */
export function readMeasure(typed: string, unit: string): Reading {
  const text = typed.trim().normalize('NFC')
  if (text.length > LONGEST)
    return { ok: false, because: `write a number, like 45 or 4.5; ${quoted(text)} was given` }
  const share = unit === '' ? ONE_IN.exec(text) : null
  if (share) {
    const per = Number((share[1] ?? '').replace(/[\s,.']/g, ''))
    return per > 0
      ? { ok: true, value: 1 / per, plain: false }
      : { ok: false, because: `write a share, like 0.001 or 1 in 1000; "${typed.trim()}" was given` }
  }
  const fraction = FRACTION.exec(text)
  if (fraction) {
    const [, whole = '0', top, bottom, unitTyped = ''] = fraction
    return converted(Number(whole) + Number(top) / Number(bottom), unitTyped, unit, false)
  }
  const parts = NUMBER_THEN_UNIT.exec(text)
  if (!parts) return { ok: false, because: `write a number, like 45 or 4.5; "${typed.trim()}" was given` }
  const [, sign = '', digits = '', unitTyped = ''] = parts
  const size = decimal(digits.trim())
  if (typeof size === 'string') return { ok: false, because: size }
  const plain = unitTyped === '' && /^[+-]?(?:\d+(?:\.\d+)?|\.\d+)(?:e[+-]?\d+)?$/i.test(text)
  return converted(sign === '-' || sign === '−' ? -size : size, unitTyped, unit, plain)
}

function converted(size: number, unitTyped: string, unit: string, plain: boolean): Reading {
  const convert = unitTyped === '' ? times(1) : conversion(unitTyped, unit)
  if (!convert) {
    const known = Object.keys(UNITS[unit] ?? {}).slice(0, 5)
    return { ok: false, because: `"${unitTyped.trim()}" is not a unit known here; use ${known.join(', ')}` }
  }
  const value = Number(convert(size).toPrecision(12))
  return Number.isFinite(value)
    ? { ok: true, value, plain }
    : { ok: false, because: 'write a number, like 45 or 4.5; this one is larger than any quantity' }
}

function conversion(typed: string, unit: string): Convert | undefined {
  const squeezed = (word: string) => word.trim().toLowerCase().replace(/[μ]/g, 'µ').replace(/\s+/g, '')
  const entry = Object.entries(UNITS[unit] ?? {}).find(([word]) => squeezed(word) === squeezed(typed))
  return entry?.[1]
}

/** A value as a field shows it; reading it back gives the same number. */
export function writeMeasure(value: number): string {
  return String(value)
}
