/**
 * The live panel of a visit: the same core as on the server, run in the phone on what is tapped so far. Needs no
 * signal once the page is there. Without JavaScript the form works the same, without the panel.
 */

import { planOf } from '../../src/decision/index.ts'
import { visitDrafts } from '../../src/features/entries/index.ts'
import { typedFrom } from '../../src/forms/index.ts'
import { type Entry, historyOf, type Inspection, saysNothing } from '../../src/journal/index.ts'
import {
  type Exposure,
  leftOutReason,
  type Plan,
  type Protocol,
  type Reason,
} from '../../src/recovery/index.ts'
import { inUnits, proves, type Units, wordsIn } from '../../src/words/index.ts'
import { LANGUAGE } from './words.ts'

const words = wordsIn(LANGUAGE)
const SAYS = words.record.live

const isElse = (r: Reason): boolean => r.code !== 'left-out'

interface LiveData {
  tag: string
  entries: Entry[]
  today: string
  units: Units
  protocol: Protocol
  exposure: Exposure | null
}

function start(): void {
  const data = document.getElementById('live-data')?.textContent
  const form = document.getElementById('entry-form')
  const panel = document.getElementById('live')
  const text = document.getElementById('live-text')
  const action = document.getElementById('live-do')
  if (!data || !(form instanceof HTMLFormElement) || !panel || !text || !action) return
  const live = JSON.parse(data) as LiveData
  const before = planWith(live, [])
  if (before === null) return
  const show = (): void => {
    const tapped = tappedEntries(form, live)
    const after = planWith(live, tapped)
    if (after === null) return
    const missing = new Set(leftOutNow(after, live).map((m) => m.what))
    action.textContent =
      missing.size === 0
        ? // The lid is off while this is tapped.
          after.advice.action === 'leave-alone'
          ? SAYS.closeUp
          : words.trade.actions[after.advice.action]
        : SAYS.lookFor([...missing].map((what) => SAYS.sought[what]).join(SAYS.and))
    text.replaceChildren(...said(tapped, before, after, live))
  }
  form.addEventListener('input', show)
  form.addEventListener('restored', show)
  panel.hidden = false
  // Beside the form there is room for all of it; in the bar at the thumb one line, the rest on a tap.
  const fold = panel.querySelector('details')
  if (fold !== null) fold.open = matchMedia('(min-width: 60rem)').matches
  show()
}

/** The plan of the history with these entries added. */
function planWith(live: LiveData, added: Entry[]): Plan | null {
  const history = historyOf(live.tag, [...live.entries, ...added])
  return history === null ? null : planOf(history, live.today, live.protocol, { exposure: live.exposure })
}

/** What is tapped so far as entries; a draft that cannot be read yet is left out. */
function tappedEntries(form: HTMLFormElement, live: LiveData): Entry[] {
  return (
    visitDrafts(typedFrom(new FormData(form)), live.units)
      .filter((d) => d.problems.length === 0 && whole(d.raw, live.today))
      .map((d, i) => ({ ...d.raw, id: `tapped-${i}`, colony: live.tag, by: '' }) as unknown as Entry)
      // Nothing tapped yet: nothing is missing yet either, and the plan stands as it was.
      .filter((e) => e.kind !== 'inspection' || !saysNothing(e))
  )
}

const NEEDED: Record<string, string[]> = {
  inspection: ['opened'],
  'queen-cage': ['found'],
  given: ['what'],
  'mite-wash': ['bees', 'mites'],
}

function whole(raw: Record<string, unknown>, today: string): boolean {
  const { on } = raw
  if (typeof on !== 'string' || !/^\d{4}-\d\d-\d\d$/.test(on) || on > today) return false
  return (NEEDED[String(raw.kind)] ?? []).every((field) => raw[field] !== undefined)
}

/** What the look being tapped leaves out, while the lid is still off. */
const leftOutNow = (after: Plan, live: LiveData): Plan['missing'] =>
  after.missing.filter((m) => m.since === live.today)

function said(tapped: Entry[], before: Plan, after: Plan, live: LiveData): Node[] {
  const look = tapped.find((e): e is Inspection => e.kind === 'inspection') ?? null
  const lines = proves(look, before, after, words)
  const missing = leftOutReason(leftOutNow(after, live).map((m) => m.what))
  // Said on its own, above: not twice.
  const others = missing.length === 0 ? after.advice.reasons : after.advice.reasons.filter(isElse)
  return [
    ...(missing.length === 0 ? [] : [paragraph(words.reasons.all(missing), 'left-out')]),
    paragraph(inUnits(words.reasons.all(others), live.units)),
    heading(SAYS.proves),
    lines.length === 0 ? paragraph(SAYS.nothingNew) : list(lines),
  ]
}

function heading(text: string): HTMLElement {
  const h = document.createElement('h2')
  h.textContent = text
  return h
}

function paragraph(text: string, name = ''): HTMLElement {
  const p = document.createElement('p')
  p.className = name
  p.textContent = text
  return p
}

function list(lines: string[]): HTMLElement {
  const ul = document.createElement('ul')
  for (const line of lines) {
    const li = document.createElement('li')
    li.textContent = line
    ul.append(li)
  }
  return ul
}

start()
