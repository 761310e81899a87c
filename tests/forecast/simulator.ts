/**
 * Simulates rescued colonies by drawing how long each thing takes, one colony at a time: the same story as the odds count
 * over, told the other way round (they step through nights with chances per night; here whole durations are drawn).
 */
import { addDays, type Day } from '../../src/days.ts'
import { logNormalDays } from '../../src/forecast/pmf.ts'
import { DURATIONS, FIRST_EGG, type Rates } from '../../src/forecast/rates.ts'
import { type Around, NOTHING_AROUND } from '../../src/forecast/story/around.ts'
import { inHaste } from '../../src/forecast/story/haste.ts'
import { KINDS, type Kind, kindOf } from '../../src/forecast/story/kinds.ts'
import {
  broodSeen,
  CELL_ANSWERS,
  cappedChances,
  cellChances,
  eggsChances,
  queenSeen,
} from '../../src/forecast/story/look.ts'
import { LAYER_CAN_FAIL_FROM } from '../../src/forecast/story/night.ts'
import { aliveChance, oldBrood } from '../../src/forecast/story/start.ts'
import { LAST_AGE, NO_OLD, Q, type Stage, type State } from '../../src/forecast/story/state.ts'
import { type Tables, tablesOf } from '../../src/forecast/story/tables.ts'
import type { Entry, Inspection, Intake } from '../../src/journal/entry.ts'
import { draw, type Random } from './random.ts'

export const START: Day = '2026-05-01'
const FIRST_EGG_AGES = logNormalDays(FIRST_EGG.mean, FIRST_EGG.log, FIRST_EGG.from, FIRST_EGG.to)

/** Nights until an event that has the same chance every night; at least 1. */
const geometric = (random: Random, p: number): number =>
  p <= 0 ? Number.POSITIVE_INFINITY : 1 + Math.floor(Math.log(1 - random()) / Math.log(1 - p))

/** A simulated colony: its true state by day, and what people did and saw. */
export class Colony {
  t = 0
  stage: Stage = Q.none
  /** Day on which the stage began, or (raising) on which she leaves her cell. */
  mark = 0
  /** What comes next and when, drawn when the stage begins. */
  next: { on: number; stage: Stage } = { on: Number.POSITIVE_INFINITY, stage: Q.none }
  lastOldEgg: number
  caged: boolean
  cagedOn = 0
  cage: Around['cage'] = null
  giftOn = -1
  without = 0
  entries: Entry[] = []
  truth: Kind[] = []
  private seq = 0
  readonly intake: Intake
  readonly tables: Tables

  constructor(
    readonly random: Random,
    readonly rates: Rates,
    intake: Omit<Intake, 'id' | 'kind' | 'colony' | 'on'>,
    readonly tag = 'S-1',
  ) {
    this.tables = tablesOf(rates)
    this.intake = { id: this.id(), kind: 'intake', colony: tag, on: START, ...intake }
    this.entries.push(this.intake)
    const brood = oldBrood(this.intake, rates)
    this.lastOldEgg = -(
      brood[
        draw(
          random,
          brood.map(([, w]) => w),
        )
      ]?.[0] ?? NO_OLD
    )
    const alive = random() < aliveChance(this.intake, rates)
    this.caged = alive && intake.queen === 'caged'
    if (this.caged) this.cage = 'own'
    if (alive && !this.caged) this.enter(Q.settling)
    this.record()
  }

  private id(): string {
    this.seq++
    return `00000000-0000-7000-8000-${String(this.seq).padStart(12, '0')}`
  }

  private enter(stage: Stage): void {
    const { random, rates, t } = this
    this.stage = stage
    this.mark = t
    this.without = 0
    this.next = { on: Number.POSITIVE_INFINITY, stage: Q.none }
    if (stage === Q.settling) {
      let lays = draw(random, DURATIONS.settling)
      if (lays >= DURATIONS.settling.length) lays = DURATIONS.settling.length - 1 + geometric(random, 0.1)
      const dies = geometric(random, rates.settlingDies)
      this.next = lays <= dies ? { on: t + lays, stage: Q.laying } : { on: t + dies, stage: Q.none }
    } else if (stage === Q.laying) {
      const on = t + LAYER_CAN_FAIL_FROM + geometric(random, rates.layerFails)
      this.next = { on, stage: random() < rates.layerTurnsDrones ? Q.drones : Q.none }
    } else if (stage === Q.drones) {
      this.next = { on: t + geometric(random, rates.droneLayerGoes), stage: Q.none }
    } else if (stage === Q.virgin) this.drawVirgin()
  }

