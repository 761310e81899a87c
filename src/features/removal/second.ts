/**
 * A second person: who may be one, and what makes their name count. Who has an account types its passphrase, which takes signal;
 * whoever has none draws their name and leaves their own telephone number. What kills by being alone takes an account.
 */
import type { Problem } from '../../journal/index.ts'
import { digitsOf, isDrawnName, isTelephone, type SecondName, type Sheet } from '../../records/index.ts'
import type { ItemId } from './item.ts'
import { isFullName, isNumber, sameName, sharesName } from './same-name.ts'

/** Who is who at a job: nobody of them is the licensed trade, and not each of them a second person. */
export interface Known {
  /** Who writes this, and who decided. */
  first: readonly string[]
  /** Every name that ever had an account in the yard, wrote on the sheet or signed on it. */
  yard: readonly string[]
  /** Every name that has, or had, an account. */
  accounts: readonly string[]
  /** Accounts that can sign in. */
  open: readonly string[]
  /** Those made within a day by one of `first`. */
  fresh: readonly string[]
  /** Who is at another job today that is not done, and where. */
  elsewhere: ReadonlyMap<string, string>
}

/** Nobody holds the ladder, nobody is within call, nobody knows what to do about a sting: no name invented at the wall stands for that. */
const TAKES_ACCOUNT: readonly ItemId[] = ['not-alone', 'ladder-person', 'sting-plan']
export const takesAccount = (item: string): boolean => (TAKES_ACCOUNT as readonly string[]).includes(item)
/** Whoever signs for these stays and watches: at one place. */
export const STAYS: readonly string[] = ['not-alone', 'ladder-person'] satisfies ItemId[]

/** Whether it counts: confirmed by the account's own passphrase, or drawn by somebody who can be asked. */
export const isSigned = (x: SecondName): boolean =>
  x.account === true || (!takesAccount(x.item) && x.path !== undefined && x.phone !== undefined)

/** The customer, and whoever signed for them. */
export const customersOf = ({ job, agreement }: Sheet): string[] =>
  [job.name, agreement.signature?.name].filter((name) => name !== undefined)

/** What is wrong with a second person: somebody else, who can be found again, for this alone. */
export function secondProblems(
  x: Pick<SecondName, 'by' | 'why' | 'path' | 'item' | 'account' | 'phone'>,
  s: Sheet,
  known: Known,
): Problem[] {
  const problems = x.account === true ? [] : byHandProblems(x, s, known)
  const who = whoIsWrong(x, s, known)
  if (who !== null) problems.unshift({ field: 'by', message: who })
  if (x.why === undefined) problems.push({ field: 'why', message: 'must be tapped: what you stand for' })
  return problems
}

type Signing = Pick<SecondName, 'by' | 'path' | 'item' | 'account' | 'phone'>

function whoIsWrong(x: Signing, s: Sheet, known: Known): string | null {
  const has = x.account === true
  if (customersOf(s).some((name) => sharesName(name, x.by)))
    return 'must be somebody of the crew: the customer and theirs do not answer for it'
  if (known.first.some((name) => sameName(x.by, name)))
    return 'must be a second person, not who writes this or decided, and not called like them: two accounts of one name are one person'
  if (has && known.fresh.includes(x.by))
    return 'got their account today from whoever writes this or decided: somebody else has to sign'
  // Whoever is drawn for is here, and so is whoever stays and watches: at one job.
  const at =
    STAYS.includes(x.item) || !has
      ? [...known.elsewhere].find(([name]) => sameName(name, x.by))?.[1]
      : undefined
  if (at !== undefined) return `is at ${at} today: whoever stays here can be at one job`
  if (has) return known.open.includes(x.by) ? null : 'must be somebody whose account here can sign in'
  if (known.accounts.some((name) => sameName(name, x.by)))
    return 'has an account here: tap the name; it is confirmed with their own passphrase, not drawn'
  if (takesAccount(x.item))
    return 'must have an account here: this can kill, and nobody signs for it who cannot be asked. Better: have it met'
  return isFullName(x.by) ? null : 'must be first and last name of somebody who is here'
}

function byHandProblems(x: Signing, s: Sheet, known: Known): Problem[] {
  // Somebody of the yard, or for what takes an account, is asked for that and nothing else.
  if (takesAccount(x.item) || known.open.includes(x.by)) return []
  const problems: Problem[] = []
  const others = s.check.seconds?.filter((y) => y.by !== x.by && y.phone !== undefined) ?? []
  const number = x.phone ?? ''
  if (digitsOf(number).length < 7 || !isNumber(number))
    problems.push({ field: 'phone', message: 'must be their own number, seven digits or more' })
  else if (isTelephone(number, s.job.phone) || others.some((y) => isTelephone(number, y.phone)))
    problems.push({ field: 'phone', message: 'is somebody else’s on this sheet: theirs is needed' })
  const again = s.check.seconds?.some((y) => y.path === x.path && y.item !== x.item) === true
  // Somebody at home can be named; only who is there can take the telephone and draw.
  if (x.path === undefined || !isDrawnName(x.path) || again)
    problems.push({
      field: 'drawing',
      message: 'is missing: who signs for it draws their whole name, for this alone',
    })
  return problems
}
