/**
 * The label of a box, photographed: opens the box from the page that finds things; at a visit it says whether the label is
 * of the box one is writing about, before anything is written at the wrong one. Works without signal.
 */
import { words as WORDS } from './words.ts'

/** What a page wants of a label. */
type Wanted =
  /** Any box: it is opened. */
  | { open: true }
  /** The box of this tag, which is being written about. */
  | { tag: string }

/** Pixels along the longer side in which the code is looked for: enough for one that fills a tenth of the picture. */
const LONGEST = 1200

export function offerScan(): void {
  const finding = document.getElementById('scan-here')
  if (finding !== null) finding.replaceChildren(...button(WORDS.islands.scan.label, { open: true }))
  const form = document.getElementById('entry-form')
  if (!(form instanceof HTMLFormElement)) return
  const tag = tagIn(new URL(form.action).pathname.replace(/\/visit$/, ''))
  if (tag === null || !/\/visit$/.test(new URL(form.action).pathname)) return
  const [label, says] = button(WORDS.islands.scan.itsLabel, { tag })
  label.classList.add('scan-beside')
  // Beside the way back, so that it takes no room from the form.
  const crumb = document.querySelector('.crumb')
  if (crumb === null) form.before(label, says)
  else {
    crumb.append(label)
    crumb.after(says)
  }
}

function button(words: string, wanted: Wanted): [HTMLLabelElement, HTMLElement] {
  const label = document.createElement('label')
  label.className = 'scan'
  const input = document.createElement('input')
  input.type = 'file'
  input.accept = 'image/*'
  input.setAttribute('capture', 'environment')
  const shown = document.createElement('span')
  shown.className = 'tag' in wanted ? 'scan-word' : 'button'
  shown.textContent = words
  const says = document.createElement('p')
  says.setAttribute('role', 'status')
  input.addEventListener('change', () => {
    const [file] = input.files ?? []
    input.value = ''
    if (file === undefined) return
    says.textContent = WORDS.islands.scan.reading
    textIn(file).then(
      (text) => said(says, text, wanted),
      (error: unknown) => {
        console.warn(error)
        said(says, null, wanted)
      },
    )
  })
  label.append(input, shown)
  return [label, says]
}

/** The tag in the address of a colony, as labels have it; null for anything else. */
function tagIn(path: string): string | null {
  const found = /^\/colony\/([^/]+)$/.exec(path)?.[1]
  return found === undefined ? null : decodeURIComponent(found)
}

function said(says: HTMLElement, text: string | null, wanted: Wanted): void {
  const tag = text === null ? null : tagIn(URL.canParse(text) ? new URL(text).pathname : '')
  says.className = ''
  if (tag === null) {
    says.textContent = text === null ? WORDS.islands.scan.unread : WORDS.islands.scan.notOurs
    return
  }
  const path = `/colony/${encodeURIComponent(tag)}`
  if ('open' in wanted) location.assign(path)
  else if (tag.toLowerCase() === wanted.tag.toLowerCase()) says.textContent = WORDS.islands.scan.right(tag)
  else {
    says.className = 'notice notice-late'
    const there = document.createElement('a')
    there.href = `${path}/visit`
    there.className = 'button button-do'
    there.textContent = WORDS.islands.scan.instead(tag)
    says.replaceChildren(WORDS.islands.scan.wrong(tag, wanted.tag), there)
  }
}

/** The text of the code in a picture; null where none can be read. */
async function textIn(file: File): Promise<string | null> {
  // Fetched when somebody scans for the first time, or from what the phone keeps.
  const [{ default: read }, picture] = await Promise.all([
    import('jsqr'),
    createImageBitmap(file, { imageOrientation: 'from-image' }),
  ])
  const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(picture.width * scale))
  canvas.height = Math.max(1, Math.round(picture.height * scale))
  const pen = canvas.getContext('2d', { willReadFrequently: true })
  if (pen === null) return null
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height)
  picture.close()
  const { data } = pen.getImageData(0, 0, canvas.width, canvas.height)
  return read(data, canvas.width, canvas.height)?.data ?? null
}
