/** Colonies of these weeks: told is what a story teaches; how it came and went on besides is drawn as for past seasons. */
import { yardOf } from '../cast.ts'
import { arrivingOf, type Job, jobOf } from '../seasons/job.ts'
import { courseOf, type Path } from '../seasons/paths.ts'
import { between, type Draw, seeded } from '../seeded.ts'
import { type Arriving, Story } from '../story.ts'

interface Said extends Partial<Omit<Arriving, 'daysAgo' | 'removal' | 'queen' | 'brood'>> {
  queen: Job['queen']
  brood?: Job['brood']
  /** Frames of bees that came, in quarters. */
  frames?: number
  outdoorC?: number
  sprayed?: 'yes'
}

/** These weeks move with today, and their weather must not: it is always that of an early summer. */
const EARLY_SUMMER = '2026-06-10'
export const NO_BROOD = { eggs: 0, open: 0, capped: 0 } as const

class Arrived extends Story {
  readonly #draw: Draw
  readonly #job: Job

  constructor(draw: Draw, job: Job, arriving: Arriving) {
    super(job.tag, arriving)
    this.#draw = draw
    this.#job = job
  }

  /** The visits of a colony that goes this way, up to that day; `donor` gives the frame of eggs, where one is needed. */
  goes(path: Path, until: number, donor = 'M-01'): this {
    for (const step of courseOf(this.#draw, path, this.#job, donor).steps)
      if (step.day <= until) step.tell(this, step.day)
    return this
  }
}

/** A colony that came `daysAgo`, of that type of removal, from that place, to the stand of its number. */
export function came(tag: string, daysAgo: number, type: string, site: string, said: Said): Arrived {
  const draw = seeded(`live ${tag}`)
  const { frames, outdoorC, sprayed = 'no', ...rest } = said
  const drawn = jobOf(draw, tag, EARLY_SUMMER, type, sprayed)
  const job: Job = {
    ...drawn,
    queen: said.queen,
    brood: said.brood ?? drawn.brood,
    broodCare: 'closed-chest',
    frames: frames ?? drawn.frames,
    outdoorC: outdoorC ?? drawn.outdoorC,
    yard: yardOf(tag),
    stand: String(Number(tag.slice(2))),
  }
  const { on: _, removal, ...arriving } = arrivingOf(job)
  return new Arrived(draw, job, {
    ...arriving,
    at: `${between(draw, 11, 20)}:${between(draw, 1, 5)}0`,
    temper: between(draw, 1, 3),
    ...rest,
    daysAgo,
    removal: { ...removal, site },
  })
}
