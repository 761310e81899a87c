/** Recording go, wait or refuse: what the sheet insists on before it writes the decision down. */
import { daysBetween } from '../../days.ts'
import type { Problem } from '../../journal/index.ts'
import {
  type Clearance,
  type Decision,
  isTelephone,
  type SecondName,
  type Sheet,
  type Trade,
  type TradeHazard,
} from '../../records/index.ts'
import { holds, notYet, type Reckoning, stops } from './before-cut.ts'
import { CLEARED_BY, GOOD_DAYS, isShown, isTested } from './hazards.ts'
import type { Item } from './item.ts'
import { placeOf, samePlace } from './place.ts'
import { isFullName, isNumber, sameName, sharesName } from './same-name.ts'
import { customersOf, type Known } from './second.ts'
import { ranOut } from './ticked-when.ts'

/**
 * No "go" over what can kill: a trade's word is not replaced by ours, and a second person's name is not the first one's.
 * Anything else may be overruled by whoever is at the wall, by name and with a reason.
 */
export function decisionProblems(
  d: Pick<Decision, 'is' | 'reason' | 'by' | 'over'>,
  r: Reckoning,
  s: Sheet,
): Problem[] {
  if (d.is !== 'go')
    return d.reason === undefined && d.is === 'refuse'
      ? [{ field: 'reason', message: 'is needed: the customer will ask why' }]
      : []
  if (s.ended !== undefined)
    return [{ field: 'is', message: 'cannot be “go”: the job has ended. Another one has a sheet of its own' }]
  if (s.job.bees === 'wasps' || s.job.bees === 'unsure')
    return [
      {
        field: 'is',
        message: 'cannot be “go” while it is not known to be honey bees: change it at the call',
      },
    ]
  if (s.site.type === undefined)
    return [
      { field: 'is', message: 'cannot be “go” before it is said what the bees are in: tap it at the call' },
    ]
  const barred = r.unmet.find(stops) ?? r.unmet.find(holds)
  if (barred !== undefined)
    return [{ field: 'is', message: `cannot be “go”. ${notYet(barred)}. ${wayOut(barred)}` }]
  const own = ownSecond(s, d.by)
  if (own !== undefined)
    return [
      {
        field: 'by',
        message: `is also the second person who signed for an item: it takes two people. Let another one decide, or sign`,
      },
    ]
  if (d.over !== undefined && !isSentence(d.reason))
    return [
      {
        field: 'reason',
        message: `is needed: ${d.over.by} ${d.over.wait === true ? 'tapped “Wait”' : 'refused'}${d.over.reason === undefined ? '' : ` (${d.over.reason})`}. Say what has changed since`,
      },
    ]
  if (r.unmet.length > 0 && !isSentence(d.reason))
    return [
      {
        field: 'reason',
        message: `is needed to go while ${r.unmet.length === 1 ? 'one thing is' : `${r.unmet.length} things are`} unmet or not filled in: say why it may begin all the same`,
      },
    ]
  return []
}

/** A dot is no reason: a word at least. */
const isSentence = (reason = ''): boolean => /\p{L}{3}/u.test(reason)

/**
 * The refusal, or why it was to wait, that a decision goes over: somebody else's for as long as anything is decided, one's own until a
 * “go” has answered it. A “Wait” with no word takes none away.
 */
export function refusedBefore(before: Decision | undefined, by: string): Decision['over'] {
  if (before === undefined) return undefined
  const { on, at, reason } = before
  const own = {
    by: before.by,
    on,
    ...(at === undefined ? {} : { at }),
    ...(reason === undefined ? {} : { reason }),
    ...(before.is === 'wait' ? { wait: true as const } : {}),
  }
  const holdsBack = before.is === 'refuse' || (before.is === 'wait' && isSentence(reason))
  const held = [holdsBack ? own : undefined, before.over].filter((x) => x !== undefined)
  return held.find((x) => x.by !== by) ?? (before.is === 'go' ? undefined : held[0])
}

const wayOut = (i: Reckoning['unmet'][number]): string =>
  ['temper', 'free', 'wires', 'notes', 'other-sheet', 'bystanders', 'old-building'].includes(i.id)
    ? 'Look or ask, and tap what is so'
    : i.weight === 'second'
      ? 'Meet it, or have a second person sign for it by name'
      : `Not for this sheet to decide, but for: ${i.decides.toLowerCase()}`

const ownSecond = (s: Sheet, by: string): SecondName | undefined =>
  s.check.seconds?.find((x) => sameName(x.by, by))

/**
 * Whether “go” stands: decided today, for this place, by somebody who still has an account, and nothing has come up since that no
 * decision gets past. `closed`: accounts that cannot sign in any more. `at`: the hour at which something is begun on it; without,
 * whether it is one at all.
 */
export const goStands = (
  s: Sheet,
  r: Reckoning,
  today: string,
  closed: readonly string[] = [],
  at?: string,
): boolean =>
  s.decision?.is === 'go' &&
  !closed.includes(s.decision.by) &&
  s.ended === undefined &&
  s.job.bees !== 'wasps' &&
  s.job.bees !== 'unsure' &&
  s.site.type !== undefined &&
  s.decision.fell === undefined &&
  s.decision.on === today &&
  samePlace(s.decision, placeOf(s)) &&
  (at === undefined || ranOut(s, at) === null) &&
  !r.unmet.some(holds)

/** What was unmet or signed for when it was decided, for the record. */
export const unmetWords = (r: Reckoning): string[] =>
  [...r.unmet, ...r.items.filter((i) => i.state === 'signed')].slice(0, 40).map(lineOf)

