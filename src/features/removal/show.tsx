/** A sheet's page put together: what stands, what is open, what is unmet. */

import { type AppContext, type PageDeps, page, type SheetHistory, signedIn } from '../../app/index.ts'
import { type FieldProblem, type Typed, typedFields } from '../../forms/index.ts'
import { hasBegun, hasLostGo, isUnderWay, OF_VISIT, type Sheet, sheetName } from '../../records/index.ts'
import type { SheetVersion } from '../../store/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { instantWords } from '../../words/index.ts'
import { heardOf, unheard } from './as-known.ts'
import { stops } from './before-cut.ts'
import { HANGS, TEMPERED } from './fields.ts'
import { asksPrice, typedPart, withoutOldForecast } from './form.ts'
import { heatSince, isPast } from './heat-read.ts'
import { RemovalPage, type RemovalProps } from './page.tsx'
import type { Clash } from './page-foot.tsx'
import { ASKED, ofElsewhere, placeOf, samePlace } from './place.ts'
import { factsOf, saidAgain } from './sheet-facts.ts'
import { isElsewhere, type Saved } from './sheet-handlers.ts'
import { foundToClose } from './since-mark.ts'
import { sinceOpened } from './since-open.ts'
import { isOver, isShort, nextPart, PARTS, type Part, stageOf } from './stage.ts'
import { tickedTooEarly } from './ticked-when.ts'
import {
  boxNotes,
  callBackLines,
  colonyLinks,
  newSigners,
  othersOf,
  reckoningOf,
  startOf,
  typesOf,
} from './view.ts'
import { isNext, visitOf } from './visit.ts'
import { beganWithoutGo } from './without-go.ts'

interface Shown {
  /** The part that is open as a form. */
  part?: Part | null
  typed?: Typed
  problems?: FieldProblem[]
  clash?: Clash
  /** What is kept of a form that came back. */
  kept?: string | undefined
  older?: SheetVersion | null
  refused?: RemovalProps['refused']
  /** What was signed a moment ago, to be handed over. */
  signed?: RemovalProps['signed']
}

/** The part that is open when nobody asks for another: the next one. A “go” that no longer stands is decided again. */
export function openPart(c: AppContext, deps: PageDeps, saved: Saved): Part | null {
  const { sheet } = saved.last
  const stage = stageOf(sheet, saved.colonies.length)
  const { today } = c.var.frame
  if (stage === 'go' && !isUnderWay(sheet, today) && !startOf(c, deps, sheet).goes) return 'check'
  const next = nextPart(stage, sheet)
  return next === 'intake' ? 'work' : next
}

export function showSheet(
  c: AppContext,
  deps: PageDeps,
  saved: Saved,
  { part = null, typed, problems = [], clash, kept, older = null, refused = null, signed = null }: Shown,
): Response | Promise<Response> {
  const { frame } = c.var
  const sheet = older?.sheet ?? saved.last.sheet
  const currency = deps.store.settings.get('currency')
  const stage = stageOf(sheet, saved.colonies.length)
  const at = { units: frame.units, today: frame.today, currency }
  const reckoning = reckoningOf(c, deps, sheet)
  // Once it is open the list is done with, unless what stops it comes to light then.
  const opened =
    sheet.work.openedAt !== undefined &&
    // On another day heat, people and ticks are asked again, and the list is there.
    (sheet.work.boxedAt !== undefined || isUnderWay(sheet, frame.today))
  const stopped = reckoning.unmet.some(stops)
  const toClose = stage === 'boxed' || sheet.work.boxedAt !== undefined ? foundToClose(reckoning, sheet) : []
  const out =
    (isOver(stage) && toClose.length === 0) ||
    (stage === 'worked' && !stopped) ||
    (opened && !stopped && !beganWithoutGo(sheet) && !hasLostGo(sheet))
  const version = [String(saved.last.version)]
  const history = deps.history?.(c, saved.id)
  const heard = heardOf(c, deps)
  const start = startOf(c, deps, sheet)
  const begins = stage === 'go' && start.goes && !isUnderWay(sheet, frame.today)
  const deaf = begins ? unheard(heard, sheet, timeIn(frame.zone, deps.clock())) : null
  const form = {
    typed: {
      ...(typed ?? filled(c, deps, part, saved, sheet)),
      version: versionOf(typed, clash, version),
      // What is tapped in a form that came back was seen when it was first shown.
      shownAt: [(clash === undefined && typed?.shownAt?.[0]) || timeIn(frame.zone, deps.clock())],
    },
    problems,
  }
  return page(
    c,
    <RemovalPage
      frame={frame}
      path={saved.path}
      name={sheetName(sheet)}
      sheet={sheet}
      stage={stage}
      parts={PARTS.map((p) => ({ part: p, facts: factsOf(p, sheet, at), photos: photosOf(p, sheet) }))}
      reckoning={out ? null : isOver(stage) ? { ...reckoning, unmet: toClose.map((x) => x.item) } : reckoning}
      since={
        older === null
          ? sinceOpened(
              sheet,
              stage,
              { found: toClose, boxes: boxNotes(deps, saved.colonies) },
              frame,
              history,
            )
          : []
      }
      aside={setAside(sheet, history)}
      changed={history?.changedAtFall() ?? []}
      elsewhere={
        part === 'check' || (part === 'work' && !hasBegun(sheet))
          ? isElsewhere(deps, saved.id, signedIn(c), frame.today)
          : undefined
      }
      {...start}
      {...(deaf === null ? {} : { goes: false, late: deaf })}
      open={part === null || older !== null ? null : { part, form }}
      refused={refused}
      signed={signed}
      heard={heard}
      clash={clash ?? null}
      kept={kept}
      colonies={colonyLinks(deps, saved.colonies)}
      versions={saved.versions.map((v) => ({
        version: v.version,
        by: v.savedBy,
        when: instantWords(v.savedAt, frame.zone, frame.today),
      }))}
      older={older === null ? null : { version: older.version, last: saved.last.version }}
      newSigners={newSigners(c, deps, sheet)}
      saved={c.req.query('saved') === '1'}
      others={isOver(stage) ? [] : othersOf(c, deps, sheet, saved.id)}
      types={typesOf(deps)}
      currency={currency}
      callBacks={callBackLines(sheet, frame.today)}
    />,
    clash !== undefined ? 409 : problems.length > 0 || refused !== null ? 422 : 200,
  )
}

