/** What became of every colony, plainly counted: the first thing a review says, before any estimate. */
import type { Day } from '../../days.ts'
import { knownOn } from './cohort.ts'
import type { ColonyFacts, OutcomeKind } from './facts.ts'

/** Colonies by the way they left as of a day; `here`: still in the yard. They add up to all colonies. */
export type Fates = Record<OutcomeKind | 'here', number>

export const noFates = (): Fates => ({
  'moved-out': 0,
  united: 0,
  died: 0,
  absconded: 0,
  other: 0,
  unknown: 0,
  here: 0,
})

/** What had become of a colony by a day. */
export const fateOf = ({ outcome }: ColonyFacts, asOf: Day): keyof Fates =>
  outcome !== null && (outcome.on ?? asOf) <= asOf ? outcome.what : 'here'

export const addFates = (a: Fates, b: Fates): Fates => ({
  'moved-out': a['moved-out'] + b['moved-out'],
  united: a.united + b.united,
  died: a.died + b.died,
  absconded: a.absconded + b.absconded,
  other: a.other + b.other,
  unknown: a.unknown + b.unknown,
  here: a.here + b.here,
})

/** Counts the colonies taken in by a day. Outcomes of later days are not known yet; one without a day counts. */
export function fatesOf(all: readonly ColonyFacts[], asOf: Day): Fates {
  const fates = noFates()
  for (const c of knownOn(all, asOf)) fates[fateOf(c, asOf)]++
  return fates
}

/** The same under the names of the public format. */
export interface PrintedFates {
  colonies: number
  movedOut: number
  died: number
  absconded: number
  united: number
  other: number
  stillHere: number
  unknown: number
}

export const printedFates = (f: Fates): PrintedFates => ({
  colonies: Object.values(f).reduce((sum, n) => sum + n, 0),
  movedOut: f['moved-out'],
  died: f.died,
  absconded: f.absconded,
  united: f.united,
  other: f.other,
  stillHere: f.here,
  unknown: f.unknown,
})

const was = (n: number): string => (n === 1 ? 'was' : 'were')

/**
 * Example: 'Of 194 colonies, 85 moved out, 54 were lost (40 died, 14 absconded), 16 were united, 2 left otherwise, 37 are
 * still here.' A way that nobody took is left out.
 */
export function fatesReading(f: Fates, unitedIsLoss: boolean): string {
  const ways: [n: number, words: string][] = [
    [f.died, 'died'],
    [f.absconded, 'absconded'],
    ...(unitedIsLoss ? [[f.united, 'united'] as [number, string]] : []),
  ]
  const lost = ways.reduce((sum, [n]) => sum + n, 0)
  const how = ways.flatMap(([n, words]) => (n === 0 ? [] : [`${n} ${words}`])).join(', ')
  const all = Object.values(f).reduce((sum, n) => sum + n, 0)
  if (all === 0) return 'No colonies yet.'
  const said = [
    [f['moved-out'], 'moved out'],
    [lost, `${was(lost)} lost (${how})`],
    [unitedIsLoss ? 0 : f.united, `${was(f.united)} united`],
    [f.other, 'left otherwise'],
    [f.unknown, 'left, nobody knows how'],
    [f.here, `${f.here === 1 ? 'is' : 'are'} still here`],
  ] as const
  const parts = said.flatMap(([n, words]) => (n === 0 ? [] : [`${n} ${words}`]))
  return `Of ${all} ${all === 1 ? 'colony' : 'colonies'}, ${parts.join(', ')}.`
}
