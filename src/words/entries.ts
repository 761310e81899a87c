/** An entry of the journal in words. */
import { type Entry, eachKind, never } from '../journal/index.ts'
import {
  BROOD_CARE,
  BROOD_STATE,
  CAGE,
  CAPPED_BROOD,
  CAUSE,
  CELLS,
  CELLS_AT_REMOVAL,
  type Choice,
  CLEARED,
  EGGS,
  GIFT,
  LOST,
  labelIn,
  METHOD,
  MISSED,
  NOTE_FOR,
  OPEN_BROOD,
  OUTCOME,
  QUEEN,
  QUEEN_SEEN,
  removalTypes,
  SEARCHED,
  SETTLES,
  SIGN,
  STORES,
} from './choices.ts'
import { dayWords } from './dates.ts'
import { distance, framesWords, plain, quarters, temperature, type Units, volume, weight } from './units.ts'

export interface EntryWords {
  title: string
  /** What was noted, each a short phrase. */
  facts: string[]
  note: string | null
}

/** An entry named in passing: 'the visit'. */
export const KIND_WORDS: Record<Entry['kind'], string> = eachKind((f) => f.name)

/** What an entry says. `site` (where the bees came from) is left out unless asked for: it is private. */
export function entryWords(e: Entry, units: Units, today: string, withSite = false): EntryWords {
  const note = 'note' in e ? (e.note ?? null) : null
  switch (e.kind) {
    case 'intake':
      return { title: 'Intake', facts: intakeFacts(e, units, today, withSite), note }
    case 'inspection':
      return { title: lookTitle(e), facts: inspectionFacts(e), note }
    case 'given':
      return { title: `${labelIn(GIFT, e.what)} given`, facts: givenFacts(e, units), note }
    case 'queen-cage':
      return { title: `Queen’s cage: ${lower(labelIn(CAGE, e.found))}`, facts: [], note }
    case 'ties-removed':
      return { title: 'Comb ties taken off', facts: [], note }
    case 'mite-wash':
      return {
        title: 'Mite wash',
        facts: [
          `${e.mites} ${e.mites === 1 ? 'mite' : 'mites'} on ${e.bees} bees`,
          `${plain((e.mites / e.bees) * 100, 1)} per 100`,
        ],
        note,
      }
    case 'disease-cleared':
      return {
        title: `Suspected disease cleared: ${lower(labelIn(CLEARED, e.clearedBy))}`,
        facts: said([['report', e.reference]]),
        note,
      }
    case 'move':
      return {
        title: 'Moved',
        facts: [
          e.stand === undefined ? e.yard : `${e.yard}, stand ${e.stand}`,
          ...(e.distanceKm === undefined ? [] : [`${distance(e.distanceKm, units)} away`]),
        ],
        note,
      }
    case 'outcome':
      return {
        title: labelIn(OUTCOME, e.what),
        facts: said([
          ['into', e.into],
          ['cause', CAUSE.some((c) => c.value === e.cause) ? word(CAUSE, e.cause) : e.cause],
          ['to', e.destination],
        ]),
        note,
      }
    case 'note':
      return {
        title: e.asks === undefined ? 'Note' : labelIn(NOTE_FOR, e.asks),
        facts: said([['decides:', word(SETTLES, e.settles)]]),
        note: e.text,
      }
    case 'missed-visit':
      return {
        title: 'Not reached',
        facts: said([
          ['', word(MISSED, e.reason)],
          ['again', e.again === undefined ? undefined : dayWords(e.again, today)],
        ]),
        note,
      }
    case 'withdrawal':
      return { title: 'Took an entry back', facts: [], note: e.reason }
    default:
      return never(e)
  }
}

const lower = (s: string): string => s.charAt(0).toLowerCase() + s.slice(1)

const said = (pairs: [string, string | undefined][]): string[] =>
  pairs.flatMap(([label, value]) => (value === undefined ? [] : [label === '' ? value : `${label} ${value}`]))

const word = (choices: Choice[], value: string | undefined): string | undefined =>
  value === undefined ? undefined : lower(labelIn(choices, value))

type Of<K extends Entry['kind']> = Extract<Entry, { kind: K }>

