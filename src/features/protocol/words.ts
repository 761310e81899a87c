/** The protocol in words: its thresholds, its windows, and what a change moved. */

import {
  ANCHOR_OF,
  MONTHS,
  type Month,
  type PreviewTotals,
  type Protocol,
  type ProtocolOverrides,
  protocolWith,
  RULES,
  type Rule,
  type Window,
} from '../../recovery/index.ts'
import { depth, MONTH_NAMES, plain, RULE_WORDS, temperature, type Units } from '../../words/index.ts'

export const NUMBERS = [
  'holdDays',
  'minFramesOfBees',
  'miteThreshold',
  'miteWashValidDays',
  'diseaseLookValidDays',
  'heatLimitC',
  'cutMarginMm',
] as const
export type NumberSetting = (typeof NUMBERS)[number]

export const SETTING_WORDS: Record<NumberSetting, { label: string; says: string; unit: string }> = {
  holdDays: { label: 'Hold', says: 'A colony stays at least so long.', unit: 'days' },
  minFramesOfBees: {
    label: 'Least strength',
    says: 'Under it: unite or boost, and not ready to move out.',
    unit: 'frames of bees',
  },
  miteThreshold: {
    label: 'Mites, too many from',
    says: 'A wash with so many or more: not ready to move out.',
    unit: 'per 100 bees',
  },
  miteWashValidDays: {
    label: 'A mite wash counts for',
    says: 'Older than that, wash again before moving out.',
    unit: 'days',
  },
  diseaseLookValidDays: {
    label: 'A look for brood disease counts for',
    says: 'Older than that, look again before moving out.',
    unit: 'days',
  },
  heatLimitC: { label: 'Heat limit at removals', says: 'Above it nothing is cut out.', unit: '' },
  cutMarginMm: {
    label: 'Cutting margin',
    says: 'A cut goes no deeper than the sheathing and this.',
    unit: '',
  },
}

/** 'April, May', in the order of the year; 'not said' for none. */
const monthsWords = (months: readonly Month[]): string =>
  months.length === 0
    ? 'not said'
    : MONTHS.filter((m) => months.includes(m))
        .map((m) => MONTH_NAMES[m])
        .join(', ')

/** What a window counts from. */
export const ANCHOR: Record<Rule | 'salvagedQueenRelease', string> = {
  ...ANCHOR_OF,
  salvagedQueenRelease: 'the day her own queen was caged',
}

/** 'opens +4, due +5, closes +7' */
export const windowWords = (w: Window): string => `opens +${w.opens}, due +${w.due}, closes +${w.closes}`

export function settingValue(key: NumberSetting, p: Protocol, units: Units): string {
  if (key === 'heatLimitC') return temperature(p.heatLimitC, units)
  if (key === 'cutMarginMm') return depth(p.cutMarginMm, units)
  return `${plain(p[key])} ${SETTING_WORDS[key].unit}`
}

/** Every difference between two sets of overrides, 'Hold: 30 days, now 40 days'. */
export function differences(before: ProtocolOverrides, after: ProtocolOverrides, units: Units): string[] {
  const [a, b] = [protocolWith(before), protocolWith(after)]
  const lines = NUMBERS.flatMap((key) => {
    const [was, is] = [settingValue(key, a, units), settingValue(key, b, units)]
    return was === is ? [] : [`${SETTING_WORDS[key].label}: ${was}, now ${is}`]
  })
  for (const m of MONTHS) {
    const [was, is] = [a.miteThresholdByMonth[m], b.miteThresholdByMonth[m]]
    if (was !== is)
      lines.push(
        `Mites in ${MONTH_NAMES[m]}: ${was ?? 'as in the rest of the year'}, now ${is ?? 'as in the rest of the year'}`,
      )
  }
  const [mated, mates] = [monthsWords(a.matingMonths), monthsWords(b.matingMonths)]
  if (mated !== mates) lines.push(`Months in which queens mate: ${mated}, now ${mates}`)
  const windows = (name: string, x: Window, y: Window): void => {
    if (windowWords(x) !== windowWords(y)) lines.push(`${name}: ${windowWords(x)}; now ${windowWords(y)}`)
  }
  windows('Look to her own queen’s cage', a.salvagedQueenRelease, b.salvagedQueenRelease)
  for (const rule of RULES) windows(RULE_WORDS[rule].name, a.windows[rule], b.windows[rule])
  return lines
}

const colonies = (n: number, one: string, more: string): string =>
  n === 1 ? `1 colony${one}` : `${n} colonies${more}`

/** '3 colonies’ checks move; 1 becomes late.' */
export function totalsWords(t: PreviewTotals): string {
  if (t.changed === 0)
    return `Nothing moves: the plans of all ${t.colonies} colonies in the yard stay as they are.`
  const parts = [
    t.checksMove === 0 ? '' : colonies(t.checksMove, '’s checks move', '’ checks move'),
    t.becomeLate === 0 ? '' : t.becomeLate === 1 ? '1 becomes late' : `${t.becomeLate} become late`,
    t.noLongerLate === 0
      ? ''
      : t.noLongerLate === 1
        ? '1 is no longer late'
        : `${t.noLongerLate} are no longer late`,
    t.otherAdvice === 0 ? '' : colonies(t.otherAdvice, ' gets another advice', ' get another advice'),
    t.readiness === 0 ? '' : `the day of leaving moves for ${t.readiness}`,
  ].filter(Boolean)
  const same = t.colonies - t.changed
  return `${parts.join('; ')}. ${same === 0 ? 'No plan stays as it is' : `${same} of ${t.colonies} colonies stay as they are`}.`
}
