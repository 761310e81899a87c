/** An entry of the journal in words. */
import { type Entry, never } from '../journal/index.ts'
import { type Words, wordsIn } from './catalogue.ts'
import { type Choice, labelIn, removalTypes } from './choices.ts'
import { distance, framesWords, plain, quarters, temperature, type Units, volume, weight } from './units.ts'

export interface EntryWords {
  title: string
  /** What was noted, each a short phrase. */
  facts: string[]
  note: string | null
}

/** What an entry says. `site` (where the bees came from) is left out unless asked for: it is private. */
export function entryWords(
  e: Entry,
  units: Units,
  today: string,
  withSite = false,
  w: Words = wordsIn('en'),
): EntryWords {
  const note = 'note' in e ? (e.note ?? null) : null
  const { choices: c, entries: t } = w
  switch (e.kind) {
    case 'intake':
      return { title: t.intake, facts: intakeFacts(e, units, today, withSite, w), note }
    case 'inspection':
      return { title: lookTitle(e, w), facts: inspectionFacts(e, w), note }
    case 'given':
      return { title: t.given(labelIn(c.GIFT, e.what)), facts: givenFacts(e, units, w), note }
    case 'queen-cage':
      return { title: t.cage(lower(labelIn(c.CAGE, e.found))), facts: [], note }
    case 'ties-removed':
      return { title: t.tiesOff, facts: [], note }
    case 'mite-wash': {
      const per100 = plain((e.mites / e.bees) * 100, 1)
      return { title: t.wash, facts: [t.mitesOn(e.mites, e.bees), t.per100(per100)], note }
    }
    case 'disease-cleared':
      return {
        title: t.cleared(lower(labelIn(c.CLEARED, e.clearedBy))),
        facts: said([[t.report, e.reference]]),
        note,
      }
    case 'move':
      return {
        title: t.moved,
        facts: [
          t.at(e.yard, e.stand),
          ...(e.distanceKm === undefined ? [] : [t.away(distance(e.distanceKm, units, w))]),
        ],
        note,
      }
    case 'outcome':
      return {
        title: labelIn(c.OUTCOME, e.what),
        facts: said([
          [t.into, e.into],
          [t.cause, c.CAUSE.some((x) => x.value === e.cause) ? word(c.CAUSE, e.cause) : e.cause],
          [t.to, e.destination],
        ]),
        note,
      }
    case 'note':
      return {
        title: e.asks === undefined ? t.note : labelIn(c.NOTE_FOR, e.asks),
        facts: said([[t.decides, word(c.SETTLES, e.settles)]]),
        note: e.text,
      }
    case 'missed-visit':
      return {
        title: t.notReached,
        facts: said([
          ['', word(c.MISSED, e.reason)],
          [t.again, e.again === undefined ? undefined : w.dates.day(e.again, today)],
        ]),
        note,
      }
    case 'withdrawal':
      return { title: t.tookBack, facts: [], note: e.reason }
    default:
      return never(e)
  }
}

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

const said = (pairs: [string, string | undefined][]): string[] =>
  pairs.flatMap(([label, value]) => (value === undefined ? [] : [label === '' ? value : `${label} ${value}`]))

/** Where it is so. */
const when = (so: boolean | undefined, words: string): [string, string | undefined] => [
  '',
  so === true ? words : undefined,
]

const word = (choices: Choice[], value: string | undefined): string | undefined =>
  value === undefined ? undefined : lower(labelIn(choices, value))

type Of<K extends Entry['kind']> = Extract<Entry, { kind: K }>

