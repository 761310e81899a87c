/** What a part of a removal sheet says, as label and value. */

import {
  type Check,
  type Noted,
  openToBoxed,
  priceWords,
  type Sheet,
  type Visit,
} from '../../records/index.ts'
import {
  BROOD_CARE,
  CELLS_AT_REMOVAL,
  type Choice,
  dayWords,
  depth,
  framesWords,
  height,
  labelIn,
  METHOD,
  plain,
  QUEEN,
  removalTypes,
  temperature,
  type Units,
  weight,
} from '../../words/index.ts'
import {
  BEHIND_IT,
  BYSTANDER,
  CALLER,
  CLEAN,
  CLOSED,
  FOUND,
  HAZARD,
  HOW_LONG,
  NOT_A_TYPE,
  SEAL,
  SECOND_WHY,
  VACUUM,
  WAY,
  WAY_UP,
  YES_NO,
} from './choices.ts'
import { GRAVE_WORDS, goneChoices, HAZARD_WORDS, TICKS, TRADE_WORDS } from './hazard-words.ts'
import { TICKED } from './item.ts'
import type { Part } from './stage.ts'
import { hoursBetween } from './to-intake.ts'
import { withoutGoWords } from './without-go.ts'

export type Fact = [label: string, value: string]

export interface FactsContext {
  units: Units
  today: string
  currency: string
}

/** Facts of one part; what is not said is left out. */
export function factsOf(part: Part, s: Sheet, at: FactsContext): Fact[] {
  const rows = FACTS[part](s, at)
  return rows.filter((r): r is Fact => r[1] !== undefined && r[1] !== '')
}

/** What two versions of a part say otherwise, as the later one says it; empty where it says nothing of it. */
export function differing(part: Part, before: Sheet, after: Sheet, at: FactsContext): Fact[] {
  const [was, is] = [before, after].map((s) => Object.fromEntries(factsOf(part, s, at)))
  return Object.keys({ ...was, ...is })
    .filter((label) => was?.[label] !== is?.[label])
    .map((label) => [label, is?.[label] ?? ''])
}

/** Of what a later version says otherwise, a hotter day, and what nobody knows: no hazard and no note, and asked about all the same. */
export function carefulFacts(before: Sheet, after: Sheet, at: FactsContext): Fact[] {
  const hotter = hottest(after) > hottest(before)
  return (['job', 'site', 'check'] as const).flatMap((part) =>
    differing(part, before, after, at).filter(
      ([, value]) => NOT_KNOWN.test(value) || (part === 'check' && hotter && /\d/.test(value)),
    ),
  )
}

/** Temper, Africanized and the like, as they are said. */
export const NOT_KNOWN = /not known/i

const hottest = ({ check: { hottestC = -99, hours = [] } }: Sheet): number =>
  Math.max(hottestC, ...hours.map((h) => h.c))

type Row = [label: string, value: string | undefined]

const word = (choices: Choice[], value: string | undefined): string | undefined =>
  value === undefined ? undefined : labelIn(choices, value)
const words = (
  choices: Choice[],
  values: readonly string[] | undefined,
  none = 'looked: none',
): string | undefined =>
  values === undefined
    ? undefined
    : values.length === 0
      ? none
      : values.map((v) => labelIn(choices, v)).join(', ')
const joined = (parts: (string | undefined)[], by = ', '): string =>
  parts.filter((p) => p !== undefined && p !== '').join(by)

