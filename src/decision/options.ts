/** The options open on a day, and what each is worth over the belief. */

import { addDays, type Day } from '../days.ts'
import {
  matesOnDay,
  NOTHING_AROUND,
  overnight,
  Q,
  type Shares,
  STATE,
  type Story,
} from '../forecast/index.ts'
import { coldSeason, type Protocol } from '../recovery/index.ts'
import { type Ahead, FRAME_DELAYS, READ_AFTER } from './ahead.ts'
import type { Costs, Supplies } from './costs.ts'
import { type Belief, compacted, outcomesOf, type Worth, worthOf, worthOfLook } from './leaf.ts'
import type { Library } from './library.ts'
import { type Season, STRENGTHS, strengthClass } from './nights.ts'
import { BOOST_DELAYS, BOOST_FRAMES } from './strength-now.ts'

type Act = 'look' | 'give' | 'boost' | 'queen' | 'unite'

export interface Option {
  act: Act
  /** Days from the day decided on until the look, for looks; 0: at once. */
  inDays: number
  value: number
  keeps: number
  /** Chance that a bought queen is the next step after it. */
  queenNext: number
}

export interface Question {
  story: Story
  costs: Costs
  supplies: Supplies
  library: Library
  /** Frames of bees, with those about to emerge. */
  frames: number
  protocol: Protocol
  /** Whether the lid may come off so many days on. */
  mayOpen: (inDays: number) => boolean
  mayGive: (inDays: number) => boolean
  /** Whether frames of eggs are to be thought of in later steps. */
  framesLeft: boolean
  mayBuy: boolean
  mayUnite: boolean
  /** The box was looked into today, so acting costs no second opening. */
  openToday: boolean
}

/** Looks that contradict each other, or left a doubt, are asked again after so many days (common practice: two or three). */
const LOOK_AGAIN = 3

/** Days ahead on which a look is thought of. */
const LOOKS = [0, 1, 2, 3, 4, 5, 7, 9, 11, 14, 17, 21] as const
/** Days ahead on which a frame of eggs is thought of. */
const GIFTS = [0, 3, 6, 10, 14] as const

/** Days until a virgin that is out flies to mate, one from a cell at hand, one from eggs laid today; in the middle of each. */
const FLIES = { now: 5, soon: 14, begun: 24 } as const

/** Nights to the cold season, and what share of its worth a colony loses in each: one proven late is not moved before spring. Judgement. */
const SHUTTING = [
  { within: 22, shut: 0.015 },
  { within: 52, shut: 0.005 },
] as const

export function seasonOn(protocol: Protocol, day: Day): Season {
  // In halves, so that few tables are needed.
  const mates = (inDays: number): number =>
    Math.floor(2 * matesOnDay(protocol.matingMonths, addDays(day, inDays)) + 0.5) / 2
  const shutting = SHUTTING.find(({ within }) => coldSeason(protocol, addDays(day, within)))
  return {
    now: mates(FLIES.now),
    soon: mates(FLIES.soon),
    begun: mates(FLIES.begun),
    shut: shutting?.shut ?? 0,
  }
}

/** Days until a queen can be put in, in steps, so that few tables are needed. */
export const leadOf = ({ queensInHand, daysUntilQueens }: Supplies): number =>
  queensInHand > 0 ? 0 : daysUntilQueens <= 3 ? 3 : daysUntilQueens <= 6 ? 5 : daysUntilQueens <= 10 ? 8 : 14

/** Chance that the colony is still there after so many days, as a look ahead reckons it. */
const stays = (frames: number, laying: number, days: number): number =>
  (1 - (STRENGTHS[strengthClass(frames)]?.dies ?? 0) * (1 - 0.75 * laying)) ** days

const layingShare = (shares: Shares): number =>
  shares.states.reduce((sum, n, i) => sum + (STATE[n]?.stage === Q.laying ? (shares.w[i] ?? 0) : 0), 0)

const spared = new WeakMap<Ahead, Ahead>()

/** The same plans but those that give a frame of eggs: none is to be had, or one has failed. */
function withoutFrames(all: Ahead): Ahead {
  const known = spared.get(all)
  if (known !== undefined) return known
  const made = { ...all, vectors: all.vectors.filter((v) => !v.key.split(/[0-9,]/).includes('g')) }
  spared.set(all, made)
  return made
}

export class Room {
  readonly #q: Question
  readonly lead: number
  readonly #now: Shares
  readonly #laying: number
  readonly #shut: number
  /** What a look may show, by days ahead. */
  readonly #shown: (readonly Belief[] | undefined)[] = []

  constructor(q: Question) {
    this.#q = q
    this.lead = leadOf(q.supplies)
    this.#now = q.story.walk.byDay[q.story.t] ?? q.story.walk.start
    this.#shut = seasonOn(q.protocol, q.story.today).shut
    this.#laying = layingShare(this.#now)
  }

  /** Values of plans for a colony of that strength, as they are so many days on. */
  ahead(frames: number, lead = this.lead, inDays = 0): Ahead {
    const { library, costs, story, protocol } = this.#q
    const season = seasonOn(protocol, addDays(story.today, inDays))
    const all = library({ model: story.model, costs, strength: strengthClass(frames), season, lead })
    return this.#q.framesLeft ? all : withoutFrames(all)
  }

