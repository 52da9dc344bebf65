// All places of the control are worked out ahead, those nearest to the present one first, so that a hand that moves it
// waits for none. The server keeps them as bytes. A place that is not ready yet is asked for as a draft, which fetches
// the whole by itself. Pages work without.
const control = document.querySelector('#dial-stop')
const form = control?.closest('form')
const ready = new Set()
/** While a hand moves the control, nothing is worked out ahead of it, ms. */
const STILL_MS = 700
let movedAt = -STILL_MS

async function ahead(stop) {
  const asked = new FormData(form)
  asked.set('stop', String(stop))
  asked.delete('draft')
  const headers = { Accept: 'text/html', 'HX-Request': 'true', 'HX-Current-URL': location.href }
  const answer = await fetch(`/exercises/dial/part?${new URLSearchParams(asked)}`, { headers })
  const part = new DOMParser().parseFromString(await answer.text(), 'text/html')
  const picture = part.querySelector('svg image')?.getAttribute('href')
  if (picture) await fetch(picture)
  ready.add(String(stop))
}

function draftsUntilReady() {
  const draft = document.createElement('input')
  Object.assign(draft, { type: 'hidden', name: 'draft', value: '1', disabled: true })
  form.append(draft)
  control.addEventListener('input', () => {
    draft.disabled = ready.has(control.value)
    movedAt = performance.now()
  })
  // The button sends the form as it is without script.
  form.addEventListener('submit', () => {
    draft.disabled = true
  })
}

const told = document.querySelector('#dial-ready')
const tell = (of) => {
  if (told) told.textContent = ready.size < of ? `${ready.size} of ${of} places ready` : 'All places ready'
}

async function allAhead() {
  const at = Number(control.value)
  const stops = Array.from({ length: Number(control.max) + 1 }, (_, stop) => stop)
  stops.sort((a, b) => Math.abs(a - at) - Math.abs(b - at))
  ready.add(String(at))
  tell(stops.length)
  // The first two at once: so two workers know the pack, and one of them is free for the hand from then on.
  const [first, second, ...others] = stops.filter((stop) => stop !== at)
  await Promise.all([first, second].filter((stop) => stop !== undefined).map(ahead))
  for (const stop of others) {
    tell(stops.length)
    while (performance.now() - movedAt < STILL_MS) await new Promise((done) => setTimeout(done, 100))
    await ahead(stop)
  }
  tell(stops.length)
}

if (form) {
  draftsUntilReady()
  allAhead().catch(() => {})
}
