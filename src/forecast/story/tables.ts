/** Tables derived from a set of rates once, so that a night is only look-ups. */
import { EMERGENCE_AFTER_LOSS_HARD, OLDEST_FOR_QUEEN } from '../../biology/index.ts'
import { hazards, logNormalDays } from '../pmf.ts'
import { DURATIONS, FIRST_EGG, type Rates } from '../rates.ts'

export interface Tables {
  /** Chance that a free mated queen lays her first egg on that day free. */
  settles: readonly number[]
  /** Chance that the cage is eaten open on that day caged. */
  candy: readonly number[]
  /** Chance that a virgin of that age lays, turns drone layer, or is lost, given she has not before. */
  virginLays: readonly number[]
  virginDrones: readonly number[]
  virginLost: readonly number[]
  /** [youngest brood's age][days until she leaves her cell]: chance, when a cell is begun on brood no younger. */
  cellDays: readonly (readonly number[])[]
  /** Chance per night that a cell being raised comes to nothing, and on the night in which its queen should leave it. */
  cellFails: number
  cellFailsAtLast: number
  /** Chance that laying workers begin, by days without queen and open brood. */
  workersBegin: readonly number[]
  /** Chance that a queen cell is sealed, by days until she leaves it. */
  sealed: readonly number[]
}

/** Nights a cell is usually raised before she leaves it; spreads the chance of failing evenly over them. */
const NIGHTS_IN_CELL = 11
/** Chance per day that a queen still not laying after the table's end begins. Judgement. */
const SETTLES_LATE = 0.1

/** Competing ends of a virgin's waiting, each as a chance per day by age. */
function virginEnds(rates: Rates): Pick<Tables, 'virginLays' | 'virginDrones' | 'virginLost'> {
  const first = logNormalDays(FIRST_EGG.mean, FIRST_EGG.log, FIRST_EGG.from, FIRST_EGG.to)
  const lostTotal = DURATIONS.virginLost.reduce((a, b) => a + b, 0)
  const { virginLays: lays, virginDroneLayer: drones, virginStays: stays } = rates
  const lost = Math.max(0, 1 - lays - drones - stays)
  const byAge = (share: number, shape: readonly number[], total = 1): number[] =>
    Array.from({ length: FIRST_EGG.to + 1 }, (_, v) => (share * (shape[v] ?? 0)) / total)
  const ends = [byAge(lays, first), byAge(drones, first), byAge(lost, DURATIONS.virginLost, lostTotal)]
  let left = 1
  const out: number[][] = [[], [], []]
  for (let v = 0; v <= FIRST_EGG.to; v++) {
    let gone = 0
    ends.forEach((p, i) => {
      const now = p[v] ?? 0
      out[i]?.push(left > 1e-12 ? now / left : 0)
      gone += now
    })
    left -= gone
  }
  return { virginLays: out[0] ?? [], virginDrones: out[1] ?? [], virginLost: out[2] ?? [] }
}

/** Days until she leaves a cell begun on brood aged `youngest` or more; loss to emergence stays within 10-18 days. */
function cellDays(youngest: number): number[] {
  const out = new Array<number>(19).fill(0)
  let sum = 0
  DURATIONS.brood.forEach((share, age) => {
    if (age < youngest || age > OLDEST_FOR_QUEEN) return
    DURATIONS.emergence.forEach((p, i) => {
      const left = 14 + i - age
      const afterLoss = left + youngest
      if (afterLoss < EMERGENCE_AFTER_LOSS_HARD.earliest || afterLoss > EMERGENCE_AFTER_LOSS_HARD.latest)
        return
      out[left] = (out[left] ?? 0) + share * p
      sum += share * p
    })
  })
  return sum > 0 ? out.map((p) => p / sum) : out
}

function sealedBy(): number[] {
  const out: number[] = []
  for (let left = 0; left <= 18; left++)
    out.push(DURATIONS.sealed.reduce((sum, p, i) => sum + (left <= 5 + i ? p : 0), 0))
  return out
}

/** The tables for those rates. */
export function tablesOf(rates: Rates): Tables {
  return {
    settles: [...hazards(DURATIONS.settling), SETTLES_LATE],
    candy: DURATIONS.candy,
    ...virginEnds(rates),
    cellDays: Array.from({ length: OLDEST_FOR_QUEEN + 1 }, (_, youngest) => cellDays(youngest)),
    cellFails: 1 - rates.cellEmerges ** ((1 - rates.cellFailsLate) / NIGHTS_IN_CELL),
    cellFailsAtLast: 1 - rates.cellEmerges ** rates.cellFailsLate,
    workersBegin: DURATIONS.layingWorkers,
    sealed: sealedBy(),
  }
}
