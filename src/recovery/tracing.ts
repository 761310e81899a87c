/**
 * Foulbrood traced: every colony that gave to a suspected one, got from it, was united with it or stood robbed beside it
 * since its last clean look. Spores travel with combs, bees, honey and robbers, in both directions (common practice of
 * inspectors). Pure, over the histories of a yard.
 */

import { addDays, type Day, inWords, later } from '../days.ts'
import type { Gift, StandingEntry } from '../journal/index.ts'
import { type Deed, deedInEnglish } from './says/inside.ts'
import type { Reason } from './says/said.ts'

/** How a colony is bound to a suspected one. */
type Bond = 'gave' | 'got' | 'united' | 'robbing'

export interface Exposure {
  /** Tag of the suspected colony. */
  from: string
  bond: Bond
  /** The day of the bond; of several, the latest. */
  on: Day
  /** In words, after "it": 'got a frame of eggs from W-7'. */
  how: string
  /** The same as data; phones of before kept only the words. */
  deed?: Deed
  /** Every bond to a suspected colony, in order of its day. */
  bonds: { on: Day; how: string; deed?: Deed }[]
  /** Since when it is held: the bond, or the suspicion where that came later. */
  since: Day
  /** A full look at every brood frame, 2 to 8 weeks after: the signs show from 12.5 days on, in half of cases by two months (afb.org.nz). */
  look: { opens: Day; due: Day; closes: Day }
}

export interface Traced {
  tag: string
  /** By which it is named in the answer, where tags are used again; the tag when left out. */
  id?: string
  /** Other names it is written under. */
  names?: readonly string[]
  yard: string
  /** Standing entries in order, the intake first. */
  entries: readonly StandingEntry[]
  /** Since when brood disease is suspected in it; null when it is not. */
  suspectedSince: Day | null
}

/** Days after the bond on which the full brood look opens, is due and closes: 2, 4 and 8 weeks. */
const LOOK = { opens: 14, due: 28, closes: 56 }
/** With no clean look before, bonds count for as long as it has been here. */
const SPREADS = ['egg-frame', 'open-brood', 'capped-brood', 'combs', 'bees', 'queen-cell'] as const

const isClean = (e: StandingEntry): boolean =>
  e.kind === 'disease-cleared' ||
  (e.kind === 'inspection' &&
    e.opened &&
    e.signs !== undefined &&
    !e.signs.includes('brood-disease-suspected'))

/** Whether tracing reads an entry at all; of a colony's journal, few. */
export const tellsOfBonds = (e: StandingEntry): boolean =>
  e.kind === 'intake' ||
  e.kind === 'move' ||
  e.kind === 'outcome' ||
  isClean(e) ||
  (e.kind === 'inspection' && e.signs?.includes('robbing') === true) ||
  (e.kind === 'given' && spread(e.what))

/** The last clean look before the suspicion, from which bonds count; the first entry when there was none. */
function boundFrom(c: Traced): Day {
  const since = c.suspectedSince ?? ''
  const clean = c.entries.filter((e) => isClean(e) && e.on < since).at(-1)
  return clean?.on ?? c.entries[0]?.on ?? since
}

const nameIs = (c: Traced, name: string | undefined): boolean =>
  name !== undefined &&
  (name.toLowerCase() === c.tag.toLowerCase() || name === c.id || (c.names ?? []).includes(name))

/** Whether it stood in a yard on that day: a tag may be used again. */
function wasHere({ entries }: Traced, day: Day): boolean {
  const left = entries.find((e) => e.kind === 'outcome')?.on
  return (entries[0]?.on ?? day) <= day && (left === undefined || day <= left)
}

/** The yard it stood in on a day. */
function yardOn(c: Traced, day: Day): string {
  const moves = c.entries.filter((e) => e.kind === 'move')
  if (moves.length === 0) return c.yard
  const last = c.entries.findLast((e) => (e.kind === 'move' || e.kind === 'intake') && e.on <= day)
  return last?.kind === 'move' || last?.kind === 'intake' ? last.yard : c.yard
}

