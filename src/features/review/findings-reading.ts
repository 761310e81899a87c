/** Sentences for what goes with losing a colony, for recovery paths, for money and for days in the yard. */

import { capital, FEW } from '../../words/index.ts'
import type { FactorName } from './factor-columns.ts'
import { FEWEST_LOSSES, type Finding, type Findings } from './factors.ts'
import { amount, type MoneyReview } from './money.ts'
import { chance, coloniesOf } from './readings.ts'
import type { PathCount, RecoveryPath } from './recovery-path.ts'
import type { YardStay } from './stay.ts'

/** '2.1', '0.45', '12': two figures that count. */
export function times(ratio: number): string {
  if (ratio >= 9.95) return ratio < 1000 ? String(Math.round(ratio)) : 'over 1000'
  if (ratio < 0.01) return 'under 0.01'
  // Near 1 a second decimal tells which side it is on.
  return ratio < 1.095 ? ratio.toFixed(2) : ratio.toFixed(1)
}

/** A subject for each finding: 'Colonies with vacuum', 'wall colonies', 'Colonies taken when it was 5 °C warmer'. */
function subject(f: Pick<Finding, 'factor'>, label: string): string {
  switch (f.factor) {
    case 'type':
      return label === 'other types' ? 'colonies of the other types' : `${label} colonies`
    case 'heat':
      return `colonies taken when it was ${label}`
    case 'queen':
      return `colonies with the ${label}`
    case 'brood':
      return label === 'no brood' ? 'colonies without brood' : 'colonies whose brood came along'
    case 'vacuum':
      return label === 'no vacuum' ? 'colonies taken without a vacuum' : 'colonies taken with a vacuum'
    case 'hours':
      return `colonies that took ${label}`
  }
}

/** Who was lost at how many times whose rate. A number is told by its step, a group beside the one it is held against. */
function lead(f: Finding, ratio: number): string {
  const rate = `lost at ${times(ratio)} times the rate`
  if (f.factor === 'heat') return `For each ${f.label} at the removal, colonies were ${rate}`
  if (f.factor === 'hours') return `For each hour longer from opening to boxed, colonies were ${rate}`
  return `${capital(subject(f, f.label))} were ${rate} of ${subject(f, f.against)}`
}

/**
 * One hazard ratio. Never says why. Example: 'For each 5 °C warmer at the removal, colonies were lost at 1.6 times the
 * rate (1.1 to 2.4 times). That they go together does not say that one made the other.'
 */
export function findingReading(f: Finding): string {
  if (f.ratio === null || f.lower === null || f.upper === null)
    return `${capital(subject(f, f.label))}: nothing can be worked out from these colonies.`
  const said = lead(f, f.ratio)
  const range = `${times(f.lower)} to ${times(f.upper)} times`
  const small = f.behind < 2 * FEW ? ` Only ${f.behind} losses stand behind this.` : ''
  const rare =
    f.method === 'firth-penalised'
      ? ' Losses were all on one side for some of these facts, so the figure is a cautious one.'
      : ''
  if ((f.lower > 1 || f.upper < 1) && !isClear(f))
    return `${said} (${range}), but with so many facts looked at, one that stands out as far as this is to be expected by chance.${small}${rare}`
  if (f.lower <= 1 && f.upper >= 1)
    return `${said}, but anything from ${range} fits these numbers, so no difference can be read from them.${small}${rare}`
  return `${said} (${range}). That they go together does not say that one made the other.${small}${rare}`
}

const FACTS: Record<FactorName, string> = {
  type: 'the removal type',
  heat: 'the heat at the removal',
  queen: 'the queen at intake',
  brood: 'brood that came along',
  vacuum: 'the vacuum',
  hours: 'the hours to box',
}

/** Comparisons told of one fact at most; the rest stand in the table. */
const MOST_OF_A_FACT = 3

/**
 * The sentences of all findings: one a fact, whatever its groups, where its test finds nothing; else its clearest
 * comparisons. Example: 'These numbers do not show that losing goes with the removal type (one test for all 30 types, p =
 * 0.63); that is not proof that it does not.'
 */
export function findingLines({ findings, tests }: Findings): string[] {
  return tests.flatMap((t) => {
    const own = findings.filter((f) => f.factor === t.factor)
    if (own.length > 1 && t.holm >= 0.05)
      return [
        `These numbers do not show that losing goes with ${FACTS[t.factor]} (one test for all ${t.df + 1} groups, ${chance(t.holm)}); that is not proof that it does not.`,
      ]
    const clearest = [...own].sort((a, b) => (a.p ?? 1) - (b.p ?? 1))
    const rest = clearest.length - MOST_OF_A_FACT
    return [
      ...clearest.slice(0, MOST_OF_A_FACT).map(findingReading),
      ...(rest > 0 ? [`${rest} more comparisons by ${FACTS[t.factor]} stand in the table.`] : []),
    ]
  })
}

