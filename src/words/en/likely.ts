/** What is likely of a colony, in English: the odds of a queen, when a look tells most, the strength to come, moving out. */
import type { EvidenceWeight, Kind } from '../../forecast/index.ts'

/** What a sighting bears on: said if it is so, and if it is not. */
const questions: Record<EvidenceWeight['holds'], { yes: string; no: string }> = {
  lays: { yes: 'a queen lays', no: 'no queen lays' },
  here: { yes: 'a queen is here', no: 'there is none' },
  raising: { yes: 'they are raising a queen', no: 'they are not raising one' },
  emerged: { yes: 'a virgin is loose', no: 'there is no virgin' },
  workers: { yes: 'workers lay, or a drone layer', no: 'neither workers nor a drone layer lay' },
  gone: { yes: 'she is gone', no: 'a queen is here or being raised' },
}

const seen: Record<EvidenceWeight['what'], Record<string, string>> = {
  eggs: { none: 'no eggs', single: 'single eggs', multiple: 'several eggs in a cell' },
  open: { none: 'no open brood', some: 'open brood', plenty: 'plenty of open brood' },
  capped: {
    none: 'no capped brood',
    worker: 'capped worker brood',
    'drone-in-worker': 'raised drone caps in worker cells',
  },
  queen: { seen: 'the queen seen', unseen: 'no queen seen' },
  cells: {
    none: 'no queen cells',
    cups: 'only cups',
    open: 'open queen cells',
    capped: 'capped queen cells',
    emerged: 'an emerged queen cell',
    'torn-down': 'queen cells torn down',
  },
  roar: { heard: 'the queenless roar', 'not heard': 'no queenless roar' },
}

const kinds: Record<Kind, string> = {
  laying: 'a laying queen',
  present: 'a mated queen, not laying yet',
  raising: 'a queen being raised',
  virgin: 'a virgin',
  chance: 'queenless, with brood to raise one from',
  queenless: 'queenless, with nothing to raise one from',
  'laying-workers': 'laying workers or a drone layer',
}

/** Names short enough to stand in a chart. */
const short: Record<Kind, string> = {
  laying: 'laying queen',
  present: 'mated, not laying',
  raising: 'being raised',
  virgin: 'virgin',
  chance: 'queenless, a chance',
  queenless: 'queenless',
  'laying-workers': 'laying workers',
}

const under = (minimum: number): string => `${minimum} ${minimum === 1 ? 'frame' : 'frames'}`

