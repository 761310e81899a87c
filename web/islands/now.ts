/** "now" beside a time: the yard's own, whatever zone the phone is set to. */
export function offerNow(): void {
  const { zone } = document.body.dataset
  for (const button of document.querySelectorAll<HTMLButtonElement>('[data-now]')) {
    const field = document.getElementById(button.dataset.now ?? '')
    if (!(field instanceof HTMLInputElement)) continue
    button.hidden = false
    button.addEventListener('click', () => {
      field.value = timeIn(zone)
      // As if it had been typed: drafts and advice listen.
      field.dispatchEvent(new Event('input', { bubbles: true }))
    })
  }
}

/** '09:05', as a time field takes it. */
const timeIn = (zone: string | undefined): string =>
  new Intl.DateTimeFormat('en-GB', {
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
    ...(zone === undefined ? {} : { timeZone: zone }),
  }).format(new Date())
