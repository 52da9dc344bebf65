import { createPages } from '../../src/web/app.ts'
import { askedCard } from '../../src/web/shown/cards.ts'

const app = createPages()
app.get('/asked', (c) => {
  askedCard(c)
  return c.text('taken')
})

/** What the readers of a card's address say to a text in each of their fields. */
export async function statusOfCard(text: string): Promise<number> {
  const query = new URLSearchParams([
    ['kv-x', text],
    ['sizes-0', text],
    ['seed', text],
  ])
  return (await app.request(`/asked?${query}`)).status
}