function intakeFacts(e: Of<'intake'>, units: Units, today: string, withSite: boolean, w: Words): string[] {
  const { removal: r, brood: b, bees } = e
  const { choices: c, entries: t } = w
  const as = <T>(value: T | undefined, words: (value: T) => string): string | undefined =>
    value === undefined ? undefined : words(value)
  return said([
    ['', labelIn(removalTypes([], w.choiceWords), r.type)],
    [t.removed, r.removedOn === e.on ? undefined : as(r.removedOn, (d) => w.dates.day(d, today))],
    [t.from, withSite ? r.site : undefined],
    ['', word(c.METHOD, r.method)],
    [t.outdoors, as(r.outdoorC, (n) => temperature(n, units))],
    ['', as(r.hoursOpenToBoxed, (n) => t.openToBoxed(plain(n)))],
    when(r.sprayed === 'yes', t.sprayed),
    ['', t.at(e.yard, e.stand)],
    [t.queen, word(c.QUEEN, e.queen)],
    when(e.queenVirgin, t.virgin),
    when(e.queenMarked, t.marked),
    when(e.queenClipped, t.clipped),
    [t.broodBrought, as(b, (brood) => broodWords(brood, w))],
    [t.brood, word(c.BROOD_STATE, e.broodState)],
    when(e.broodCare === 'open-air', t.broodInOpen),
    when(e.broodCare === 'closed-chest', t.broodInChest),
    [t.queenCells, word(c.CELLS_AT_REMOVAL, e.queenCells)],
    [t.beesOn, as(bees?.frames, (n) => framesWords(n, w))],
    ['', as(bees?.kg, (kg) => t.bees(weight(kg, units)))],
    ['', as(e.deadBeesKg, (kg) => t.dead(weight(kg, units)))],
    ['', as(e.tiedComb, (tied) => (tied ? t.tied : t.notTied))],
    ['', as(e.temper, t.temper)],
  ])
}

type Brood = NonNullable<Of<'intake'>['brood']>

function broodWords(b: Brood, { entries: t }: Words): string {
  const parts = said([
    [t.eggs, b.eggs === undefined ? undefined : quarters(b.eggs)],
    [t.open, b.open === undefined ? undefined : quarters(b.open)],
    [t.capped, b.capped === undefined ? undefined : quarters(b.capped)],
  ])
  return `${parts.join(', ')} ${t.inFrames}`
}

function inspectionFacts(e: Of<'inspection'>, w: Words): string[] {
  const { choices: c, entries: t } = w
  return said([
    [t.eggs, word(c.EGGS, e.eggs)],
    [t.openBrood, word(c.OPEN_BROOD, e.open)],
    [t.cappedBrood, word(c.CAPPED_BROOD, e.capped)],
    ['', e.onFreshComb === undefined ? undefined : e.onFreshComb ? t.freshComb : t.oldComb],
    [t.queen, word(c.QUEEN_SEEN, e.queen)],
    [t.queenCells, cellsWords(e, w)],
    [t.looked, word(c.SEARCHED, e.searched)],
    [t.beesOn, e.framesOfBees === undefined ? undefined : framesWords(e.framesOfBees, w)],
    [t.broodOn, e.framesOfBrood === undefined ? undefined : framesWords(e.framesOfBrood, w)],
    [t.stores, word(c.STORES, e.stores)],
    ['', signsWords(e.signs, w)],
    ['', e.temper === undefined ? undefined : t.temper(e.temper)],
  ])
}

function lookTitle(e: Of<'inspection'>, { choices: c, entries: t }: Words): string {
  if (e.lost !== undefined) return t.found(lower(labelIn(c.LOST, e.lost)))
  return e.opened ? t.opened : t.fromOutside
}

function cellsWords(e: Of<'inspection'>, w: Words): string | undefined {
  const cells = word(w.choices.CELLS, e.cells)
  return cells === undefined || e.cellCount === undefined ? cells : `${cells} (${e.cellCount})`
}

function signsWords(signs: string[] | undefined, { choices: c, entries: t }: Words): string | undefined {
  if (signs === undefined) return undefined
  return signs.length === 0 ? t.noSigns : signs.map((s) => lower(labelIn(c.SIGN, s))).join(', ')
}

function givenFacts(e: Of<'given'>, units: Units, w: Words): string[] {
  const { entries: t } = w
  return said([
    ['', e.frames === undefined ? undefined : framesWords(e.frames, w)],
    [t.from, e.donor],
    ['', e.caged === undefined ? undefined : e.caged ? t.inCage : t.notCaged],
    ['', e.litres === undefined ? undefined : volume(e.litres, units, 2, w)],
    [t.syrup, e.syrup],
    ['', e.kg === undefined ? undefined : weight(e.kg, units)],
    ['', e.product],
    [t.batch, e.batch],
    ['', e.withdrawalDays === undefined ? undefined : t.withdrawal(e.withdrawalDays)],
    [t.cost, e.cost === undefined ? undefined : plain(e.cost)],
  ])
}
