/** A button that prints. Without JavaScript it stays hidden, and the browser's own menu does the same. */
const button = document.getElementById('print')
if (button instanceof HTMLButtonElement) {
  button.hidden = false
  button.addEventListener('click', () => window.print())
  // What is folded belongs on the paper, too.
  window.addEventListener('beforeprint', () => {
    for (const fold of document.querySelectorAll<HTMLDetailsElement>('.book-section')) fold.open = true
  })
}
