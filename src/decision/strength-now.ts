/** Frames of bees a colony may count on, quickly: the last count, grown old since, and the brood that came along or was given. */
import { BEES_PER_FRAME } from '../biology/index.ts'
import { type Day, daysBetween } from '../days.ts'
import {
  ASSUMED_FRAMES,
  emergingByDay,
  framesAtIntake,
  type Hemisphere,
  LIFE,
  meanLife,
  mixedLeft,
  type Rates,
} from '../forecast/index.ts'
import type { History } from '../journal/index.ts'

/** Brood that emerges within so many days is as good as bees. */
const SOON = 12
/** Counts by eye are off by a fifth, so a later one is believed this far against what was reckoned. Judgement. */
const COUNT_BELIEVED = 0.8

/** Frames of bees on a day, with those about to emerge. `laidFor`: days a queen has been laying, 0 where none does. */
export function framesNow(
  history: History,
  today: Day,
  rates: Rates,
  laidFor = 0,
  hemisphere: Hemisphere = 'north',
): number {
  const { intake } = history
  const t = Math.max(0, daysBetween(intake.on, today))
  const emerging = emergingByDay(history, rates, t + SOON)
  const ages = 1 / (meanLife(today, hemisphere) / (laidFor > 3 ? 1 : LIFE.broodlessAgeing))
  let [frames, since] = [framesAtIntake(history) ?? ASSUMED_FRAMES, 0]
  const upTo = (day: number): number => {
    let bees = frames * mixedLeft((day - since) * ages)
    for (let d = since; d < day; d++) bees += (emerging[d] ?? 0) / BEES_PER_FRAME
    return bees
  }
  for (const e of history.entries) {
    if (e.kind !== 'inspection' || e.framesOfBees === undefined || e.on > today) continue
    const day = daysBetween(intake.on, e.on)
    if (day < 0) continue
    const reckoned = upTo(day)
    frames = COUNT_BELIEVED * e.framesOfBees + (1 - COUNT_BELIEVED) * reckoned
    since = day
  }
  let bees = upTo(t)
  for (let d = Math.max(t, since); d <= t + SOON; d++) bees += (emerging[d] ?? 0) / BEES_PER_FRAME
  // Her own brood emerges three weeks after her first egg: as much as the bees can care for.
  const own = Math.max(0, Math.min(laidFor - 9, 21))
  return bees + (own * Math.min(LIFE.eggsPerDay, 0.6 * bees * BEES_PER_FRAME * 0.2)) / BEES_PER_FRAME
}

/** A frame of capped brood is worth so many frames of bees: 7,000 cells, 0.7 of them full. */
export const BOOST_FRAMES = 2
/** Capped cells of a donor are there for twelve days, so that worker caps prove her own queen about so many days later. */
export const BOOST_DELAYS = 10
