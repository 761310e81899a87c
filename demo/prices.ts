/** What the invented yard's jobs of past seasons brought: a short sheet each, as an office keeps of what is over. Invented prices. */

import { addDays, type Day } from '../src/days.ts'
import { EMPTY_SHEET, type MoveRecord, type Sheet } from '../src/records/index.ts'
import type { Store } from '../src/store/index.ts'
import { PERPETUA } from './cast.ts'
import { between, chance, type Draw, seeded } from './seeded.ts'

/** From and to, in the yard's currency: the customer's price by kind of job. A swarm is often taken for the way there. */
const PRICES: Record<string, [from: number, to: number]> = {
  wall: [380, 640],
  floor: [420, 700],
  tree: [300, 520],
  'utility-box': [180, 320],
  equipment: [150, 280],
  swarm: [0, 90],
  'trap-out': [450, 700],
  'abandoned-hive': [80, 200],
}
const OTHERS: [from: number, to: number] = [150, 400]
/** Of ten old jobs nine have a price: the books of a yard have gaps. */
const WRITTEN_DOWN = 0.9
const CALLED_BACK = 0.12

const tens = (n: number): number => Math.round(n / 10) * 10

/** Sheets of jobs that are over, for colonies without one, and what the colonies brought. Returns how many sheets. */
export function fillPrices(
  store: Pick<Store, 'removals' | 'after' | 'colonies' | 'colony'>,
  now: string,
): number {
  let sheets = 0
  for (const { id, outcome, closedOn } of store.colonies({ open: false })) {
    const removal = store.colony(id)?.history
    if (removal === undefined || closedOn === null || store.removals.ofColony(id) !== null) continue
    const draw = seeded(`price of ${id}`)
    if (!chance(draw, WRITTEN_DOWN)) continue
    const { removedOn } = removal
    save(store, id, sheetOf(removal.intake.removal.type, removedOn, draw), at(addDays(removedOn, 1), now))
    sheets++
    if (outcome !== 'moved-out' || !chance(draw, WRITTEN_DOWN)) continue
    const price = 10 * between(draw, 14, 22)
    const saved = store.after.records.save(
      id,
      0,
      { price, ...told(closedOn, now, draw) },
      { savedAt: at(closedOn, now), savedBy: PERPETUA },
    )
    if (!saved.ok) throw new Error(`demo, price of ${id}: ${JSON.stringify(saved)}`)
  }
  return sheets
}

/** A season later somebody asked; six of ten answered. */
function told(left: Day, now: string, draw: Draw): Pick<MoveRecord, 'followUps'> {
  const on = addDays(left, between(draw, 88, 118))
  if (on > now.slice(0, 10) || !chance(draw, 0.6)) return {}
  const alive = chance(draw, 0.85)
  return {
    followUps: [
      { on, found: alive ? 'alive' : 'dead', ...(alive ? { queenright: true } : {}), by: 'the new keeper' },
    ],
  }
}

const at = (day: Day, now: string): string => [`${day}T18:30:00.000Z`, now].sort()[0] ?? now

function sheetOf(type: string, on: Day, draw: Draw): Sheet {
  const [from, to] = PRICES[type] ?? OTHERS
  const price = tens(between(draw, from, to))
  const back = type !== 'swarm' && chance(draw, CALLED_BACK)
  return {
    ...EMPTY_SHEET,
    job: { calledOn: addDays(on, -3), plannedOn: on },
    site: { type, where: `${type.replaceAll('-', ' ')}, a job that is over` },
    agreement: { pricing: 'fixed', fixed: price, paid: price, paidOn: on },
    // Seasons ago nobody kept more of it than that it was begun on a “go”.
    work: { on, underGo: { by: PERPETUA, on, at: '07:30' } },
    ...(back
      ? { callBacks: [{ on: addDays(on, 9), what: 'stragglers', by: PERPETUA, doneOn: addDays(on, 10) }] }
      : {}),
  }
}

function save(store: Pick<Store, 'removals'>, id: string, sheet: Sheet, savedAt: string): void {
  const result = store.removals.save(id, 0, sheet, { savedAt, savedBy: PERPETUA })
  if (!result.ok) throw new Error(`demo, sheet of ${id}: ${JSON.stringify(result)}`)
}
