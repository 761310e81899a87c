/**
 * Foulbrood traced: every colony that gave to a suspected one, got from it, was united with it or stood robbed beside it
 * since its last clean look. Spores travel with combs, bees, honey and robbers, in both directions (common practice of
 * inspectors). Pure, over the histories of a yard.
 */

import { addDays, type Day, inWords, later } from '../days.ts'
import type { StandingEntry } from '../journal/index.ts'

/** How a colony is bound to a suspected one. */
export type Bond = 'gave' | 'got' | 'united' | 'robbing'

export interface Exposure {
  /** Tag of the suspected colony. */
  from: string
  bond: Bond
  /** The day of the bond; of several, the latest. */
  on: Day
  /** In words, after "it": 'got a frame of eggs from W-7'. */
  how: string
  /** A full look at every brood frame, 2 to 8 weeks after: the signs show from 12.5 days on, in half of cases by two months (afb.org.nz). */
  look: { opens: Day; due: Day; closes: Day }
}

export interface Traced {
  tag: string
  /** Other names it is written under, its id for one. */
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

/** The last clean look before the suspicion, from which bonds count; the first entry when there was none. */
function boundFrom(c: Traced): Day {
  const since = c.suspectedSince ?? ''
  const clean = c.entries.filter((e) => isClean(e) && e.on < since).at(-1)
  return clean?.on ?? c.entries[0]?.on ?? since
}

const nameIs = (c: Traced, name: string | undefined): boolean =>
  name !== undefined && (name === c.tag || (c.names ?? []).includes(name))

const GIFT: Record<(typeof SPREADS)[number], string> = {
  'egg-frame': 'a frame of eggs',
  'open-brood': 'a frame of brood',
  'capped-brood': 'a frame of capped brood',
  combs: 'combs',
  bees: 'bees',
  'queen-cell': 'a queen cell',
}

const spread = (what: string): what is keyof typeof GIFT => (SPREADS as readonly string[]).includes(what)

interface Link {
  bond: Bond
  on: Day
  how: string
}

/** What went from `from` into `to`, as the book of `to` has it. */
const given = (to: Traced, from: Traced): { on: Day; what: string }[] =>
  to.entries.flatMap((e) =>
    e.kind === 'given' && spread(e.what) && nameIs(from, e.donor) ? [{ on: e.on, what: GIFT[e.what] }] : [],
  )

const unitedInto = (gone: Traced, into: Traced): Day[] =>
  gone.entries.flatMap((e) =>
    e.kind === 'outcome' && e.what === 'united' && nameIs(into, e.into) ? [e.on] : [],
  )

const robbed = (c: Traced): Day[] =>
  c.entries.flatMap((e) => (e.kind === 'inspection' && e.signs?.includes('robbing') === true ? [e.on] : []))

/** Every bond between a colony and a suspected one. */
function linksOf(c: Traced, sick: Traced): Link[] {
  const tag = sick.tag
  return [
    ...given(c, sick).map((g): Link => ({ bond: 'got', on: g.on, how: `got ${g.what} from ${tag}` })),
    ...given(sick, c).map((g): Link => ({ bond: 'gave', on: g.on, how: `gave ${g.what} to ${tag}` })),
    ...unitedInto(sick, c).map((on): Link => ({ bond: 'united', on, how: `took in ${tag}` })),
    ...unitedInto(c, sick).map((on): Link => ({ bond: 'united', on, how: `was united into ${tag}` })),
    ...(c.yard === sick.yard ? robbedTogether(c, sick) : []),
  ]
}

/** Robbers carry what they rob: robbing noted at either box binds the two, whoever robbed whom. */
const robbedTogether = (c: Traced, sick: Traced): Link[] =>
  [...robbed(c), ...robbed(sick)].map((on) => ({
    bond: 'robbing',
    on,
    how: `stood beside ${sick.tag} while there was robbing`,
  }))

/** A full look at the brood, in the window and without suspicion, ends the exposure. */
const lookedSince = (c: Traced, e: Exposure): boolean =>
  c.entries.some((x) => isClean(x) && x.on >= e.look.opens && x.kind !== 'intake')

/**
 * Which colonies are bound to a suspected one, by tag; a suspected colony itself is not among them. The latest bond of each
 * counts. Example: `D-1` gave a frame to `W-7` on 3 May, `W-7` is suspected on 20 May: D-1 is held, and looked at 17 May to
 * 28 June.
 */
export function traceFoulbrood(colonies: readonly Traced[]): Map<string, Exposure> {
  const exposed = new Map<string, Exposure>()
  for (const sick of colonies.filter((c) => c.suspectedSince !== null)) {
    const from = boundFrom(sick)
    for (const c of colonies) {
      if (c === sick || c.suspectedSince !== null) continue
      const last = linksOf(c, sick)
        .filter((l) => l.on >= from)
        .reduce<Link | null>((a, l) => (a === null || l.on >= a.on ? l : a), null)
      if (last === null) continue
      const exposure = { from: sick.tag, ...last, look: lookAfter(last.on) }
      const known = exposed.get(c.tag)
      if (!lookedSince(c, exposure) && (known === undefined || later(known.on, last.on) === last.on))
        exposed.set(c.tag, exposure)
    }
  }
  return exposed
}

const lookAfter = (on: Day): Exposure['look'] => ({
  opens: addDays(on, LOOK.opens),
  due: addDays(on, LOOK.due),
  closes: addDays(on, LOOK.closes),
})

/** What is asked of an exposed colony, in a sentence. */
export const exposureWords = (e: Exposure): string =>
  `It ${e.how} on ${inWords(e.on)}, and brood disease is suspected in ${e.from}: do not move or unite it and take no brood, bees or comb from it. Look at every brood frame, bees shaken off, between ${inWords(e.look.opens)} and ${inWords(e.look.closes)}, and note the signs.`
