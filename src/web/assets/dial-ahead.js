// All places of the control are worked out ahead, those nearest to the present one first, so that a hand that moves it
// waits for none. The server keeps them as bytes. Pages work without.
const control = document.querySelector('#dial-stop')
const form = control?.closest('form')

async function ahead(stop) {
  const asked = new FormData(form)
  asked.set('stop', String(stop))
  const headers = { Accept: 'text/html', 'HX-Request': 'true', 'HX-Current-URL': location.href }
  const answer = await fetch(`/exercises/dial/part?${new URLSearchParams(asked)}`, { headers })
  const part = new DOMParser().parseFromString(await answer.text(), 'text/html')
  const picture = part.querySelector('svg image')?.getAttribute('href')
  if (picture) await fetch(picture)
}

const told = document.querySelector('#dial-ready')
const tell = (ready, of) => {
  if (told) told.textContent = ready < of ? `${ready} of ${of} places ready` : 'All places ready'
}

async function allAhead() {
  const at = Number(control.value)
  const stops = Array.from({ length: Number(control.max) + 1 }, (_, stop) => stop)
  stops.sort((a, b) => Math.abs(a - at) - Math.abs(b - at))
  for (const [done, stop] of stops.entries()) {
    tell(done, stops.length)
    if (stop !== at) await ahead(stop)
  }
  tell(stops.length, stops.length)
}

if (form) allAhead().catch(() => {})
