/** A past season: some fifty removals and what became of them. The same on every run. */
import { addDays, type Day, dayNumber } from '../../src/days.ts'
import { MARL, TANNERY } from '../cast.ts'
import { between, chance, type Draw, pick, seeded } from '../seeded.ts'
import { colony, type Story } from '../story.ts'
import { arrivingOf, chanceOfLoss, type Job, jobOn } from './job.ts'
import { courseOf, type Path, pathOf } from './paths.ts'

const JOBS_A_SEASON = 50
/** Removals run from 10 April to mid September. */
const FIRST_JOB = '04-10'
const LAST_JOB = '09-15'
/** Fewer frames of bees than this, and a colony with a strong neighbour may be united. */
const WEAK_FRAMES = 6

/** A colony while it stood in the yard. */
interface Stay {
  tag: string
  yard: string
  stand: string
  from: Day
  until: Day
  path: Path
}

/** The season of a calendar year. `season` counts back from now and is all that chance depends on. */
export function seasonOf(year: number, season: number): Story[] {
  const stays: Stay[] = []
  return jobDays(year, season).map((on, i) => {
    const draw = seeded(`season ${season} job ${i}`)
    const tag = `${String(year).slice(2)}-${String(i + 1).padStart(3, '0')}`
    const job = jobOn(draw, tag, on)
    job.stand = freeStand(job.yard, on, stays)
    const { story, stay } = tellJob(draw, job, stays)
    stays.push(stay)
    return story
  })
}

/** The days of the season's removals, in order. */
function jobDays(year: number, season: number): Day[] {
  const draw = seeded(`season ${season} days`)
  const first = `${year}-${FIRST_JOB}`
  const length = dayNumber(`${year}-${LAST_JOB}`) - dayNumber(first)
  return Array.from({ length: JOBS_A_SEASON }, () => addDays(first, between(draw, 0, length))).sort()
}

const standsThere = (stay: Stay, yard: string, on: Day): boolean =>
  stay.yard === yard && stay.from <= on && on < stay.until

function freeStand(yard: string, on: Day, stays: readonly Stay[]): string {
  const taken = new Set(stays.filter((s) => standsThere(s, yard, on)).map((s) => s.stand))
  for (let n = 1; ; n++) if (!taken.has(String(n))) return String(n)
}

/** A colony laying since long enough to spare a frame of eggs on that day, or none. */
const donorOn = (on: Day, stays: readonly Stay[]): string | undefined =>
  stays.find((s) => s.path === 'own-queen' && addDays(s.from, 12) <= on && on < s.until)?.tag

function tellJob(draw: Draw, job: Job, stays: readonly Stay[]): { story: Story; stay: Stay } {
  const path = pathOf(draw, job)
  const course = courseOf(draw, path, job, donorOn(addDays(job.on, 6), stays))
  const lost = chance(draw, chanceOfLoss(job))
  const end = lost ? howLost(draw, job) : howLeft(draw, job, course.provedOn, stays)
  const story = colony(job.tag, arrivingOf(job))
  for (const step of course.steps) if (step.day < end.day) step.tell(story, step.day)
  story.ends(end.day, end.what, end.more)
  const { tag, yard, stand } = job
  return { story, stay: { tag, yard, stand, from: job.on, until: addDays(job.on, end.day), path } }
}

interface End {
  day: number
  what: Parameters<Story['ends']>[1]
  more?: Parameters<Story['ends']>[2]
}

/** Leaving happens in the first week, most of all in the heat; dying takes longer. */
function howLost(draw: Draw, job: Job): End {
  const restless = job.type === 'swarm' || job.outdoorC > 30 ? 0.5 : 0.2
  if (chance(draw, restless)) return { day: between(draw, 1, 7), what: 'absconded' }
  const cause = pick(draw, [
    ['Dwindled, no queen to the end', 5],
    ['Never recovered from the removal', job.outdoorC > 29 ? 5 : 1],
    ['Robbed out', 2],
    ['Beetles slimed the comb', 2],
    ['Poisoned before we came', job.sprayed === 'yes' ? 10 : 0],
  ])
  return { day: between(draw, 8, 52), what: 'died', more: { cause } }
}

const DESTINATIONS = [
  'Home apiary, Sallow Bank',
  'Sold to a beginner, Heronsby',
  'Orchard stand, Larkbarrow',
] as const

function howLeft(draw: Draw, job: Job, provedOn: number, stays: readonly Stay[]): End {
  if (job.frames < WEAK_FRAMES && chance(draw, 0.6)) {
    const day = between(draw, 17, 29)
    const on = addDays(job.on, day)
    const strong = stays.find((s) => standsThere(s, job.yard, on) && s.path === 'own-queen')
    if (strong !== undefined) return { day, what: 'united', more: { into: strong.tag } }
  }
  if (chance(draw, 0.03))
    return { day: between(draw, 5, 30), what: 'other', more: { note: 'Given back to its owner.' } }
  const destination = pick(draw, [
    [DESTINATIONS[0], 4],
    [DESTINATIONS[1], 3],
    [DESTINATIONS[2], 2],
    [`Back to ${job.yard === MARL ? TANNERY : MARL} for good`, 1],
  ])
  return { day: provedOn + between(draw, 1, 12), what: 'moved-out', more: { destination } }
}
