/**
 * What is being typed into the form of an entry is kept in the browser until the entry is saved: a reload, a tab that the
 * phone ended, or going back brings it all again, with the same hidden ids, so that saving twice is one entry.
 *
 * Each person's own: another name that signs in on the phone is shown none of it, and signing out clears it.
 */

import { isTooOld } from '../../src/time-of-day.ts'
import { LOCALE, words } from './words.ts'

interface Draft {
  /** What stands in the form, by field; photos cannot be kept here. */
  fields: Record<string, string[]>
  /** Milliseconds since 1970: when it was last typed in. */
  at: number
  /** A page has said that its entry is in the book, or in the outbox. */
  saved: boolean
}

const PREFIX = 'resettle-draft:'
/** Days after which what was never saved is let go (judgement): by then the box was looked at again. */
const KEPT_DAYS = 7
const DAY_MS = 86_400_000
const LEAVING = 'resettle-leaving'
const SIGNS_OUT = /\/(sign-out|account\/sign-out-everywhere)$/

type Control = HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement

/** Called on every page, after its form was drawn. */
export function keepDrafts(): void {
  // Private windows may have no storage, or a full one: then the form is as good as it was.
  try {
    letGo()
    markSaved(new URLSearchParams(location.search).get('saved'))
    // The page of a sheet is there: its first form is done with, and not that of its box, which has the same id.
    for (const part of location.pathname.split('/')) markSaved(part, '/new')
    const { signedIn } = document.body.dataset
    const form = document.getElementById('entry-form')
    if (signedIn !== undefined && form instanceof HTMLFormElement) keep(form, keyOf(signedIn, form))
    clearOnSignOut(signedIn !== undefined)
  } catch (error) {
    console.warn(error)
  }
}

const keyOf = (person: string, form: HTMLFormElement): string =>
  `${PREFIX}${person}:${form.dataset.draft ?? new URL(form.action).pathname}`

function keep(form: HTMLFormElement, key: string): void {
  const shown = fieldsOf(form)
  // Without an id or a version nobody could say whether what was typed is saved.
  if (!isKnown(shown)) return
  const draft = current(key, versionOf(shown))
  const wentBack = performance
    .getEntriesByType('navigation')
    .some((n) => 'type' in n && n.type === 'back_forward')
  const refused = document.getElementById('problems') !== null
  if (draft !== null && !refused) {
    if (!draft.saved || wentBack) putBack(form, key, draft, shown)
    else localStorage.removeItem(key)
  }
  const note = (): void => write(key, { fields: fieldsOf(form), at: Date.now(), saved: false })
  form.addEventListener('input', note)
  form.addEventListener('change', note)
  // What was refused is the draft now; what was never touched is kept once it is sent, for its ids.
  if (refused) note()
  form.addEventListener('submit', note)
}

const isKnown = (fields: Draft['fields']): boolean =>
  versionOf(fields) !== undefined || Object.keys(fields).some(isId)

const isId = (name: string): boolean => /^id(\.|$)/.test(name)

/** What was shown when it was changed: a removal sheet's version, a record's base. */
const versionOf = ({ version, base }: Draft['fields']): string | undefined => version?.[0] ?? base?.[0]

/** The draft, unless what it was typed over was saved since: then it is done with. */
function current(key: string, version: string | undefined): Draft | null {
  const draft = read(key)
  if (draft === null || versionOf(draft.fields) === version) return draft
  localStorage.removeItem(key)
  return null
}

/**
 * `shown`: the form as it came. What was so on the day it was tapped is not put back on another one
 * (`data-of-day`), nor after hours what was so then (`data-of-hour`).
 */
function putBack(form: HTMLFormElement, key: string, draft: Draft, shown: Draft['fields']): void {
  const sameDay = draft.fields.shownOn?.[0] === shown.shownOn?.[0]
  const old = !sameDay || isTooOld(draft.fields.shownAt?.[0] ?? '', shown.shownAt?.[0] ?? '')
  const { ofDay = '', ofHour = '' } = form.dataset
  const gone = (sameDay ? (old ? ofHour : '') : ofDay).split(' ')
  for (const control of form.elements)
    if (isControl(control) && !gone.includes(control.name)) fill(control, draft.fields[control.name] ?? [])
  // What is put back was first seen when it was first shown: the hours run from there.
  const [shownAt] = draft.fields.shownAt ?? []
  const seen = form.elements.namedItem('shownAt')
  if (!old && shownAt !== undefined && seen instanceof HTMLInputElement) seen.value = shownAt
  for (const fold of form.querySelectorAll('details'))
    if (fold.querySelector('input:checked:not([value=""]), .other:not(:placeholder-shown)') !== null)
      fold.open = true
  // The panel of a visit reads the form again.
  setTimeout(() => form.dispatchEvent(new Event('restored', { bubbles: true })))
  form.prepend(noteOf(key, draft))
}

