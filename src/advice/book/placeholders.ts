/** A value a text may name: what it is and its unit. */
export interface Quantity {
  readonly value: string | number | boolean | null
  readonly unit: string
}

const NAME = /\{([A-Za-z][A-Za-z0-9.-]*)\}/g

/** Names in curly brackets in a text, each once. */
export const namesIn = (text: string): readonly string[] => [
  ...new Set([...text.matchAll(NAME)].map((match) => match[1]!)),
]

/**
 * A text with its names replaced: "{point.heightMm}" becomes "30 mm". Numbers keep three figures, yes/no is
 * said in words, what is not known says so; it begins with a capital. A name that is no fact at all is an error (the lint finds it first).
 */
export function fillText(text: string, lookUp: (name: string) => Quantity | undefined): string {
  const filled = text.replace(NAME, (_, name: string) => {
    const quantity = lookUp(name)
    return quantity === undefined ? `(no ${name} here)` : quantityText(quantity)
  })
  return filled.charAt(0).toUpperCase() + filled.slice(1)
}

/** A number with its unit, to three figures: 12.3 mm, 1,250 lines/s, 4 %. */
export function quantityText({ value, unit }: Quantity): string {
  if (value === null) return 'not known'
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  const figure = typeof value === 'number' ? numberText(value) : value
  return unit ? `${figure} ${unit}` : figure
}

function numberText(value: number): string {
  const rounded = Math.abs(value) >= 100 ? Math.round(value) : Number(value.toPrecision(3))
  return PLAIN.format(rounded)
}
const PLAIN = new Intl.NumberFormat('en-GB', { maximumSignificantDigits: 12 })