  private drawVirgin(): void {
    const { random, rates, t } = this
    const { virginLays, virginDroneLayer, virginStays } = rates
    const fate = draw(random, [virginLays, virginDroneLayer, virginStays])
    if (fate <= 1)
      this.next = { on: t + draw(random, FIRST_EGG_AGES), stage: fate === 0 ? Q.laying : Q.drones }
    else if (fate === 2) {
      const [goes, drones] = [geometric(random, rates.dudGoes), geometric(random, rates.dudDrones)]
      this.next = { on: t + 28 + Math.min(goes, drones), stage: goes <= drones ? Q.none : Q.drones }
    } else {
      const sum = DURATIONS.virginLost.reduce((a, b) => a + b, 0)
      this.next = {
        on:
          t +
          draw(
            random,
            DURATIONS.virginLost.map((x) => x / sum),
          ),
        stage: Q.none,
      }
    }
  }

  private beginCell(youngest: number): void {
    let days: number
    do {
      const age = draw(this.random, DURATIONS.brood)
      days = age < youngest ? -1 : 14 + draw(this.random, DURATIONS.emergence) - age
    } while (days < 0 || days + youngest < 10 || days + youngest > 18)
    this.raise(days)
  }

  private raise(days: number): void {
    this.enter(Q.raising)
    this.mark = this.t + days
    const fails = geometric(this.random, this.tables.cellFails)
    const dies = this.random() < this.tables.cellFailsAtLast
    this.next =
      fails < days
        ? { on: this.t + fails, stage: Q.none }
        : { on: this.t + days, stage: dies ? Q.none : Q.virgin }
  }

  around(): Around {
    const gift = this.giftOn < 0 || this.t - this.giftOn > 22 ? -1 : this.t - this.giftOn
    return {
      ...NOTHING_AROUND,
      gift,
      giftWorth: gift < 0 ? 0 : 1,
      cage: this.cage,
      cagedFor: this.cage === null ? 0 : this.t - this.cagedOn,
    }
  }

  state(): State {
    const age =
      this.stage === Q.raising
        ? this.mark - this.t
        : this.stage === Q.none
          ? this.without
          : this.t - this.mark
    return {
      stage: this.stage,
      age: Math.min(age, LAST_AGE[this.stage] ?? 0),
      old: Math.min(NO_OLD, this.t - this.lastOldEgg),
      caged: this.caged,
    }
  }

  /** One night. */
  night(): void {
    this.t++
    const { random } = this
    const around = this.around()
    const out = this.caged && random() < (DURATIONS.candy[Math.min(around.cagedFor, 5)] ?? 0)
    if (!(out && this.release())) this.residentNight(around)
    this.record()
  }

  private residentNight(around: Around): void {
    if (this.stage === Q.none) this.orphanNight(around)
    else if (this.stage === Q.workers) {
      const turns = around.gift >= 1 && around.gift <= 9 && this.random() < this.rates.framesTurnWorkers
      if (turns) this.enter(Q.none)
    } else if (this.t === this.next.on) {
      const { stage, mark } = this
      if (stage === Q.laying) this.lastOldEgg = this.t
      this.enter(this.next.stage)
      // Without open brood since it was capped; a virgin counts half.
      const asVirgin = stage === Q.virgin ? Math.round(Math.min(LAST_AGE[Q.virgin], this.t - mark) / 2) : 0
      if (this.state().stage === Q.none && (stage === Q.raising || stage === Q.virgin))
        this.without = Math.max(0, Math.min(NO_OLD, this.t - this.lastOldEgg) - 9 - asVirgin)
    }
  }

  private orphanNight(around: Around): void {
    const { random, rates, t } = this
    const held = this.caged ? rates.cagedHoldsCells : 1
    const old = t - this.lastOldEgg
    const ownBegins = old <= 6 && random() < rates.cellStartPerDay * held
    const giftBegins = around.gift >= 1 && around.gift <= 6 && random() < rates.cellStartPerDay * held
    if (ownBegins || giftBegins) {
      const fromOwn = ownBegins && (!giftBegins || random() < 0.5)
      this.beginCell(fromOwn ? old : around.gift)
    } else if (random() < rates.strayArrives) this.enter(Q.settling)
    else {
      const open = old <= 9 || (around.gift >= 0 && around.gift <= 9)
      this.without = open || this.caged ? 0 : Math.min(24, this.without + 1)
      const table = DURATIONS.layingWorkers
      const begins = table[Math.min(this.without, table.length - 1)] ?? 0
      if (!this.caged && random() < begins) this.enter(Q.workers)
    }
  }