/** Radios and ticks as they were; of hidden fields only the ids. */
function fill(control: Control, values: string[]): void {
  if (control instanceof HTMLInputElement) {
    if (control.type === 'file' || control.type === 'submit') return
    if (control.type === 'hidden' && !isId(control.name)) return
    if (control.type === 'radio' || control.type === 'checkbox') {
      control.checked = values.includes(control.value)
      return
    }
  }
  if (values[0] !== undefined) control.value = values[0]
}

function noteOf(key: string, draft: Draft): HTMLElement {
  const note = document.createElement('aside')
  note.className = 'notice draft-note'
  note.setAttribute('role', 'status')
  const said = document.createElement('p')
  const when = new Date(draft.at).toLocaleString(LOCALE, {
    weekday: 'short',
    hour: '2-digit',
    minute: '2-digit',
  })
  said.textContent = draft.saved
    ? words.islands.draftSaved
    : words.islands.draftBack(when, draft.fields.photo !== undefined)
  const anew = document.createElement('button')
  anew.type = 'button'
  anew.className = 'button button-plain'
  anew.textContent = words.islands.emptyForm
  anew.addEventListener('click', () => {
    localStorage.removeItem(key)
    location.replace(location.href)
  })
  note.append(said, anew)
  return note
}

function fieldsOf(form: HTMLFormElement): Draft['fields'] {
  const fields: Draft['fields'] = {}
  for (const [name, value] of new FormData(form)) {
    if (typeof value === 'string') fields[name] = [...(fields[name] ?? []), value]
    else if (value.size > 0) fields[name] = []
  }
  return fields
}

/** A page that says “saved” names the entry: the draft that has its id is done with. */
function markSaved(id: string | null, of = ''): void {
  if (id === null || id === '') return
  for (const [key, draft] of drafts())
    if (
      key.endsWith(of) &&
      Object.entries(draft.fields).some(([name, values]) => isId(name) && values.includes(id))
    )
      write(key, { ...draft, saved: true })
}

function letGo(): void {
  for (const [key, { at }] of drafts())
    if (Math.abs(Date.now() - at) > KEPT_DAYS * DAY_MS) localStorage.removeItem(key)
}

/** Signing out may first warn of what waits: cleared is only what the one who has left typed. */
function clearOnSignOut(signedIn: boolean): void {
  if (!signedIn && sessionStorage.getItem(LEAVING) !== null)
    for (const [key] of drafts()) localStorage.removeItem(key)
  sessionStorage.removeItem(LEAVING)
  for (const form of document.forms)
    if (SIGNS_OUT.test(form.action))
      form.addEventListener('submit', () => sessionStorage.setItem(LEAVING, 'yes'))
}

const drafts = (): [string, Draft][] =>
  Object.keys(localStorage)
    .filter((key) => key.startsWith(PREFIX))
    .flatMap((key) => {
      const draft = read(key)
      return draft === null ? [] : [[key, draft] as [string, Draft]]
    })

function read(key: string): Draft | null {
  const text = localStorage.getItem(key)
  if (text === null) return null
  try {
    const { fields, at, saved } = JSON.parse(text) as Partial<Draft>
    return typeof fields === 'object' && typeof at === 'number' ? { fields, at, saved: saved === true } : null
  } catch {
    return null
  }
}

function write(key: string, draft: Draft): void {
  try {
    localStorage.setItem(key, JSON.stringify(draft))
  } catch {
    // No room: the form itself still has it.
  }
}

const isControl = (element: Element): element is Control =>
  element instanceof HTMLInputElement ||
  element instanceof HTMLTextAreaElement ||
  element instanceof HTMLSelectElement