/** How the findings were made. */
export function findingsReading(f: Findings): string {
  if (f.findings.length === 0)
    return `Fewer than ${FEWEST_LOSSES} colonies were lost, or nothing differs between them: nothing can be said yet of what goes with losing.`
  const how = f.together
    ? 'Each fact is looked at with the others held equal.'
    : 'There are too few losses to hold the other facts equal: each fact is looked at alone, and may stand for another that goes with it.'
  return f.tests.length < 2 ? how : `${how} ${raisedReading(f.tests.length)}`
}

/** Said wherever several questions are asked of one set of colonies. Example: raisedReading(6). */
const raisedReading = (questions: number): string =>
  `Every p is raised for the ${questions} facts asked about (Holm): were none of them to matter, one in twenty such reviews would still find one that seems to. Limits are of each comparison by itself.`

/** Whether a comparison shows a difference that these numbers can carry: by its limits, and among all the facts asked about. */
export const isClear = (f: Finding): boolean =>
  f.lower !== null && f.upper !== null && (f.lower > 1 || f.upper < 1) && (f.holm ?? 1) < 0.05

const PATH_WORDS: Record<RecoveryPath, [one: string, many: string]> = {
  'own-queen': ['kept its own queen', 'kept their own queen'],
  'own-brood': ['raised a queen from its own brood', 'raised a queen from their own brood'],
  'egg-frame': ['raised a queen on a frame of eggs', 'raised a queen on a frame of eggs'],
  'given-cell': ['took a cell or virgin that was given', 'took a cell or virgin that was given'],
  'purchased-queen': ['took a purchased queen', 'took a purchased queen'],
  united: ['was united', 'were united'],
  lost: ['was lost before a queen was proven', 'were lost before a queen was proven'],
  'left-unproven': ['left without a proven queen', 'left without a proven queen'],
  'not-yet': ['is still open', 'are still open'],
}

/** Example: '12 colonies kept their own queen; worker brood proved her after 31 days in the middle case (16 to 44).' */
export function pathReading({ path, colonies, days }: PathCount): string {
  const words = PATH_WORDS[path][colonies === 1 ? 0 : 1]
  const lead = `${coloniesOf(colonies, '')} ${words}`
  if (days === null) return `${lead}.`
  const after =
    days.least === days.most
      ? `after ${days.median} days`
      : `after ${days.median} days in the middle case (${days.least} to ${days.most})`
  return days.colonies === colonies
    ? `${lead}; worker brood proved her ${after}.`
    : `${lead}; in ${days.colonies} of them worker brood had proved a queen before, ${after}.`
}

const some = (n: number, one: string, many: string, rest: string): string =>
  n === 0 ? '' : `${n} ${n === 1 ? one : many} ${rest}`

/** Example: 'Each of 20 colonies kept cost $31.50 for queens, $12.00 for feed and 4.1 hours, the costs of those not kept included.' */
export function moneyReading(m: MoneyReview, currency: string): string {
  if (m.ended === 0) return 'No stay is over yet, so nothing can be said of money for each colony kept.'
  if (m.perKept === null) return `None of ${coloniesOf(m.ended, '')} whose stay is over was kept.`
  const { perKept } = m
  const missing = [
    some(m.unpriced.queens, 'queen or cell', 'queens or cells', 'without a price'),
    some(m.unpriced.feed, 'feed', 'feeds', 'without a price'),
    some(m.unpriced.hours, 'removal', 'removals', 'without hours'),
  ].filter(Boolean)
  const note = missing.length > 0 ? ` Not in it: ${missing.join(', ')}.` : ''
  const each = (what: keyof typeof perKept): string => amount(what, perKept[what], currency)
  const who = m.kept === 1 ? 'The one colony kept' : `Each of ${m.kept} colonies kept`
  return `${who} cost ${each('queens')} for queens, ${each('feed')} for feed and ${each('hours')} hours, the costs of those not kept included.${note}`
}

/**
 * Example: 'Counting those still here for as long as they have stayed, half of 40 colonies leave the yard by day 34, a
 * quarter by day 30, three quarters by day 45.' Where none is still here it is a plain fact: '… had left …'.
 */
export function stayReading(s: YardStay): string {
  if (s.colonies === 0) return 'No colonies yet.'
  if (s.median.day === null)
    return `${s.left} of ${coloniesOf(s.colonies, '')} ${s.left === 1 ? 'has' : 'have'} left the yard so far: too few to say by which day half do.`
  const parts = [
    s.quarter.day === null ? '' : `a quarter by day ${s.quarter.day}`,
    s.threeQuarters.day === null ? '' : `three quarters by day ${s.threeQuarters.day}`,
  ].filter(Boolean)
  const rest = parts.length > 0 ? `, ${parts.join(', ')}` : ''
  const half =
    s.left === s.colonies ? 'Half' : 'Counting those still here for as long as they have stayed, half'
  const leave = s.left === s.colonies ? 'had left' : 'leave'
  return `${half} of ${coloniesOf(s.colonies, '')} ${leave} the yard by day ${s.median.day}${rest}.`
}