  private release(): boolean {
    const { rates, stage, cage } = this
    this.caged = false
    const p =
      cage === 'own'
        ? stage === Q.none
          ? rates.ownTakesBack
          : stage === Q.raising
            ? 0.6
            : rates.boughtTakesOverQueen
        : stage === Q.none
          ? rates.boughtTakes
          : stage === Q.raising
            ? rates.boughtTakesWithCells
            : stage === Q.virgin
              ? rates.boughtTakesOverVirgin
              : stage === Q.workers || stage === Q.drones
                ? rates.boughtTakesLayingWorkers
                : rates.boughtTakesOverQueen
    if (this.random() >= p) return false
    this.enter(Q.settling)
    return true
  }

  private record(): void {
    this.truth[this.t] = KINDS[kindOf(this.state(), this.around())] ?? 'queenless'
  }

  private get on(): Day {
    return addDays(START, this.t)
  }

  private base() {
    return { id: this.id(), colony: this.tag, on: this.on, by: 'sim' }
  }

  /** Opens the box and writes down what is seen; each thing is looked at with that chance. */
  look(care = 0.9): Inspection {
    const { random } = this
    // Haste misses everything of a look alike; it is not said.
    const rates = random() < this.rates.careless ? inHaste(this.rates) : this.rates
    const s = this.state()
    const b = broodSeen(s, this.around(), rates)
    const does = (): boolean => random() < care
    const wrong = (): boolean => random() < rates.misread
    const pick = <T extends string>(answers: readonly T[], chances: readonly number[]): T =>
      answers[wrong() ? Math.floor(random() * answers.length) : draw(random, chances)] ?? (answers[0] as T)
    const look: Inspection = { ...this.base(), kind: 'inspection', opened: true }
    if (does()) look.eggs = pick(['none', 'single', 'multiple'] as const, eggsChances(s, b, rates))
    if (does()) look.open = pick(['none', 'some'] as const, [1 - b.open, b.open])
    if (does()) look.capped = pick(['none', 'worker', 'drone-in-worker'] as const, cappedChances(b, rates))
    if (does()) {
      const seen = queenSeen(s, rates)
      look.queen = pick(['unseen', 'seen'] as const, [1 - seen, seen])
    }
    if (does()) look.cells = pick(CELL_ANSWERS, cellChances(s, rates, this.tables))
    this.entries.push(look)
    return look
  }

  giveEggs(): void {
    this.entries.push({ ...this.base(), kind: 'given', what: 'egg-frame', frames: 1 })
    this.giftOn = this.t
    this.record()
  }

  giveQueen(): void {
    this.entries.push({ ...this.base(), kind: 'given', what: 'mated-queen', caged: true })
    Object.assign(this, { cage: 'bought', cagedOn: this.t, caged: true })
    this.record()
  }

  openCage(): void {
    this.entries.push({ ...this.base(), kind: 'queen-cage', found: 'released' })
    if (this.caged) this.release()
    this.record()
  }
}

const pickOf = <T>(random: Random, list: readonly T[]): T => list[Math.floor(random() * list.length)] as T

/** An intake as it comes: most queens unseen, some brood saved. */
export function someIntake(random: Random): Omit<Intake, 'id' | 'kind' | 'colony' | 'on'> {
  const queen = pickOf(random, ['unseen', 'unseen', 'unseen', 'unseen', 'caged', 'loose', 'lost'] as const)
  const some = random() < 0.75
  return {
    removal: {
      type: 'wall',
      ...(random() < 0.7 ? { method: pickOf(random, ['vacuum', 'brushed', 'walked-in'] as const) } : {}),
    },
    by: 'sim',
    yard: 'Simulated',
    queen,
    brood: some ? { eggs: 0.5, open: 1, capped: 1 } : { eggs: 0, open: 0, capped: 0 },
    broodCare: pickOf(random, ['closed-chest', 'open-air'] as const),
  }
}

/** Plays a colony to `last`, visited and helped the way a yard does; stops at a random day if told. */
export function playOut(colony: Colony, last: number): Colony {
  const { random } = colony
  let visit = 4 + Math.floor(random() * 4)
  let sureEggs = -1
  while (colony.t < last) {
    colony.night()
    const caged = colony.cage !== null && colony.caged
    if (colony.cage !== null && colony.t - colony.cagedOn === 4 && (caged || random() < 0.5))
      colony.openCage()
    if (colony.t !== visit) continue
    const look = colony.look()
    visit += 4 + Math.floor(random() * 6)
    if (look.eggs === 'single') sureEggs = colony.t
    const neither = look.eggs === 'none' && (look.cells === 'none' || look.cells === 'cups')
    if (!neither || sureEggs >= 0 || colony.t < 5) continue
    if (colony.giftOn < 0 && random() < 0.8) colony.giveEggs()
    else if (colony.t - colony.giftOn > 8 && colony.cage === null) colony.giveQueen()
  }
  return colony
}