  #showsIn(inDays: number): readonly Belief[] | null {
    const { story } = this.#q
    const [shares, day] = [story.walk.byDay[story.t + inDays], story.days[story.t + inDays]]
    if (shares === undefined || day === undefined) return null
    const shown = this.#shown[inDays] ?? outcomesOf(shares, day.around, story.model)
    this.#shown[inDays] = shown
    return shown
  }

  /** A look so many days on, in a colony of that strength. */
  look(inDays: number, frames = this.#q.frames, lead = this.lead): Worth | null {
    const { costs, openToday } = this.#q
    const shown = this.#showsIn(inDays)
    if (shown === null) return null
    const seen = worthOfLook(shown, this.ahead(frames, lead, inDays))
    const alive = stays(frames, this.#laying, inDays)
    const opening = inDays === 0 && openToday ? 0 : costs.opening
    const open = (1 - this.#shut) ** inDays
    return {
      ...seen,
      value: (seen.value - opening) * alive * open - costs.day * inDays,
      keeps: seen.keeps * alive,
    }
  }

  /** A frame of eggs given so many days on, and read five days later. */
  give(inDays: number): Worth | null {
    const { story, costs, frames } = this.#q
    const openToday = this.#q.openToday && inDays === 0
    const t = story.t + inDays
    const begin = story.walk.byDay[t]
    if (begin === undefined) return null
    let shares = begin
    let around = story.days[t]?.around ?? NOTHING_AROUND
    for (let d = 1; d <= READ_AFTER; d++) {
      const night = story.days[t + d]?.overnight ?? { ...around, cagedFor: around.cagedFor + 1 }
      around = { ...night, gift: d, giftWorth: 1 }
      shares = overnight(story.model, shares, around)
    }
    const ahead = this.ahead(frames, this.lead, inDays + READ_AFTER)
    const read = worthOfLook(outcomesOf(shares, around, story.model), ahead)
    const alive = stays(frames, this.#laying, inDays + READ_AFTER)
    const spent = costs.frame + (openToday ? 0 : costs.opening) + costs.day * (inDays + READ_AFTER)
    const open = (1 - this.#shut) ** (inDays + READ_AFTER)
    return { ...read, value: (read.value - costs.opening) * alive * open - spent, keeps: read.keeps * alive }
  }

  /** The same where brood of a donor keeps the proof of her own brood waiting so many days. */
  #provenLater(w: Worth, days: number): Worth {
    return { ...w, value: w.value * (1 - this.#shut) ** days - this.#q.costs.day * days }
  }

  /** The best plan that begins with a bought queen, or with uniting, at once. */
  straight(first: 'g' | 'b' | 'u'): Worth {
    const { story, frames, openToday, costs } = this.#q
    const around = story.days[story.t]?.around ?? NOTHING_AROUND
    const worth = worthOf(compacted(this.#now, around), this.ahead(frames), first)
    return openToday || first === 'u' ? worth : { ...worth, value: worth.value - costs.opening }
  }

  options(): Option[] {
    const q = this.#q
    const out: Option[] = []
    const add = (act: Act, inDays: number, w: Worth | null, spent = 0): void => {
      if (w === null) return
      out.push({ act, inDays, value: w.value - spent, keeps: w.keeps, queenNext: w.next.b ?? 0 })
    }
    const soonest = q.openToday ? LOOK_AGAIN : 0
    for (const d of LOOKS) if (d >= soonest && q.mayOpen(d)) add('look', d, this.look(d))
    const given = (w: Worth | null): Worth | null => (w === null ? null : this.#provenLater(w, FRAME_DELAYS))
    for (const d of GIFTS) if (q.mayGive(d)) add('give', d, given(this.give(d)))
    if (q.mayGive(0)) add('give', 0, given(this.straight('g')))
    if (q.mayBuy) add('queen', 0, this.straight('b'))
    if (q.mayUnite) add('unite', 0, this.straight('u'))
    const more = q.frames + BOOST_FRAMES
    if (strengthClass(more) > strengthClass(q.frames)) {
      const bestLook = out.filter((o) => o.act === 'look').sort((a, b) => b.value - a.value)[0]
      const d = bestLook?.inDays ?? 7
      const w = this.look(d, more)
      const later = q.costs.frame + (q.openToday ? 0 : q.costs.opening)
      add('boost', 0, w === null ? null : this.#provenLater(w, BOOST_DELAYS), later)
    }
    return out
  }

  /**
   * What having a queen at hand by the time of that option is worth more than sending for one then, less what is lost when she
   * is not needed. Positive: order now.
   */
  orderGain(option: Option): number {
    const { costs } = this.#q
    if (this.lead === 0 || option.act === 'unite' || option.act === 'queen') return 0
    if (option.act === 'give') return Number.NEGATIVE_INFINITY
    const inHand = this.look(option.inDays, this.#q.frames, 0)
    if (inHand === null) return Number.NEGATIVE_INFINITY
    return inHand.value - option.value - costs.queen
  }
}
