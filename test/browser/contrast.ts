import type { Page } from 'playwright-core'

/** WCAG 2.2, 1.4.3: contrast of words, and of large ones (24 px, or 18.66 px in bold). */
const ENOUGH = 4.5
const ENOUGH_IF_LARGE = 3

/**
 * Runs in the page. For each element with words of its own: its colour over what lies behind it, layer upon layer
 * up to the first one that covers; contrast by the relative luminance of WCAG 2.2.
 */
const LOOK = `(() => {
  const canvas = document.createElement('canvas').getContext('2d', { willReadFrequently: true })
  const known = new Map()
  const rgba = (colour) => {
    if (!known.has(colour)) {
      canvas.clearRect(0, 0, 1, 1)
      canvas.fillStyle = colour
      canvas.fillRect(0, 0, 1, 1)
      const [r, g, b, a] = canvas.getImageData(0, 0, 1, 1).data
      known.set(colour, [r, g, b, a / 255])
    }
    return known.get(colour)
  }
  const over = (top, below) => [0, 1, 2].map((i) => top[i] * top[3] + below[i] * (1 - top[3])).concat(1)
  const light = (c) => c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4
  const luminance = ([r, g, b]) => 0.2126 * light(r) + 0.7152 * light(g) + 0.0722 * light(b)
  const behind = new Map()
  const backOf = (one) => {
    if (!one) return [255, 255, 255, 1]
    if (!behind.has(one)) {
      const own = rgba(getComputedStyle(one).backgroundColor)
      behind.set(one, own[3] === 1 ? own : over(own, backOf(one.parentElement)))
    }
    return behind.get(one)
  }
  const faint = []
  let seen = 0
  for (const one of document.body.querySelectorAll('*')) {
    const words = [...one.childNodes].some((node) => node.nodeType === 3 && node.data.trim() !== '')
    const typed = /^(INPUT|SELECT|TEXTAREA)$/.test(one.tagName)
    if ((!words && !typed) || one.closest('svg, script, style, template, [disabled], [aria-disabled=true]')) continue
    if (!one.checkVisibility({ visibilityProperty: true, opacityProperty: true })) continue
    seen++
    const style = getComputedStyle(one)
    const back = backOf(one)
    let colour = rgba(style.color)
    for (let at = one; at; at = at.parentElement) {
      const { opacity } = getComputedStyle(at)
      if (opacity !== '1') colour = [...colour.slice(0, 3), colour[3] * Number(opacity)]
    }
    const [a, b] = [luminance(over(colour, back)), luminance(back)].sort((x, y) => y - x)
    const size = parseFloat(style.fontSize)
    const large = size >= 24 || (size >= 18.66 && Number(style.fontWeight) >= 700)
    const contrast = (a + 0.05) / (b + 0.05)
    if (contrast < (large ? ${ENOUGH_IF_LARGE} : ${ENOUGH}))
      faint.push(one.tagName.toLowerCase() + '.' + one.className + ' "' + (one.innerText || '').slice(0, 40) + '": ' + contrast.toFixed(2))
  }
  return { seen, faint: faint.slice(0, 5) }
})()`

/** Words of the page as it stands that stand out too little from what is behind them. */
export async function faintWordsOn(page: Page): Promise<{ seen: number; faint: string[] }> {
  return (await page.evaluate(LOOK)) as { seen: number; faint: string[] }
}