const spread = (what: string): what is (typeof SPREADS)[number] =>
  (SPREADS as readonly string[]).includes(what)

interface Link {
  bond: Bond
  on: Day
  how: string
  deed: Deed
}

const link = (bond: Bond, on: Day, deed: Deed): Link => ({ bond, on, how: deedInEnglish(deed), deed })

/** What went from `from` into `to`, as the book of `to` has it. */
const given = (to: Traced, from: Traced): { on: Day; what: Gift }[] =>
  to.entries.flatMap((e) =>
    e.kind === 'given' && spread(e.what) && nameIs(from, e.donor) && wasHere(from, e.on)
      ? [{ on: e.on, what: e.what }]
      : [],
  )

const unitedInto = (gone: Traced, into: Traced): Day[] =>
  gone.entries.flatMap((e) =>
    e.kind === 'outcome' && e.what === 'united' && nameIs(into, e.into) && wasHere(into, e.on) ? [e.on] : [],
  )

const robbed = (c: Traced): Day[] =>
  c.entries.flatMap((e) => (e.kind === 'inspection' && e.signs?.includes('robbing') === true ? [e.on] : []))

/** Every bond between a colony and a suspected one. */
function linksOf(c: Traced, sick: Traced): Link[] {
  const tag = sick.tag
  return [
    ...given(c, sick).map(({ on, what }) => link('got', on, { code: 'got', what, tag })),
    ...given(sick, c).map(({ on, what }) => link('gave', on, { code: 'gave', what, tag })),
    ...unitedInto(sick, c).map((on) => link('united', on, { code: 'took-in', tag })),
    ...unitedInto(c, sick).map((on) => link('united', on, { code: 'united-into', tag })),
    ...robbedTogether(c, sick).filter(
      ({ on }) => yardOn(c, on) === yardOn(sick, on) && wasHere(c, on) && wasHere(sick, on),
    ),
  ]
}

/** Robbers carry what they rob: robbing noted at either box binds the two, whoever robbed whom. */
const robbedTogether = (c: Traced, sick: Traced): Link[] =>
  [...robbed(c), ...robbed(sick)].map((on) => link('robbing', on, { code: 'stood-beside', tag: sick.tag }))

/** A full look at the brood, in the window and without suspicion, ends the exposure; so does who clears it. */
const lookedSince = (c: Traced, e: Pick<Exposure, 'on' | 'look'>): boolean =>
  c.entries.some((x) => isClean(x) && x.on >= (x.kind === 'disease-cleared' ? e.on : e.look.opens))

/**
 * Which colonies are bound to a suspected one, by tag; a suspected colony itself is not among them. The latest bond of each
 * counts. Example: `D-1` gave a frame to `W-7` on 3 May, `W-7` is suspected on 20 May: D-1 is held, and looked at 17 May to
 * 28 June.
 */
export function traceFoulbrood(colonies: readonly Traced[]): Map<string, Exposure> {
  const exposed = new Map<string, Exposure>()
  const meetings = meetingsOf(colonies)
  for (const sick of colonies) {
    if (sick.suspectedSince === null) continue
    const from = boundFrom(sick)
    for (const c of meetings(sick, from)) {
      if (c === sick || c.suspectedSince !== null) continue
      const links = linksOf(c, sick)
        .filter((l) => l.on >= from)
        .sort((a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0))
      const last = links.at(-1)
      if (last === undefined || lookedSince(c, { ...last, look: lookAfter(last.on) })) continue
      const key = c.id ?? c.tag
      exposed.set(key, together(exposed.get(key), sick, links, last))
    }
  }
  return exposed
}

/**
 * Which colonies can be bound to a suspected one at all: those that either book names, and where there was robbing those that
 * were here on that day. A book of thousands with a hundred suspicions is not gone through pair by pair.
 */
