import type { Page } from 'playwright-core'

const STOPS = `(() => {
  const able = 'a[href], button, input:not([type="hidden"]), select, textarea, summary, [tabindex="0"]'
  const seen = [...document.querySelectorAll(able)].filter((one) => !one.disabled && one.checkVisibility())
  const radios = new Set(seen.filter(({ type }) => type === 'radio').map(({ name }) => name))
  return seen.filter(({ type }) => type !== 'radio').length + radios.size
})()`

/** How often Tab stops on a page as it stands: what is folded away is passed over, radios of a group are one stop. */
export const tabStops = (page: Page): Promise<number> => page.evaluate<number>(STOPS)