export const likely = {
  title: 'What is likely',
  goWithPlan: 'Odds go with the plan above; they never overrule it.',
  restOn: 'What the odds rest on',
  andTrust: ', and how far they can be trusted.',
  kinds,
  short,
  questions,
  seen,
  day: 'Day',
  today: 'today',
  chance: {
    under: 'under 1 %',
    over: 'over 99 %',
    almostCertain: 'almost certain',
    nextToNone: 'next to none',
    of: (n: number, all: number) => `${n} in ${all}`,
  },
  /** `n` whole, but for a factor under 1.75. */
  times: (n: number, rough: 'over' | 'about' | null) =>
    rough !== null ? `${rough} ${n} times` : n === 2 ? 'twice' : `${n < 2 ? n.toFixed(1) : n} times`,
  odds: {
    is: (kind: string, share: string) => `${kind}: ${share}.`,
    otherwise: (others: string[]) => `Otherwise ${others.join(' or ')}.`,
    nothingSeen: 'Nothing was seen inside yet: these odds rest on the intake alone.',
    speaks: 'What speaks for it',
    all: 'All that was seen, weighed',
    onDay: (what: string, day: number) => `${what} on day ${day}`,
    nextToNothing: (what: string) => `${what}: says next to nothing`,
    likelier: (what: string, times: string, holds: string) => `${what}: ${times} likelier if ${holds}`,
    chart: (sentence: string) =>
      `Odds by day, from the removal on. ${sentence} The table below holds the days.`,
    caption:
      'The share of today beside each. Days past are as they look now, with all that was seen since; days to come are a forecast, if nothing is done.',
    numbers: 'The odds in numbers',
    byDay: 'Odds by day',
    ratesBefore:
      'All stories of the queen that fit what was seen, weighed exactly. Rates, their sources and how far they can be trusted: ',
    rates: 'what the odds rest on',
  },
  telling: {
    title: 'When a look tells most',
    costs: 'A look this week may cost a virgin more than it tells: leave the lid on.',
    little: 'A look this week would tell little that is not known.',
    most: (day: string) => `A look on ${day} tells most.`,
    otherLittle: (day: string, other: string) => `A look on ${day} tells most; ${other} tells little.`,
    hardlyMore: (day: string, other: string) =>
      `A look on ${day} tells most, though hardly more than ${other}.`,
    mostBy: (day: string, times: string, other: string) =>
      `A look on ${day} tells most: ${times} what ${other} does.`,
    acts: (action: string) => `The plan says what to do: ${action}. No look tells enough to wait for.`,
    quiet: (day: string) => `Quiet time: the lid stays on until ${day}, whatever a look would tell.`,
    asksNothing: 'The plan asks nothing about the queen in the coming days.',
    lookNow: (look: string) => `The plan says to look now (${look}): no later day is worth waiting for.`,
    cageFirst: (look: string, days: string) => `The plan asks to ${look} ${days}: that comes first.`,
    next: (look: string, days: string) => `The next look for the queen is planned ${days}: ${look}.`,
    leaves: (look: string, days: string) => `The plan leaves ${days} to choose (${look}).`,
    noBetter: 'For the queen’s sake no day of it is better than another.',
    chart: (sentence: string) => `What a look on each coming day is expected to tell. ${sentence}`,
    numbers: 'Each day in numbers',
    table: 'What each day tells',
    tells: 'Tells',
    risks: 'Risks',
    worth: 'Worth',
    bits: 'In bits: one bit halves the doubt between two things equally likely (Shannon 1948; Lindley 1956), here the doubt about what to do next. Risks: what opening may cost while a virgin is about to fly, one bit if she surely is (judgement). The dashed line is what a look tells, the area what it is worth.',
  },
  strength: {
    title: 'Strength to come',
    now: (n: string, low: string, high: string) => `About ${n} frames of bees today (${low} to ${high}).`,
    under: (minimum: number, day: string) => `Chance of falling under ${under(minimum)} before ${day}:`,
    assumed:
      'Nobody wrote down how many bees came: five frames are assumed, give or take half. Count frames of bees at the next look.',
    dwindles: (day: string) => `As things stand it dwindles to nothing by about ${day}.`,
    lowestOn: (day: string, n: string) => `Lowest on ${day}, about ${n}.`,
    lowestNow: 'It is at its lowest now.',
    lowestPast: (day: string, n: string) => `Its lowest point is past (${day}, about ${n}).`,
    chart: (sentence: string) =>
      `Frames of bees by day, median and the band that holds eight times in ten. ${sentence}`,
    minimum: (n: number) => `minimum ${n}`,
    lowest: (n: string) => `lowest ${n}`,
    caption: (counted: boolean, given: string) =>
      `Frames of bees: the line is as likely too high as too low, the band holds eight times in ten${counted ? ', dots are counts at visits' : ''}. Dashed: with a frame of capped brood given on ${given}.`,
    /** A frame of capped brood; `day` null: today. */
    noLift: (day: string | null, lowest: string) =>
      `Given ${day === null ? 'today' : `on ${day}`}, one frame of capped brood would not lift the lowest point of ${lowest} frames of bees.`,
    lifts: (
      day: string | null,
      p: { from: string; to: string; minimum: number; chance: string; chanceThen: string },
    ) =>
      `Given ${day === null ? 'today' : `on ${day}`}: one frame of capped brood lifts the lowest point from ${p.from} to ${p.to} frames of bees; the chance of falling under ${p.minimum} goes from ${p.chance} to ${p.chanceThen}.`,
    givenWhen: 'A frame of capped brood given',
    inDays: (n: number) => (n === 0 ? 'today' : `in ${n} days`),
    numbers: 'Strength in numbers',
    byDay: 'Frames of bees by day',
    bees: 'Frames of bees',
    eightInTen: 'Eight times in ten',
    brood: 'Brood laid here, frames',
    underN: (n: number) => `Under ${n}`,
    withFrame: 'With the frame',
    range: (low: string, high: string) => `${low} to ${high}`,
    sources:
      'Bees are counted by the day they emerge and die by season; a queen lays as the odds say; bees can care for about two cells of open brood each. Brood survival 94, 92 and 98 % by stage (Fukuda & Sakagami 1968); about 2,300 bees a frame. Counts at visits draw the forecast to themselves.',
  },
  moveOut: {
    title: 'Moving out',
    wereItKept: 'The plan says to unite it. Were it kept: ',
    blocked: (why: string) => `No move-out day can be named: ${why}.`,
    never: 'As things stand it will not get ready to move out.',
    on: (day: string) => `on ${day}`,
    about: (day: string, from: string, to: string) =>
      `about ${day} (eight times in ten between ${from} and ${to})`,
    ready: (when: string) => `It can be ready to move out ${when}.`,
    readyIf: (when: string, n: number) =>
      `It can be ready to move out ${when}, if it gets there: ${n} in 100.`,
    byDate: 'The chance by date',
    readyBy: 'Ready by',
    chance: 'Chance',
    from: 'From the odds of laying, capped worker brood ten days after her first egg, the strength to come, and what else the protocol asks. Rules for moving bees are local.',
  },
}
