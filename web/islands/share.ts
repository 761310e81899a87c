/** Hands a text over by the phone's own sharing, or copies it; each button shows itself where the browser can. */
import { words } from './words.ts'

for (const button of document.querySelectorAll<HTMLButtonElement>('[data-share]')) {
  if (typeof navigator.share !== 'function') continue
  button.hidden = false
  button.addEventListener('click', () => {
    const { shareTitle = '', shareText = '' } = button.dataset
    // Closing the phone's sharing sheet rejects: nothing was lost, and there is nothing to say.
    navigator.share({ title: shareTitle, text: shareText }).catch(() => undefined)
  })
}

for (const button of document.querySelectorAll<HTMLButtonElement>('[data-copy]')) {
  button.hidden = false
  // Said where it was tapped, and heard.
  button.setAttribute('aria-live', 'polite')
  button.addEventListener('click', () => {
    void copied(button.dataset.copy ?? '').then((done) => {
      button.textContent = done ? words.islands.copied : words.islands.notCopied
    })
  })
}

/** A page on a plain http:// address has no clipboard: there a hidden field is marked and copied as by hand. */
async function copied(text: string): Promise<boolean> {
  try {
    await navigator.clipboard.writeText(text)
    return true
  } catch {
    const field = document.createElement('textarea')
    field.value = text
    field.style.position = 'fixed'
    document.body.append(field)
    field.select()
    const done = document.execCommand('copy')
    field.remove()
    return done
  }
}
