/** A note at the foot of the page. One at a time: the more pressing one stays. */
import { words } from './words.ts'

export interface Note {
  /** Higher is more pressing. */
  weight: number
  words: string
  /** Somebody may die of it. */
  alarm?: true
  way: { label: string; href: string } | { label: string; press: () => void }
}

let shown: { note: Note; element: HTMLElement } | null = null

export function showNote(note: Note): void {
  if (shown !== null && shown.note.weight > note.weight) return
  const same = shown !== null && shown.note.weight === note.weight
  if (same && shown?.note.words === note.words) return
  dropNote()
  const element = document.createElement('aside')
  element.className = note.alarm ? 'phone-note phone-alarm' : 'phone-note'
  element.setAttribute('role', 'status')
  element.setAttribute('aria-label', words.phone.this)
  const said = document.createElement('p')
  said.textContent = note.words
  element.append(said, wayOf(note.way))
  document.body.append(element)
  shown = { note, element }
}

/** Takes the note away; with a weight, only one of that weight. */
export function dropNote(weight?: number): void {
  if (shown === null || (weight !== undefined && shown.note.weight !== weight)) return
  shown.element.remove()
  shown = null
}

function wayOf(way: Note['way']): HTMLElement {
  if ('href' in way) {
    const link = document.createElement('a')
    link.href = way.href
    link.textContent = way.label
    return link
  }
  const button = document.createElement('button')
  button.type = 'button'
  button.textContent = way.label
  button.addEventListener('click', way.press)
  return button
}
