/** Recording go, wait or refuse: what the sheet insists on before it writes the decision down. */
import type { Problem } from '../../journal/index.ts'
import type { Clearance, Decision, SecondName, Sheet } from '../../records/index.ts'
import { holds, type Reckoning, stops } from './before-cut.ts'
import { placeOf } from './hazards.ts'
import { isAnswer, sameName } from './same-name.ts'

/**
 * No "go" over what can kill: a trade's word is not replaced by ours, and a second person's name is not the first one's.
 * Anything else may be overruled by whoever is at the wall, by name and with a reason.
 */
export function decisionProblems(
  d: Pick<Decision, 'is' | 'reason' | 'by'>,
  r: Reckoning,
  s: Sheet,
): Problem[] {
  if (d.is !== 'go')
    return d.reason === undefined && d.is === 'refuse'
      ? [{ field: 'reason', message: 'is needed: the customer will ask why' }]
      : []
  const barred = r.unmet.find(stops) ?? r.unmet.find(holds)
  if (barred !== undefined)
    return [{ field: 'is', message: `cannot be “go” while this is unmet: ${barred.what}. ${wayOut(barred)}` }]
  const own = ownSecond(s, d.by)
  if (own !== undefined)
    return [
      {
        field: 'by',
        message: `is also the second person who signed for an item: it takes two people. Let another one decide, or sign`,
      },
    ]
  if (r.unmet.length > 0 && d.reason === undefined)
    return [
      {
        field: 'reason',
        message: `is needed to go while ${r.unmet.length === 1 ? 'one thing is' : `${r.unmet.length} things are`} unmet or not filled in: say why it may begin all the same`,
      },
    ]
  return []
}

const wayOut = (i: Reckoning['unmet'][number]): string =>
  i.weight === 'second'
    ? 'Meet it, or have a second person sign for it by name'
    : `${i.decides} decides that, not this sheet`

const ownSecond = (s: Sheet, by: string): SecondName | undefined =>
  s.check.seconds?.find((x) => sameName(x.by, by))

/** What was looked at is one wall of one house: a “go” for another address or wall is none. */
function decidedHere({ decision: d, ...s }: Sheet): boolean {
  if (d === undefined || (d.address === undefined && d.where === undefined)) return true
  const now = placeOf(s)
  const plain = (text = ''): string => text.trim().toLowerCase()
  return plain(d.address) === plain(now.address) && plain(d.where) === plain(now.where)
}

/** Whether “go” stands now: decided today, for this place, and nothing has come up since that no decision gets past. */
export const goStands = (s: Sheet, r: Reckoning, today: string): boolean =>
  s.decision?.is === 'go' && s.decision.on === today && decidedHere(s) && !r.unmet.some(holds)

/** Work was begun, and no “go” of that day stands behind it. A record of what happened: it cannot be refused, only said. */
export const beganWithoutGo = ({ work: w, decision: d }: Sheet): boolean =>
  [w.openedAt, w.boxedAt, w.leftAt].some((at) => at !== undefined) &&
  (d?.is !== 'go' || (w.on !== undefined && w.on !== d.on))

/** What was unmet or signed for when it was decided, for the record. */
export const unmetWords = (r: Reckoning): string[] =>
  [...r.unmet, ...r.items.filter((i) => i.state === 'signed')]
    .slice(0, 40)
    .map((i) =>
      `${i.what}${i.state === 'signed' ? ' (signed by a second person)' : ''}: ${i.why}`.slice(0, 300),
    )

/** What is wrong with a clearance: the crew does not clear itself, and no trade comes tomorrow. */
export function clearanceProblems(
  c: Omit<Clearance, 'knew'>,
  crew: readonly string[],
  customer: string | undefined,
  today: string,
): Problem[] {
  const problems: Problem[] = []
  if (customer !== undefined && sameName(customer, c.who))
    problems.push({
      field: 'who',
      message: 'must be somebody of the licensed trade: the customer’s word clears nothing',
    })
  if (crew.some((name) => sameName(name, c.who)))
    problems.push({ field: 'who', message: 'must be somebody of the licensed trade, not of the crew' })
  if (!/[\p{L}\p{N}].*[\p{L}\p{N}]/u.test(c.licence) || !isAnswer(c.licence))
    problems.push({ field: 'licence', message: 'must be the number of a licence, or a company' })
  if (!/\p{L}{2}/u.test(c.who) || !isAnswer(c.who)) problems.push({ field: 'who', message: 'must be a name' })
  if (c.on > today)
    problems.push({ field: 'on', message: 'is in the future: what is planned clears nothing' })
  return problems
}

/** What is wrong with a second person's name: it is another one's, and there is a reason. */
export function secondProblems(
  x: Pick<SecondName, 'by' | 'reason'>,
  crew: readonly string[],
  customer?: string,
): Problem[] {
  const problems: Problem[] = []
  if (customer !== undefined && sameName(customer, x.by))
    problems.push({
      field: 'by',
      message: 'must be somebody of the crew: the customer does not answer for it',
    })
  if (crew.some((name) => sameName(name, x.by)))
    problems.push({ field: 'by', message: 'must be a second person, not who writes this or decided' })
  if (!/\p{L}{2}/u.test(x.by) || !isAnswer(x.by)) problems.push({ field: 'by', message: 'must be a name' })
  // Ten characters: '-' and 'ok' are no reasons (judgement).
  if (x.reason.trim().length < 10)
    problems.push({ field: 'reason', message: 'must say why it may begin all the same, in words' })
  return problems
}
