// In front of a room the arrow keys, and the keys of a pointer held in the hand, lead back and on. Pages work without.
document.addEventListener('keydown', (event) => {
  if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return
  const typing = event.target instanceof HTMLInputElement && event.target.value !== ''
  const on = event.key === 'PageDown' || (event.key === 'ArrowRight' && !typing)
  const back = event.key === 'PageUp' || (event.key === 'ArrowLeft' && !typing)
  const way = document.querySelector(
    on ? '.room-nav [rel="next"], .room-nav button' : '.room-nav [rel="prev"]',
  )
  if ((!on && !back) || !way) return
  event.preventDefault()
  way.click()
})