const FACTS: Record<Part, (s: Sheet, at: FactsContext) => Row[]> = {
  job: ({ job: j, site: x }, { today, units }) => [
    [
      'What they see',
      j.bees === 'wasps' || j.bees === 'unsure' ? word(NOT_A_TYPE, j.bees) : word(removalTypes(), x.type),
    ],
    ['Since', word(HOW_LONG, j.since)],
    [
      'How high',
      joined([word(WAY_UP, x.access), x.heightM === undefined ? undefined : height(x.heightM, units)]),
    ],
    ['Sprayed', joined([word(YES_NO, x.sprayed), x.sprayedNote], '; ')],
    ['Who is about', joined([words(BYSTANDER, x.bystanders, 'asked: nobody'), x.bystandersNote], '; ')],
    ['Calls', word(CALLER, j.caller)],
    ['Name', j.name],
    ['Telephone', j.phone],
    ['E-mail', j.email],
    ['Address', j.address],
    ['The way in', j.wayIn],
    ['Called', j.calledOn === undefined ? undefined : dayWords(j.calledOn, today)],
    ['They see', j.told],
    [
      'Planned',
      j.plannedOn === undefined ? undefined : joined([dayWords(j.plannedOn, today), j.plannedAt], ' '),
    ],
  ],
  site: ({ site: x }, { units, today }) => [
    ['Where', x.where],
    ['Found by', joined([words(FOUND, x.foundBy), x.foundNote], '; ')],
    [
      'Nest',
      joined(
        [x.nestHighMm, x.nestWideMm, x.nestDeepMm].map((mm) =>
          mm === undefined ? undefined : depth(mm, units),
        ),
        ' × ',
      ),
    ],
    [
      'Entrance',
      joined([x.entrance, x.entranceM === undefined ? undefined : `${height(x.entranceM, units)} away`]),
    ],
    ['Other entrances', x.otherEntrances],
    [
      'What is cut',
      joined([x.surface, x.sheathingMm === undefined ? undefined : depth(x.sheathingMm, units)]),
    ],
    [
      'Behind it',
      joined([
        words(BEHIND_IT, x.behind),
        x.behindHow === undefined
          ? undefined
          : BEHIND_IT.find((c) => c.value === `none-${x.behindHow}`)?.hint,
      ]),
    ],
    ['Hazards', words(HAZARD, x.hazards)],
    ['Wires near', x.nearWires === true ? 'yes, within 3 m (10 ft)' : undefined],
    ['Before 1980', word(YES_NO, x.old)],
    [
      'No asbestos or lead',
      x.oldHow === undefined
        ? undefined
        : x.oldHow === 'tested'
          ? 'tested'
          : 'old, no cut and no screw in it',
    ],
    ['More about it', x.behindNote],
    [
      'Temper',
      x.temper === undefined ? undefined : x.temper === 'unknown' ? 'not known' : `${x.temper} of 5`,
    ],
    ['Africanized', word(YES_NO, x.africanized)],
    [
      'Taken off',
      (x.noted ?? [])
        .filter((n): n is Noted => n.is === 'gone')
        .map(
          (n) =>
            `${GRAVE_WORDS[n.what]}, ${word(goneChoices(n.what), n.why)?.toLowerCase() ?? 'no reason said'}, ${n.by}, ${dayWords(n.on, today)} ${n.at}`,
        )
        .join('; '),
    ],
  ],
  agreement: ({ agreement: a }, { currency, today }) => [
    ['Price', priceWords(a, currency)],
    ['Comes back', a.warrantyDays === undefined ? undefined : `within ${a.warrantyDays} days without charge`],
    ['Deposit', paid(a.deposit, a.depositOn, currency, today)],
    ['Paid', paid(a.paid, a.paidOn, currency, today)],
    ['Invoice', a.invoice],
    ['For this job', a.extra],
  ],
  check: ({ check: c }, { units, today }) => [
    ['Forecast', c.on === undefined ? undefined : dayWords(c.on, today)],
    ['Hottest', c.hottestC === undefined ? undefined : temperature(c.hottestC, units)],
    ['Hours', c.hours?.map((h) => `${h.at} ${temperature(h.c, units)}`).join(', ')],
    [
      'Work',
      c.from === undefined && c.until === undefined ? undefined : `${c.from ?? '…'} to ${c.until ?? '…'}`,
    ],
    ['Blade set to', c.cutMm === undefined ? undefined : depth(c.cutMm, units)],
    ['Bees come off', word(VACUUM, c.vacuum)],
    [
      'Checked',
      [
        ...TICKED.filter((id) => c.done?.includes(id)).map((id) => TICKS[id].toLowerCase()),
        ...saidAgain(c),
      ].join(', '),
    ],
    [
      'Cleared',
      (c.clearances ?? [])
        .map((x) =>
          joined([
            `${HAZARD_WORDS[x.hazard]}: ${x.who}`,
            x.as === undefined ? undefined : TRADE_WORDS[x.as].toLowerCase(),
            x.licence,
            dayWords(x.on, today),
          ]),
        )
        .join('; '),
    ],
    [
      'Second person',
      (c.seconds ?? [])
        .map(
          (x) =>
            `${x.by}${x.path === undefined ? '' : ', signed by hand'}: ${joined([word(SECOND_WHY, x.why), x.reason])} (${x.of})`,
        )
        .join('; '),
    ],
    // One line for everything, as sheets had it once: it clears nothing.
    ['Noted as cleared', c.clearedBy],
  ],
  work: ({ work: w, ...s }, { units, today }) => [
    ['Without a “go”', withoutGoWords({ ...s, work: w }) ?? undefined],
    ['Day', w.on === undefined ? undefined : dayWords(w.on, today)],
    ['Before', (w.earlier ?? []).map((v) => visitWords(v, today, units)).join('; ')],
    ['On site', clock(w.arrivedAt, w.leftAt)],
    ['Open to boxed', clock(w.openedAt, w.boxedAt, openToBoxed({ ...s, work: w }))],
    [
      'Outdoors',
      joined([
        w.outdoorC === undefined ? undefined : temperature(w.outdoorC, units),
        w.water === true ? 'water and shade there' : undefined,
      ]),
    ],
    ['Bees came off', word(METHOD, w.method)],
    [
      'Queen',
      joined([word(QUEEN, w.queen), w.queenFoundAt === undefined ? undefined : `found at ${w.queenFoundAt}`]),
    ],
    ['Brood', brood(w.brood)],
    ['Brood travelled', word(BROOD_CARE, w.broodCare)],
    ['Queen cells', word(CELLS_AT_REMOVAL, w.queenCells)],
    [
      'Bees',
      joined([
        w.bees?.frames === undefined ? undefined : framesWords(w.bees.frames),
        w.bees?.kg === undefined ? undefined : weight(w.bees.kg, units),
        w.deadBeesKg === undefined ? undefined : `${weight(w.deadBeesKg, units)} dead`,
      ]),
    ],
    ['Comb tied in', w.tiedComb === undefined ? undefined : w.tiedComb ? 'yes' : 'no'],
    ['Temper', w.temper === undefined ? undefined : `${w.temper} of 5`],
    ['Entrance', word(SEAL, w.sealed)],
    ['Closed up', words(CLOSED, w.closedUp)],
    [
      'On the way',
      joined([
        words(WAY, w.onTheWay),
        w.boxHours === undefined ? undefined : `${plain(w.boxHours)} hours in the box`,
        w.boxC === undefined ? undefined : temperature(w.boxC, units),
      ]),
    ],
    ['Comb taken out', word(CLEAN, w.cleaned)],
    ['Left to the owner', w.left],
    ['Note', w.note],
  ],
}

