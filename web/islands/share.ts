/** Hands a text over by the phone's own sharing, where the browser has it. */
for (const button of document.querySelectorAll<HTMLButtonElement>('[data-share]')) {
  if (typeof navigator.share !== 'function') continue
  button.hidden = false
  button.addEventListener('click', () => {
    const { shareTitle = '', shareText = '' } = button.dataset
    // Closing the phone's sharing sheet rejects: nothing was lost, and there is nothing to say.
    navigator.share({ title: shareTitle, text: shareText }).catch(() => undefined)
  })
}
