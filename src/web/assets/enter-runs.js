// Entering a trial at the line: one piece at a time, everything typed kept in this browser until it has arrived.
// Without this script the same form is one long page.

const KEY = (kept) => `gritwise-trial-${kept}`

const arrived = document.querySelector('[data-arrived]')
if (arrived) localStorage.removeItem(KEY(arrived.dataset.arrived))

const form = document.querySelector('#entry')
if (form) enter(form)

function enter(form) {
  const key = KEY(form.dataset.kept)
  const state = form.querySelector('.entry-state')
  const pieces = [...form.querySelectorAll('.entry-piece')]
  const head = form.querySelector('.entry-head')
  const send = form.querySelector('.entry-send')
  const answered = (piece) => piece.querySelector('input[type=radio]:checked')

  restore()
  const controls = buttons()
  send.before(controls.bar)
  let at = firstOpen()
  show(at)

  form.addEventListener('change', (event) => {
    keep()
    if (event.target.type === 'radio') show(at)
  })
  form.addEventListener('input', keep)
  form.addEventListener('submit', (event) => {
    keep()
    if (navigator.onLine) return
    event.preventDefault()
    say(
      'No connection. Everything is kept here: send it when the connection is back, or save it as a file now.',
    )
  })

  // The head counts as place -1; the pieces follow; the end is where all is sent.
  function firstOpen() {
    const headOpen = [...head.querySelectorAll('input')].some(
      (input) => input.value.trim() === '' && !['shift', 'operator'].includes(input.name),
    )
    if (headOpen && !pieces.some(answered)) return -1
    const open = pieces.findIndex((piece) => !answered(piece))
    return open < 0 ? pieces.length : open
  }

  function show(place) {
    at = Math.max(-1, Math.min(pieces.length, place))
    form.classList.add('one-at-a-time')
    head.hidden = at !== -1
    for (const [i, piece] of pieces.entries()) piece.hidden = i !== at
    send.hidden = at !== pieces.length
    controls.back.disabled = at === -1
    controls.next.hidden = at === pieces.length
    controls.next.disabled = at >= 0 && at < pieces.length && !answered(pieces[at])
    const open = pieces.filter((piece) => !answered(piece)).length
    const counted = `${pieces.length - open} of ${pieces.length} answered`
    controls.count.textContent = counted
    if (at === pieces.length)
      say(open === 0 ? `All ${pieces.length} answered. ${bySize()}` : `${open} still open.`)
  }

  function bySize() {
    const sizes = new Map()
    for (const piece of pieces) {
      const [size] = JSON.parse(piece.querySelector('input[type=hidden]').value)
      const seen = answered(piece)?.value
      if (seen === 'left') continue
      const tally = sizes.get(size) ?? { runs: 0, found: 0 }
      tally.runs += 1
      if (seen === 'found') tally.found += 1
      sizes.set(size, tally)
    }
    return [...sizes]
      .sort(([a], [b]) => a - b)
      .map(([size, { runs, found }]) => `${size} mm: ${found} of ${runs} found`)
      .join('; ')
  }

  function buttons() {
    const bar = document.createElement('div')
    bar.className = 'entry-bar'
    const make = (text, act) => {
      const button = document.createElement('button')
      button.type = 'button'
      button.className = 'quiet'
      button.textContent = text
      button.addEventListener('click', act)
      return button
    }
    const back = make('Back', () => show(at - 1))
    const next = make('Next', () => show(at + 1))
    const save = make('Save as a file', saveFile)
    const count = document.createElement('p')
    count.setAttribute('role', 'status')
    bar.append(count, back, next, save)
    return { bar, back, next, count }
  }

  function fields() {
    return [...form.elements].filter(
      (field) => field.name && field.type !== 'hidden' && field.type !== 'submit' && field.type !== 'button',
    )
  }

  function keep() {
    const values = {}
    for (const field of fields()) {
      if (field.type === 'radio') {
        if (field.checked) values[field.name] = field.value
      } else values[field.name] = field.value
    }
    try {
      localStorage.setItem(key, JSON.stringify(values))
    } catch {
      say('This browser keeps nothing: save the entries as a file before leaving the page.')
    }
  }

  function restore() {
    let values = {}
    try {
      values = JSON.parse(localStorage.getItem(key) ?? '{}')
    } catch {
      return
    }
    for (const field of fields()) {
      const value = values[field.name]
      if (value === undefined) continue
      if (field.type === 'radio') field.checked ||= field.value === value
      else if (field.value.trim() === '' || field.name === 'equipment') field.value = value
    }
  }

  function saveFile() {
    const value = (name) => form.elements[name]?.value ?? ''
    const cell = (text) => (/[",\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text)
    const columns =
      'equipment,setting,date,shift,operator,piece,pack,order,material,shape,sizeMm,lengthMm,faceMm2,placement,position,runs,found'
    const common = [value('equipment'), value('setting'), value('date'), value('shift'), value('operator')]
    const lines = [columns]
    if (value('cleanPacks'))
      lines.push(
        [...common, '', '', '', '', '', '', '', '', '', '', value('cleanPacks'), value('cleanRejects') || '0']
          .map(cell)
          .join(','),
      )
    for (const [i, piece] of pieces.entries()) {
      const seen = answered(piece)?.value
      if (seen !== 'found' && seen !== 'missed') continue
      const [size, pack, position, lie] = JSON.parse(piece.querySelector('input[type=hidden]').value)
      lines.push(
        [
          ...common,
          `${size} mm`,
          pack,
          String(i + 1),
          value('material'),
          value('shape'),
          String(size),
          value('lengthMm'),
          value('faceMm2'),
          value('placement'),
          lie ? `${position}, ${lie}` : position,
          '1',
          seen === 'found' ? '1' : '0',
        ]
          .map(cell)
          .join(','),
      )
    }
    const link = document.createElement('a')
    link.href = URL.createObjectURL(new Blob([`${lines.join('\n')}\n`], { type: 'text/csv' }))
    link.download = 'test-runs.csv'
    link.click()
    URL.revokeObjectURL(link.href)
  }

  function say(text) {
    state.textContent = text
    if (send.hidden) controls.count.textContent = text
  }
}
