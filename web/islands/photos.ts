/**
 * Photos of every form of a page: made smaller in the phone, and drawn anew, so that nothing but the picture is left of them: no place,
 * no time, no camera. Without JavaScript they go as they are, and the server strips them.
 */
import { MOST_PHOTOS } from '../../src/journal/index.ts'
import { words } from './words.ts'

/** Pixels along the longer side: cells and eggs can still be told apart, and it is a few hundred kB. */
const LONGEST = 1600
const QUALITY = 0.82

/** The picture in a file, drawn anew as JPEG, upright. Rejects when the browser cannot read it as a picture. */
async function drawnAnew(file: File): Promise<File> {
  const picture = await createImageBitmap(file, { imageOrientation: 'from-image' })
  const scale = Math.min(1, LONGEST / Math.max(picture.width, picture.height))
  const canvas = document.createElement('canvas')
  canvas.width = Math.max(1, Math.round(picture.width * scale))
  canvas.height = Math.max(1, Math.round(picture.height * scale))
  const pen = canvas.getContext('2d')
  if (pen === null) throw new Error('no canvas')
  // See-through parts of a PNG would come out black.
  pen.fillStyle = '#fff'
  pen.fillRect(0, 0, canvas.width, canvas.height)
  pen.drawImage(picture, 0, 0, canvas.width, canvas.height)
  picture.close()
  const blob = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', QUALITY))
  if (blob === null) throw new Error('no picture')
  return new File([blob], 'photo.jpg', { type: 'image/jpeg' })
}

/** A field for photos; beside it, where several may be taken, those chosen, to be left out again, and what is said of them. */
function tend(field: HTMLInputElement): void {
  const among = field.closest('.photos')
  const strip = among?.querySelector('#photo-chosen')
  const says = among?.querySelector('#photo-says')
  const kept = among?.querySelectorAll('.photo-kept').length ?? 0
  let chosen: File[] = []

  async function take(): Promise<void> {
    const button = field.form?.querySelector<HTMLButtonElement>('button[type="submit"]')
    const files = [...(field.files ?? [])]
    if (!field.multiple) chosen = []
    if (button) button.disabled = true
    say(words.islands.smaller(files.length))
    const unread: string[] = []
    for (const file of files) {
      try {
        chosen.push(await drawnAnew(file))
      } catch {
        unread.push(file.name)
        // Where nothing can be said of it the server says it.
        if (!says) chosen.push(file)
      }
    }
    const room = Math.max(0, MOST_PHOTOS - kept)
    const over = chosen.length - room
    chosen = chosen.slice(0, room)
    show()
    if (button) button.disabled = false
    say(
      unread.length > 0
        ? words.islands.unread(unread.join(', '))
        : over > 0
          ? words.islands.over(MOST_PHOTOS, over)
          : sizeWords(),
    )
  }

  /** Puts the chosen photos into the field that is posted, and small ones beside it, each to be taken out again. */
  function show(): void {
    const files = new DataTransfer()
    for (const file of chosen) files.items.add(file)
    field.files = files.files
    strip?.replaceChildren(...chosen.map(small))
  }

  function small(file: File, i: number): HTMLElement {
    const image = document.createElement('img')
    image.src = URL.createObjectURL(file)
    image.alt = words.islands.photo(i + 1)
    image.width = 96
    image.height = 96
    image.addEventListener('load', () => URL.revokeObjectURL(image.src), { once: true })
    const out = document.createElement('button')
    out.type = 'button'
    out.className = 'button button-plain'
    out.textContent = words.islands.leaveOut
    out.addEventListener('click', () => {
      chosen = chosen.filter((other) => other !== file)
      show()
      say(sizeWords())
    })
    const both = document.createElement('span')
    both.className = 'photo-kept'
    both.append(image, out)
    return both
  }

  function sizeWords(): string {
    if (chosen.length === 0) return ''
    const kb = Math.round(chosen.reduce((sum, f) => sum + f.size, 0) / 1000)
    return words.islands.photoSize(chosen.length, kb)
  }

  function say(text: string): void {
    if (says) says.textContent = text
  }

  field.addEventListener('change', () => void take())
  // After going back to a form a browser puts the files as they were chosen into it again.
  field.value = ''
}

for (const field of document.querySelectorAll<HTMLInputElement>('input[type="file"][name="photo"]'))
  tend(field)
