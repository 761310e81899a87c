/** Call-backs counted by removal type, for the season's review: which kinds of removal bring people back. */
import { CALL_BACKS, type CallBack, type Sheet } from '../../records/index.ts'
import { beganWithoutGo } from './without-go.ts'

export interface CallBackCount {
  /** A removal type, or 'unsaid'. */
  type: string
  /** Jobs of that type that were carried out. */
  jobs: number
  /** Jobs of them with at least one call-back. */
  withCallBack: number
  /** Jobs of them that were begun without a “go”. */
  withoutGo: number
  byWhat: Record<CallBack['what'], number>
}

/** By removal type, most jobs first. Only jobs that were carried out count: bees were boxed, or work was written down. */
export function callBacksByType(
  jobs: readonly { sheet: Sheet; colonies: readonly string[] }[],
): CallBackCount[] {
  const counts = new Map<string, CallBackCount>()
  for (const { sheet, colonies } of jobs) {
    if (colonies.length === 0 && sheet.work.boxedAt === undefined) continue
    const type = sheet.site.type ?? 'unsaid'
    const none = Object.fromEntries(CALL_BACKS.map((what) => [what, 0])) as CallBackCount['byWhat']
    const count = counts.get(type) ?? { type, jobs: 0, withCallBack: 0, withoutGo: 0, byWhat: none }
    count.jobs++
    if (beganWithoutGo(sheet, colonies.length)) count.withoutGo++
    if ((sheet.callBacks ?? []).length > 0) count.withCallBack++
    for (const { what } of sheet.callBacks ?? []) count.byWhat[what]++
    counts.set(type, count)
  }
  return [...counts.values()].sort((a, b) => b.jobs - a.jobs || (a.type < b.type ? -1 : 1))
}
