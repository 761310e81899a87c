/** One part of a sheet as it was typed, held to what was there before, and saved. */
import { type AppContext, type PageDeps, signedIn } from '../../app/index.ts'
import { type FieldProblem, one, type Typed } from '../../forms/index.ts'
import { GRAVE, HAZARDS, isNewVisit, lastVisit, type Sheet, WHY_GONE } from '../../records/index.ts'
import { fractionOf } from '../../store/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { asksWhy, isOnlyTold, underGo, withReason } from './answered.ts'
import { heardOf, unheard } from './as-known.ts'
import { decide } from './decide-form.ts'
import { NOT_OPENED } from './fields.ts'
import { asksPrice, sheetTyped, typedPart, withPrice, withSwarm } from './form.ts'
import { foreseenToday, seenLately, tickedNow } from './form-hours.ts'
import { fallen } from './found-kept.ts'
import { goneField, goneFrom, stays, type Whys, whyFits, withNoted } from './grave.ts'
import { GRAVE_WORDS } from './hazard-words.ts'
import { withAgain, withHere } from './looked-again.ts'
import { freshOf, keepTyped, keptWords, nearIn } from './not-saved.ts'
import { ASKED, ofElsewhere, stamped } from './place.ts'
import { differing } from './sheet-facts.ts'
import { isElsewhere, momentNow, type Saved, stampOf, staysBy, stoodFor } from './sheet-handlers.ts'
import { showSheet } from './show.tsx'
import { withKnown } from './since-open.ts'
import { isShort, type Part } from './stage.ts'
import { ranOut } from './ticked-when.ts'
import { withNow } from './typed-now.ts'
import { clashOf, othersOf, startOf, stoodOn } from './view.ts'
import { isNext, withVisit } from './visit.ts'

/** Saves one part over the last version. Only if the same part has been changed meanwhile is there a clash. */
export function savePart(
  c: AppContext,
  deps: PageDeps,
  part: Part,
  saved: Saved,
  sent: Typed,
  ofPhotos: FieldProblem[],
): Response | Promise<Response> {
  const { last } = saved
  const came = { ...withAgain(sent), version: [String(versionIn(deps, saved, sent))] }
  // A tab that somebody else left open: what they tapped is not signed by whoever holds the phone now.
  const left = ['', signedIn(c)].includes(one(sent, 'shownTo')) ? '' : one(sent, 'shownTo')
  const shown =
    left === '' ? deps.store.removals.version(saved.id, Number(one(came, 'version')))?.sheet : undefined
  const now = withNow(
    c,
    deps,
    saved,
    part === 'check' ? seenLately(c, deps, last, shown, foreseenToday(c.var.frame, came)) : came,
  )
  const { typed, opens } = now
  if (shown === undefined) {
    // Whatever it showed, what was found is not lost; its ticks are of nobody knows what.
    const { done } = last.sheet.check
    const { sheet } = partTyped(c, deps, part, last.sheet, typed)
    const read = part === 'check' ? { ...sheet, check: { ...sheet.check, done } } : sheet
    keepTyped(c, deps, saved, { part, shown: last.sheet, read, typed })
    return unknownForm(c, deps, saved, part, { typed, sheet }, left)
  }
  const read = partTyped(c, deps, part, last.sheet, typed)
  const asked = stamped(read.sheet, shown, ASKED[part] ?? [], c.var.frame.today)
  const sheet = part === 'job' ? keepsUnasked(asked, shown, last.sheet, c.var.frame.today) : asked
  if (part === 'check') {
    sheet.site = nearIn(sheet)
    sheet.check = tickedNow(c, deps, sheet, shown, typed)
  }
  if (part === 'work') {
    sheet.work = withVisit(last.sheet, sheet, typed, c.var.frame.today).work
    if (!isNewVisit(last.sheet, sheet)) sheet.work = { ...sheet.work, ...arrivedStill(last.sheet, sheet) }
  }
  const whys = whysTyped(typed)
  const problems = [
    ...read.problems,
    ...now.problems,
    ...ofPhotos,
    ...goneProblems(last.sheet, sheet, whys, c.var.frame.today),
  ]
  const lost = (): Saved => {
    const over = partTyped(c, deps, part, shown, typed).sheet
    const read = part === 'check' ? { ...over, check: sheet.check } : over
    return keepTyped(c, deps, saved, { part, shown, read, typed })
  }
  if (problems.length > 0) {
    const fresh = lost()
    // A form of an older version keeps it, so that what somebody else changed is still shown.
    return one(typed, 'version') === String(last.version)
      ? again(c, deps, saved, part, typed, problems)
      : showSheet(c, deps, fresh, { part, typed, problems, kept: keptWords(last.sheet, fresh) })
  }
  const clash = clashOf(c, deps, part, saved, Number(one(typed, 'version')), sheet)
  // What somebody took off meanwhile is not ticked again by a form that did not know, nor is its heat put over a later one.
  const { outdoorC = [] } = typedPart('work', last.sheet, c.var.frame.units)
  const untapped = part === 'check' ? { done: [], wires: [] } : part === 'work' ? { outdoorC } : {}
  if (clash !== null) {
    const fresh = lost()
    const kept = keptWords(last.sheet, fresh)
    return showSheet(c, deps, fresh, { part, typed: { ...typed, ...untapped }, clash, kept })
  }

  const barred = opens ? barredFrom(c, deps, saved, sheet) : null
  const held = barred === null ? sheet : { ...sheet, work: notOpened(last.sheet, sheet) }
  const stood = stoodFor(c, deps, saved)
  const noted = fallen(c, deps, last.sheet, withNoted(last.sheet, held, whys, momentNow(c, deps), stood))
  const kept =
    opens && barred === null ? underGo(c, deps, noted) : withReason(c, deps, last.sheet, noted, typed)
  if (kept === null) {
    // What is told of may be told of a look.
    const told = isOnlyTold(c, deps, last.sheet, noted)
    const message = told
      ? 'is not said, and no “go” stands'
      : `is not said: ${asksWhy(c, deps, last.sheet, noted, typed)}`
    const problem = { field: 'withoutGo.why', message }
    const shows = told ? { ...typed, [NOT_OPENED]: [] } : typed
    lost()
    return again(c, deps, saved, part, shows, [problem])
  }
  const result = deps.store.removals.save(
    saved.id,
    last.version,
    withKnown(last.sheet, kept),
    stampOf(c, deps),
  )
  if (!result.ok) {
    const message = 'was saved by somebody else just now: save again'
    return showSheet(c, deps, saved, {
      part,
      typed,
      problems: 'problems' in result ? result.problems : [{ field: '', message }],
    })
  }
  // A tap that was refused leaves no hour behind.
  const unopened = {
    ...typed,
    openedAt: [isNext(last.sheet, c.var.frame.today) ? '' : (last.sheet.work.openedAt ?? '')],
  }
  if (barred !== null)
    return again(c, deps, saved, part, unopened, [{ field: 'openedAt', message: barred }], 'the opening')
  if (part === 'check' && one(typed, 'is') !== '') {
    const fresh = freshOf(deps, saved)
    const wrong = decide(c, deps, fresh, typed, last.sheet)
    if (wrong.length > 0) {
      // Whoever taps “Refuse” with no word for it leaves no “go”.
      const { sheet: stands } = fresh.last
      keepTyped(c, deps, fresh, { part, shown: stands, read: stands, typed })
      return again(c, deps, saved, part, typed, wrong, 'the decision')
    }
  }
  return c.redirect(nextAfter(saved.path, part, one(typed, 'next')), 303)
}