function intakeFacts(e: Of<'intake'>, units: Units, today: string, withSite: boolean): string[] {
  const { removal: r, brood: b, bees } = e
  const brood = b === undefined ? undefined : broodWords(b)
  return said([
    ['', labelIn(removalTypes(), r.type)],
    ['removed', r.removedOn === undefined || r.removedOn === e.on ? undefined : dayWords(r.removedOn, today)],
    ['from', withSite ? r.site : undefined],
    ['', word(METHOD, r.method)],
    ['outdoors', r.outdoorC === undefined ? undefined : temperature(r.outdoorC, units)],
    [
      '',
      r.hoursOpenToBoxed === undefined ? undefined : `${plain(r.hoursOpenToBoxed)} h from opening to boxed`,
    ],
    ['', r.sprayed === 'yes' ? 'SPRAYED' : undefined],
    ['', e.stand === undefined ? e.yard : `${e.yard}, stand ${e.stand}`],
    ['queen', word(QUEEN, e.queen)],
    ['', e.queenVirgin === true ? 'a virgin' : undefined],
    ['', e.queenMarked === true ? 'marked' : undefined],
    ['', e.queenClipped === true ? 'clipped' : undefined],
    ['brood:', brood],
    ['brood', e.broodState === undefined ? undefined : word(BROOD_STATE, e.broodState)],
    ['brood in', e.broodCare === 'open-air' ? 'the open' : undefined],
    ['brood in a', e.broodCare === 'closed-chest' ? word(BROOD_CARE, e.broodCare) : undefined],
    ['queen cells', word(CELLS_AT_REMOVAL, e.queenCells)],
    ['bees on', bees?.frames === undefined ? undefined : framesWords(bees.frames)],
    ['', bees?.kg === undefined ? undefined : `${weight(bees.kg, units)} of bees`],
    ['', e.deadBeesKg === undefined ? undefined : `${weight(e.deadBeesKg, units)} dead in the box`],
    ['', e.tiedComb === undefined ? undefined : e.tiedComb ? 'comb tied in' : 'no tied comb'],
    ['temper', e.temper === undefined ? undefined : `${e.temper} of 5`],
  ])
}

function broodWords(b: {
  eggs?: number | undefined
  open?: number | undefined
  capped?: number | undefined
}): string {
  const parts = said([
    ['eggs', b.eggs === undefined ? undefined : quarters(b.eggs)],
    ['open', b.open === undefined ? undefined : quarters(b.open)],
    ['capped', b.capped === undefined ? undefined : quarters(b.capped)],
  ])
  return `${parts.join(', ')} (frames)`
}

function inspectionFacts(e: Of<'inspection'>): string[] {
  return said([
    ['eggs', word(EGGS, e.eggs)],
    ['open brood', word(OPEN_BROOD, e.open)],
    ['capped brood', word(CAPPED_BROOD, e.capped)],
    ['', e.onFreshComb === true ? 'on fresh comb' : e.onFreshComb === false ? 'on old comb' : undefined],
    ['queen', word(QUEEN_SEEN, e.queen)],
    ['queen cells', cellsWords(e)],
    ['looked', word(SEARCHED, e.searched)],
    ['bees on', e.framesOfBees === undefined ? undefined : framesWords(e.framesOfBees)],
    ['brood on', e.framesOfBrood === undefined ? undefined : framesWords(e.framesOfBrood)],
    ['stores', word(STORES, e.stores)],
    ['', signsWords(e.signs)],
    ['temper', e.temper === undefined ? undefined : `${e.temper} of 5`],
  ])
}

const lookTitle = (e: Of<'inspection'>): string =>
  e.lost !== undefined
    ? `Found ${lower(labelIn(LOST, e.lost))}`
    : e.opened
      ? 'Opened'
      : 'Looked from outside, lid on'

function cellsWords(e: Of<'inspection'>): string | undefined {
  const cells = word(CELLS, e.cells)
  return cells === undefined || e.cellCount === undefined ? cells : `${cells} (${e.cellCount})`
}

function signsWords(signs: string[] | undefined): string | undefined {
  if (signs === undefined) return undefined
  return signs.length === 0 ? 'no signs of trouble' : signs.map((s) => lower(labelIn(SIGN, s))).join(', ')
}

const givenFacts = (e: Of<'given'>, units: Units): string[] =>
  said([
    ['', e.frames === undefined ? undefined : framesWords(e.frames)],
    ['from', e.donor],
    ['', e.caged === undefined ? undefined : e.caged ? 'in a cage' : 'not caged'],
    ['', e.litres === undefined ? undefined : volume(e.litres, units)],
    ['syrup', e.syrup],
    ['', e.kg === undefined ? undefined : weight(e.kg, units)],
    ['', e.product],
    ['batch', e.batch],
    ['withdrawal', e.withdrawalDays === undefined ? undefined : `${e.withdrawalDays} days`],
    ['cost', e.cost === undefined ? undefined : plain(e.cost)],
  ])