/** An item as it stands in such a list. */
export const lineOf = (i: Item): string =>
  `${i.state === 'signed' ? `Signed by a second person: ${i.what}` : notYet(i)}. ${i.why}`.slice(0, 300)

/** Trades that have no number everywhere: a photo of their paper does. */
const WITHOUT_NUMBER: readonly Trade[] = ['heating', 'builder']

/** What is wrong with a clearance: who it is, of which trade, with which number, and when. */
export function clearanceProblems(
  c: Omit<Clearance, 'knew'>,
  s: Sheet,
  known: Known,
  today: string,
): Problem[] {
  const wrong = (field: string, message: string): Problem => ({ field, message })
  const number = c.licence !== undefined && isNumber(c.licence) && !isTelephone(c.licence, s.job.phone)
  const byPhoto = WITHOUT_NUMBER.includes(c.as ?? 'supplier') || isTested(s, c.hazard)
  const isLine = LINE[c.hazard] !== undefined
  const early = isLine && s.job.calledOn !== undefined && c.on < s.job.calledOn
  const found = s.site.noted?.findLast((n) => n.what === c.hazard && n.is === 'found')?.on
  // One person, one number and one photo are not the licence of every trade.
  const others = (s.check.clearances ?? []).filter(
    (x) => x.as !== undefined && (x.as !== c.as || LINE[x.hazard] !== LINE[c.hazard]),
  )
  const ofTheJob = [s.job, s.site, s.work].some(
    ({ photos }) => c.photo !== undefined && photos?.includes(c.photo),
  )
  // The tag of a socket is not that of the line to the house.
  const ofNear = s.check.clearances?.some(
    (x) =>
      x.photo !== undefined &&
      x.photo === c.photo &&
      x.hazard !== c.hazard &&
      [x.hazard, c.hazard].includes('near-wires'),
  )
  const taken = others.some(
    (x) => (x.photo !== undefined && x.photo === c.photo) || (number && x.licence === c.licence),
  )
  return [
    c.as === undefined || !CLEARED_BY[c.hazard].includes(c.as)
      ? wrong('as', 'must be tapped: which trade cleared it')
      : null,
    customersOf(s).some((name) => sharesName(name, c.who))
      ? wrong('who', 'must be somebody of the licensed trade: the customer and theirs clear nothing')
      : known.yard.some((name) => sameName(name, c.who))
        ? wrong('who', 'must be somebody of the licensed trade, not of the yard')
        : isFullName(c.who) && !sharesName(s.job.address ?? '', c.who)
          ? null
          : wrong('who', 'must be first and last name, or the full name of a company'),
    SAYS_THERE.test(c.licence ?? '')
      ? wrong(
          'licence',
          'says that it was found: that clears nothing. It is not cut; ask the trade what to do',
        )
      : number && saysMore(c.licence)
        ? wrong('licence', 'is the number alone: what their paper says is tapped, and only so clears it')
        : null,
    c.says === 'clear'
      ? null
      : wrong(
          'says',
          c.says === undefined
            ? 'must be tapped: only that clears it'
            : c.says === 'found'
              ? 'is that there is some: it is not cut; ask the trade what to do'
              : 'is “not yet”: nothing is cleared before it is done. Write it down then',
        ),
    taken ? wrong('licence', 'and photo are of another trade on this sheet: each has its own') : null,
    number || (c.licence === undefined && c.photo !== undefined && byPhoto)
      ? null
      : wrong(
          'licence',
          `must be the number of their licence, ticket or report: four digits or more${byPhoto ? ', or a photo of their paper' : ''}`,
        ),
    ofTheJob ? wrong('photos', 'is a picture of this job: take one of the paper, the tag or the test') : null,
    ofNear
      ? wrong('photos', 'is of other wires: lines, meter or pole near have a paper or a tag of their own')
      : null,
    isShown(c) || isTested(s, c.hazard)
      ? null
      : wrong('photos', 'is missing: their paper, the tag on the line, or the test result'),
    c.on > today
      ? wrong('on', 'is in the future: what is planned clears nothing')
      : isLine && found !== undefined && c.on < found
        ? wrong('on', `is before it was found here (${found}): ask the trade about what was found`)
        : early
          ? wrong('on', `is before the call (${s.job.calledOn}): wires and gas are cleared for this job`)
          : daysBetween(c.on, today) > GOOD_DAYS[c.hazard]
            ? wrong(
                'on',
                `is more than ${GOOD_DAYS[c.hazard] === 1 ? 'a day' : `${GOOD_DAYS[c.hazard]} days`} ago: ask the trade again`,
              )
            : null,
    s.job.address === undefined || s.site.where === undefined
      ? wrong('', 'Say the address and where the bees are first: it is cleared for that wall and no other.')
      : null,
  ].filter((p) => p !== null)
}

/** Lines that are cleared for this job alone, and what their supplier is of: who has shut the gas has not made wires dead. */
const LINE: Partial<Record<TradeHazard, 'electricity' | 'gas'>> = {
  electric: 'electricity',
  'electric-in-cut': 'electricity',
  'near-wires': 'electricity',
  gas: 'gas',
}
/** A report that found it is no clearance. */
const SAYS_THERE = /\b(positiv\w*|found|detected|chrysotile|amosite|crocidolite|contains?|contiene)\b/i
/** A number with a sentence beside it is an appointment, or a result: whatever is no name and no word for a number. */
const saysMore = (licence = ''): boolean =>
  licence.includes('%') || (licence.match(/\b\p{Ll}{3,}/gu) ?? []).some((w) => !NUMBER_WORDS.test(w))
const NUMBER_WORDS = /^(licen[cs]e|licencia|ticket|report|number|test|order|certificate|job|lab)$/