/** Who is about was asked on another day, so the form shows it untapped; where nobody taps it stays as it was, and is asked still. */
function keepsUnasked(s: Sheet, shown: Sheet, { site: was }: Sheet, today: string): Sheet {
  if (s.site.bystanders !== undefined || ofElsewhere(shown, ['bystanders'], today).length === 0) return s
  const { bystanders, lookedAt } = was
  if (bystanders === undefined) return s
  const at = lookedAt?.bystanders
  const looked = { ...s.site.lookedAt, ...(at === undefined ? {} : { bystanders: at }) }
  return { ...s, site: { ...s.site, bystanders, lookedAt: looked } }
}

/** The sheet with a part as it was typed, and with what is asked beside it: the price with the site, temper with a swarm, what is here too. */
function partTyped(
  c: AppContext,
  deps: PageDeps,
  part: Part,
  last: Sheet,
  typed: Typed,
): ReturnType<typeof sheetTyped> {
  const { units } = c.var.frame
  const read = sheetTyped(part, typed, units, last)
  if (part === 'check') {
    const all = isShort(last) ? both(read, withSwarm(read.sheet, typed, units)) : read
    return { ...all, sheet: withHere(all.sheet, typed, othersOf(c, deps, last, c.req.param('id'))) }
  }
  return asksPrice(part, last) ? both(read, withPrice(read.sheet, typed, units)) : read
}

const both = (read: ReturnType<typeof sheetTyped>, more: typeof read): typeof read => ({
  sheet: more.sheet,
  problems: [...read.problems, ...more.problems],
})

/** “Arrived” of a day is put right, and not taken off: what was tapped before it does not come to life again. */
function arrivedStill({ work: was }: Sheet, { work: is }: Sheet): Pick<Sheet['work'], 'arrivedAt'> {
  const { arrivedAt, on = is.on } = was
  return arrivedAt === undefined || is.arrivedAt !== undefined || (is.on ?? on) !== on ? {} : { arrivedAt }
}

/**
 * Not opened now: an earlier opening stays as it was. How hot it is stays, with its day, for a second person signs for exactly that; the
 * day of the tap alone does not.
 */
function notOpened(before: Sheet, after: Sheet): Sheet['work'] {
  const { openedAt: _, on, earlier, ...is } = after.work
  const comes = isNewVisit(before, after)
  const { work: was } = before
  if (comes && is.outdoorC === undefined)
    return { ...is, ...lastVisit(before), ...(was.earlier && { earlier: was.earlier }) }
  const { openedAt } = comes ? {} : was
  const day = openedAt === undefined && is.outdoorC !== undefined ? on : was.on
  return {
    ...is,
    ...(earlier && { earlier }),
    ...(openedAt && { openedAt }),
    ...(day && { on: day }),
  }
}