/** A form that came back keeps the version it was made from, unless a clash was shown: then it is saved over that one. */
const versionOf = (typed: Typed | undefined, clash: Clash | undefined, last: string[]): string[] =>
  clash !== undefined || typed === undefined ? last : (typed.version ?? last)

const photosOf = (part: Part, s: Sheet): readonly string[] =>
  (part === 'job' || part === 'site' || part === 'work' ? s[part].photos : undefined) ?? []

/** What was only looked for again for a decision, and by whom: as far as nobody knows, by who decided with it in the form. */
const setAside = ({ check, decision: d }: Sheet, history?: SheetHistory): string[] =>
  d === undefined || check.doneOn !== d.on
    ? []
    : saidAgain(check).map((said) => {
        const by = history?.asideBy(said, d.on) ?? d.by
        return said.startsWith('the same')
          ? `“${said}” tapped by ${by}`
          : `“${said}” set aside by ${by}, not cleared`
      })

/** The part as it stands; in what nobody has filled yet, what is likely: the day, and the price used last. */
function filled(c: AppContext, deps: PageDeps, part: Part | null, saved: Saved, s: Sheet): Typed {
  if (part === null) return {}
  const { frame } = c.var
  const typed = typedPart(part, part === 'check' ? withoutOldForecast(s, frame.today) : s, frame.units)
  // What was looked for, or asked, at another place is asked here.
  for (const what of ofElsewhere(s, ASKED[part] ?? [], frame.today)) typed[what] = []
  const lately = deps.store.removals.list().map((v) => v.sheet)
  if (asksPrice(part, s) || (part === 'agreement' && s.agreement.pricing === undefined)) {
    const hourly = lately.find((x) => x.agreement.hourly !== undefined)?.agreement.hourly
    if (hourly !== undefined) typed.hourly = [String(hourly)]
  }
  if (part === 'check') {
    // What was so on another day is asked anew, heat too.
    if (
      s.check.doneOn !== frame.today ||
      !samePlace(s.check.doneAt ?? {}, placeOf(s)) ||
      (!isUnderWay(s, frame.today) && tickedTooEarly(s, timeIn(frame.zone, deps.clock())))
    )
      Object.assign(typed, { done: [], wires: s.site.nearWires === true ? ['near'] : [] })
    if (isShort(s)) Object.assign(typed, typedFields({ ...TEMPERED, ...HANGS }, s.site, frame.units))
  }
  if (part === 'work' && s.work.openedAt === undefined) {
    // How hot it is now is asked now; only what a second person is to sign for stands until they have.
    const { state } = startOf(c, deps, s).start
    const old = isPast(heatSince(c, deps, saved.id, saved, s), timeIn(frame.zone, deps.clock()))
    if (old || (state !== 'unmet' && state !== 'signed')) typed.outdoorC = []
  }
  if (part === 'work') {
    typed.visit = [String(visitOf(s, frame.today))]
    // What stands is of another visit.
    if (isNext(s, frame.today)) for (const said of ['on', ...OF_VISIT]) typed[said] = []
    // Planned for a day is not begun on it.
    if (typed.on?.[0] === undefined || !hasBegun(s)) typed.on = [frame.today]
  }
  return typed
}
