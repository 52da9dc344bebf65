import type { Page } from 'playwright-core'

const MOST_STOPS = 600

/** What has the focus: its words, as a person would say them. */
const focused = (page: Page): Promise<string> =>
  page.evaluate(`(() => {
    const at = document.activeElement
    if (!at || at === document.body) return ''
    const label = (at.id && document.querySelector('label[for="' + at.id + '"]')) || at.closest('label')
    return ((label ? label.innerText : at.innerText) || at.getAttribute('aria-label') || '').replace(/\\s+/g, ' ').trim()
  })()`)

/** Goes on by Tab until what is meant has the focus; fails where it cannot be reached. */
export async function tabTo(page: Page, meant: RegExp): Promise<void> {
  const met: string[] = []
  for (let stops = 0; stops < MOST_STOPS; stops++) {
    await page.keyboard.press('Tab')
    const at = await focused(page)
    if (meant.test(at)) return
    met.push(at)
  }
  throw new Error(`${meant} has no place in the order of Tab; met: ${met.slice(0, 40).join(' · ')}`)
}

/** Follows a link or presses a button by keyboard alone. */
export async function enter(page: Page, meant: RegExp): Promise<void> {
  await tabTo(page, meant)
  await pressEnter(page)
}

/** Enter on what has the focus, until the next page stands. */
const pressEnter = (page: Page): Promise<void> => pressKey(page, 'Enter')

/** A key that leads to another page, until that page stands. */
export async function pressKey(page: Page, key: string): Promise<void> {
  const before = page.url()
  await page.keyboard.press(key)
  await page.waitForURL((url) => url.href !== before)
  await page.waitForLoadState()
}

/** Goes to a box and types into it, in place of what stood there. */
export async function type(page: Page, box: RegExp, text: string): Promise<void> {
  await tabTo(page, box)
  await page.keyboard.press('Control+A')
  await page.keyboard.type(text)
}