/** Why each thing is off the sheet, as far as it was tapped. */
const whysTyped = (typed: Typed): Whys =>
  Object.fromEntries(
    GRAVE.flatMap((what) => {
      const why = WHY_GONE.find((w) => w === one(typed, goneField(what)) && whyFits(what, w))
      return why === undefined ? [] : [[what, why]]
    }),
  )

/** The version that a form shows: a phone's is no whole number and is known by what it says, whatever number it was given here. */
function versionIn(deps: PageDeps, { id, versions }: Saved, typed: Typed): number {
  const shown = Number(one(typed, 'version'))
  const content = shown % 1
  const said = (version: number) => deps.store.removals.version(id, version)?.sheet
  return content === 0
    ? shown
    : (versions.find(({ version }) => fractionOf(said(version)) === content)?.version ?? shown)
}

/**
 * A form of a version that is not here (a phone keeps two): nobody knows what it showed, so what was seen is asked again, and what stands
 * there otherwise than in it is said. One of a later version was not changed since: it is this book that is behind.
 */
function unknownForm(
  c: AppContext,
  deps: PageDeps,
  saved: Saved,
  part: Part,
  { typed, sheet }: { typed: Typed; sheet: Sheet },
  left: string,
): Response | Promise<Response> {
  const { units, today } = c.var.frame
  const at = { units, today, currency: deps.store.settings.get('currency') }
  const { last } = saved
  const ahead = Math.floor(Number(one(typed, 'version'))) > Math.floor(last.version)
  const stands = differing(part, sheet, last.sheet, at).map(
    ([label, value]) => `${label}: ${value || 'empty'}`,
  )
  const blank = Object.fromEntries([...(ASKED[part] ?? []), 'done', 'wires'].map((field) => [field, []]))
  const since =
    left === '' ? 'The sheet was changed since this form was opened' : `This page was open for ${left}`
  const message = ahead
    ? 'This form is of a later version than is known here, and not all that stood on it is on this page. Open it anew with signal, or tap what is so now.'
    : `${since}: read it, and tap what is so now.${stands.length === 0 ? '' : ` It says now: ${stands.join('; ')}.`}`
  return again(c, deps, saved, part, { ...typed, ...blank }, [{ field: '', message }])
}

/** The same form again, over what has just been saved. `but`: all that was not. */
function again(
  c: AppContext,
  deps: PageDeps,
  saved: Saved,
  part: Part,
  typed: Typed,
  problems: FieldProblem[],
  but?: string,
): Response | Promise<Response> {
  const fresh = freshOf(deps, saved)
  const version = [String(fresh.last.version)]
  const kept = keptWords(saved.last.sheet, fresh, but)
  return showSheet(c, deps, fresh, { part, typed: { ...typed, version }, problems, kept })
}

/** Why the surface is not opened now; null where it may be. */
function barredFrom(c: AppContext, deps: PageDeps, { id, last }: Saved, sheet: Sheet): string | null {
  const { today, zone } = c.var.frame
  const late = ranOut(sheet, timeIn(zone, deps.clock()), last.sheet)
  if (!stoodOn(c, deps, sheet, today))
    return 'waits for “go”: decided today, with nothing on the list that holds it'
  if (late !== null) return `waits. ${late}`
  const deaf = unheard(heardOf(c, deps), sheet, timeIn(zone, deps.clock()))
  if (deaf !== null) return `waits. ${deaf}`
  const { start } = startOf(c, deps, sheet)
  if (staysBy(sheet, today).includes(signedIn(c)))
    return 'waits for somebody else: you signed that you stay and watch, and that takes two'
  const at = isElsewhere(deps, id, signedIn(c), today)
  if (at !== undefined) return `waits for somebody else: ${at}`
  return start.state === 'met' || start.state === 'signed' ? null : `waits. ${start.why}`
}

/** What can kill is not taken off by a tap: a hazard that is here only once its trade has cleared it, anything else with a reason. */
function goneProblems(before: Sheet, after: Sheet, whys: Whys, today: string): FieldProblem[] {
  const held = stays(before, after, today)
  return goneFrom(before, after).flatMap((what) => {
    if (held.some((h) => h === what))
      return [
        {
          field: (HAZARDS as readonly string[]).includes(what) ? 'hazards' : 'behind',
          message: `stays: “${GRAVE_WORDS[what]}” was seen here, and nothing is opened until its trade has been. Another place has a sheet of its own`,
        },
      ]
    return whys[what] === undefined
      ? [{ field: goneField(what), message: 'was on the sheet and can kill: say why it is off' }]
      : []
  })
}

const nextAfter = (path: string, part: Part, then: string): string => {
  if ((part === 'agreement' || part === 'site') && then === 'sign') return `${path}/sign`
  if (part === 'work' && then === 'intake') return `${path}/intake`
  return `${path}?saved=1#now`
}