const AGAIN: Readonly<Record<string, string>> = {
  'not-here': 'not here',
  'not-there': 'not here',
  same: 'the same',
}

/** What was only looked for again, and cleared by nobody: 'not here: gas pipe' */
export const saidAgain = ({ done = [] }: Check): string[] => [
  ...new Set(
    done.flatMap((tick) => {
      const [kind = '', what = ''] = tick.split(':')
      const said = AGAIN[kind]
      const words = (GRAVE_WORDS as Readonly<Record<string, string>>)[what] ?? 'why another sheet was stopped'
      return said === undefined ? [] : [`${said}: ${words.toLowerCase()}`]
    }),
  ),
]

const paid = (
  amount: number | undefined,
  on: string | undefined,
  currency: string,
  today: string,
): string | undefined =>
  amount === undefined
    ? undefined
    : joined([`${currency}${plain(amount)}`, on === undefined ? undefined : dayWords(on, today)])

/** 'Fri 12 Jun, 09:00 to 18:00, 9 hours, 76 °F' */
const visitWords = ({ on, openedAt, leftAt, outdoorC: c }: Visit, today: string, units: Units): string =>
  joined([on && dayWords(on, today), clock(openedAt, leftAt), c === undefined ? c : temperature(c, units)])

/** '08:40 to 12:10, 3.5 hours'; `hours`: where they are not those between the two. */
function clock(from: string | undefined, to: string | undefined, hours?: number): string | undefined {
  if (from === undefined && to === undefined) return undefined
  const length =
    from === undefined || to === undefined ? '' : `, ${plain(hours ?? hoursBetween(from, to))} hours`
  return `${from ?? '…'} to ${to ?? '…'}${length}`
}

const brood = (b: Sheet['work']['brood']): string | undefined =>
  b === undefined
    ? undefined
    : joined([
        b.eggs === undefined ? undefined : `eggs ${framesWords(b.eggs)}`,
        b.open === undefined ? undefined : `open ${framesWords(b.open)}`,
        b.capped === undefined ? undefined : `capped ${framesWords(b.capped)}`,
      ])