function meetingsOf(colonies: readonly Traced[]): (sick: Traced, from: Day) => Traced[] {
  const called = new Map<string, Traced[]>()
  const naming = new Map<string, Traced[]>()
  const put = (index: Map<string, Traced[]>, name: string, c: Traced): void => {
    const key = name.toLowerCase()
    const known = index.get(key)
    if (known === undefined) index.set(key, [c])
    else known.push(c)
  }
  const stays: { c: Traced; from: Day; to: Day }[] = []
  const robberies: { c: Traced; days: Day[] }[] = []
  for (const c of colonies) {
    for (const name of namesOf(c)) put(called, name, c)
    for (const name of namedIn(c)) put(naming, name, c)
    const [first] = c.entries
    const out = c.entries.find((e) => e.kind === 'outcome')
    if (first !== undefined) stays.push({ c, from: first.on, to: out?.on ?? FOR_EVER })
    const days = robbed(c)
    if (days.length > 0) robberies.push({ c, days })
  }
  return (sick, from) => {
    const found = new Set<Traced>()
    for (const name of namedIn(sick)) for (const c of called.get(name.toLowerCase()) ?? []) found.add(c)
    for (const name of namesOf(sick)) for (const c of naming.get(name.toLowerCase()) ?? []) found.add(c)
    for (const day of robbed(sick))
      if (day >= from) for (const s of stays) if (s.from <= day && day <= s.to) found.add(s.c)
    for (const { c, days } of robberies)
      if (days.some((day) => day >= from && wasHere(sick, day))) found.add(c)
    return colonies.filter((c) => found.has(c))
  }
}

const FOR_EVER: Day = '9999-12-31'

const namesOf = (c: Traced): string[] => [c.tag, ...(c.id === undefined ? [] : [c.id]), ...(c.names ?? [])]

/** Other colonies, as its own book calls them. */
const namedIn = (c: Traced): string[] =>
  c.entries.flatMap((e) => {
    const name = e.kind === 'given' ? e.donor : e.kind === 'outcome' ? e.into : undefined
    return name === undefined ? [] : [name]
  })

/** Bound to several: the latest bond leads, and the hold began with the first. */
function together(known: Exposure | undefined, sick: Traced, links: readonly Link[], last: Link): Exposure {
  const suspected = sick.suspectedSince ?? last.on
  const bonds = [...(known?.bonds ?? []), ...links.map(({ on, how, deed }) => ({ on, how, deed }))].sort(
    (a, b) => (a.on < b.on ? -1 : a.on > b.on ? 1 : 0),
  )
  const since = [later(last.on, suspected), ...(known === undefined ? [] : [known.since])].sort()[0]
  const lead =
    known !== undefined && known.on > last.on ? known : { from: sick.tag, ...last, look: lookAfter(last.on) }
  return { ...lead, bonds, since: since ?? last.on }
}

const lookAfter = (on: Day): Exposure['look'] => ({
  opens: addDays(on, LOOK.opens),
  due: addDays(on, LOOK.due),
  closes: addDays(on, LOOK.closes),
})

/** What bound it, as data. */
export const deedOf = ({ deed, how }: Pick<Exposure, 'deed' | 'how'>): Deed =>
  deed ?? { code: 'as-said', how }

/** What is asked of an exposed colony, as data. */
export const boundTo = (e: Exposure): Reason => ({
  code: 'bound',
  how: deedOf(e),
  on: e.on,
  from: e.from,
  opens: e.look.opens,
  closes: e.look.closes,
})

/** Why it may not be moved, united or given from, in a sentence without its full stop. */
export const exposedWords = (tag: string, e: Exposure): string =>
  `${tag} ${e.how} on ${inWords(e.on)}, and brood disease is suspected in ${e.from}: it may not be moved, united or give brood, bees or comb to others until every brood frame was looked at, bees shaken off, between ${inWords(e.look.opens)} and ${inWords(e.look.closes)}, and the signs noted`
