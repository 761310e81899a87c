/** What all plans ahead of one strength and season share: how nights pass, what a look leads to and what it can cost. */
import { type Model, NOTHING_AROUND, Q } from '../forecast/index.ts'
import { COMPACT, COMPACT_STATES } from './compact.ts'
import { before, introducing, type Nights, nightsOf, type Season } from './nights.ts'
import { cappedOf, cellsOf, eggsOf, outcomesIn } from './sight.ts'

/** Chance that opening costs the colony a virgin about to fly or to leave her cell. Judgement. */
export const OPENING_LOSES_VIRGIN = 0.04
export const inDanger = (stage: number, age: number): boolean =>
  (stage === Q.virgin && age <= 14) || (stage === Q.raising && age <= 1)

export const LEADS = ['proof', 'workers', 'cells', 'nothing'] as const
export type Leads = (typeof LEADS)[number]

/** What a look's outcome leads to. Several eggs a cell or drone caps: laying workers or a drone layer, whatever else is there. */
function leadsTo(o: number): Leads {
  if (cappedOf(o) === 2 || (eggsOf(o) === 2 && cappedOf(o) === 0)) return 'workers'
  if (eggsOf(o) > 0 || cappedOf(o) === 1) return 'proof'
  return cellsOf(o) > 0 ? 'cells' : 'nothing'
}

/** What something is worth so many nights before it, worked out night by night and kept. */
export class Stretch {
  readonly #night: Nights
  readonly #day: number
  readonly #values: Float64Array[]

  constructor(night: Nights, later: Float64Array, day: number) {
    this.#night = night
    this.#day = day
    this.#values = [later]
  }

  back(nights: number): Float64Array {
    for (let n = this.#values.length; n <= nights; n++) {
      const out = new Float64Array(COMPACT_STATES)
      before(this.#night, this.#values[n - 1] ?? out, -this.#day, out)
      this.#values.push(out)
    }
    return this.#values[nights] ?? new Float64Array(COMPACT_STATES)
  }
}

/** What all plans of one strength and season share. */
export interface Ground {
  night: Nights
  introduce: Nights
  /** Chance of what a look leads to, by state, in the order of {@link LEADS}. */
  leads: Float64Array
  /** Chance that opening costs a virgin, by state. */
  harm: Float64Array
}

const HARM = Float64Array.from(COMPACT, (s) => (inDanger(s.stage, s.age) ? OPENING_LOSES_VIRGIN : 0))

function leadsOf(model: Model): Float64Array {
  const leads = new Float64Array(COMPACT_STATES * LEADS.length)
  COMPACT.forEach((state, s) => {
    outcomesIn(state, NOTHING_AROUND, model, true).forEach((p, o) => {
      const i = s * LEADS.length + LEADS.indexOf(leadsTo(o))
      leads[i] = (leads[i] ?? 0) + p
    })
  })
  return leads
}

export const seasonKey = ({ now, soon, begun, shut }: Season): string => `${now} ${soon} ${begun} ${shut}`

interface Grounds {
  introduce: Nights
  leads: Float64Array
  nights: Map<string, Nights>
}
const grounds = new WeakMap<Model, Grounds>()

export interface GroundOptions {
  model: Model
  /** A class of strength (`strengthClass`), from 0. */
  strength: number
  season: Season
}

/** Kept by model, strength and season: what things cost does not touch it. */
export function groundOf({ model, strength, season }: GroundOptions): Ground {
  const kept = grounds.get(model) ?? {
    introduce: introducing(model),
    leads: leadsOf(model),
    nights: new Map<string, Nights>(),
  }
  grounds.set(model, kept)
  const key = `${strength} ${seasonKey(season)}`
  const night = kept.nights.get(key) ?? nightsOf(model, strength, season)
  kept.nights.set(key, night)
  return { night, introduce: kept.introduce, leads: kept.leads, harm: HARM }
}
