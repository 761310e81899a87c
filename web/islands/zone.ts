/** At set-up the yard's time zone is the phone's: whoever stands there is most likely in it, and the server may be anywhere. */
export function ownZone(): void {
  const field = document.querySelector('form[action="/set-up"] input[name="timeZone"]')
  if (field instanceof HTMLInputElement && field.value === '')
    field.value = Intl.DateTimeFormat().resolvedOptions().timeZone ?? ''
}
