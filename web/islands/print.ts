/** A button that prints. Without JavaScript it stays hidden, and the browser's own menu does the same. */
const button = document.getElementById('print')
if (button instanceof HTMLButtonElement) {
  button.hidden = false
  button.addEventListener('click', () => window.print())
}
