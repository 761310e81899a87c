/**
 * On a wide screen: the box chosen in a list stands beside it, and beside a box stands the list of today. Both are the pages as they
 * are, fetched; where that fails, one goes to the page itself. On a phone nothing is fetched.
 */

/** The box looked at last, so that Today opens where one left it. */
const LAST = 'beside'

/** The styles say whether there is room. */
const wide = (): boolean => {
  const both = document.querySelector('.beside')
  return both !== null && getComputedStyle(both).display === 'grid'
}

async function pageAt(path: string): Promise<Document> {
  const answer = await fetch(path, { headers: { Accept: 'text/html' } })
  if (!answer.ok) throw new Error(`${path}: ${answer.status}`)
  return new DOMParser().parseFromString(await answer.text(), 'text/html')
}

let asked = ''

/** Shows the box of that path beside the list; where it cannot be fetched and somebody chose it, goes to its page. */
async function show(path: string, box: HTMLElement, chosen = true): Promise<void> {
  asked = path
  sessionStorage.setItem(LAST, path)
  for (const line of document.querySelectorAll<HTMLElement>('[data-box]'))
    line.classList.toggle('chosen', line.dataset.box === path)
  try {
    const inside = (await pageAt(path)).querySelector('.beside-box')
    // Another one was chosen meanwhile.
    if (asked !== path) return
    if (inside === null) throw new Error(`${path} is no box`)
    box.replaceChildren(...inside.childNodes)
    box.scrollTop = 0
  } catch (error) {
    console.warn(error)
    if (asked === path && chosen) location.href = path
  }
}

/** In a list: a line that is opened, or a tag that is followed, shows its box. */
function besideList(box: HTMLElement): void {
  const lines = [...document.querySelectorAll<HTMLElement>('[data-box]')]
  for (const line of lines) {
    const path = line.dataset.box ?? ''
    const fold = line.querySelector('details')
    fold?.addEventListener('toggle', () => {
      if (fold.open && wide() && asked !== path) void show(path, box)
    })
    for (const link of [line, ...line.querySelectorAll('a')])
      if (link instanceof HTMLAnchorElement && link.getAttribute('href') === path)
        link.addEventListener('click', (event) => {
          if (!wide() || event.ctrlKey || event.metaKey || event.shiftKey) return
          event.preventDefault()
          void show(path, box)
        })
  }
  const first = lines.find((l) => l.dataset.box === sessionStorage.getItem(LAST)) ?? lines[0]
  if (first === undefined || !wide()) return
  void show(first.dataset.box ?? '', box, false)
  const fold = first.querySelector('details')
  if (fold !== null) fold.open = true
}

/** Beside a box: the lines of today as links, where one is marked. */
async function besideBox(list: HTMLElement): Promise<void> {
  if (!wide()) return
  const today = await pageAt('/')
  const parts = today.querySelectorAll('.beside-list > .today-sum, .beside-list > .round')
  list.replaceChildren(...parts)
  for (const line of list.querySelectorAll<HTMLElement>('[data-box]')) {
    const link = document.createElement('a')
    link.href = line.dataset.box ?? ''
    link.className = 'todo-line'
    link.append(...(line.querySelector('summary')?.childNodes ?? []))
    const here = link.pathname === location.pathname
    if (here) link.setAttribute('aria-current', 'page')
    line.classList.toggle('chosen', here)
    line.replaceChildren(link)
    if (here) list.scrollTop = Math.max(0, line.offsetTop - list.clientHeight / 2)
  }
}

const box = document.getElementById('beside-box')
if (box !== null) besideList(box)
const list = document.getElementById('beside-today')
// The list is a convenience: where it cannot be had, the box is there all the same.
if (list !== null) besideBox(list).catch((error: unknown) => console.warn(error))
