/** A sheet that a phone or a program sends is held to what the pages hold it to: nothing gets in that no form would take. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { signedIn } from '../../app/index.ts'
import { dayIn } from '../../days.ts'
import type { Problem } from '../../journal/index.ts'
import {
  beginsIn,
  type Decision,
  type Grave,
  hasLostGo,
  type Noted,
  type Sheet,
  unfallen,
  type WithoutGo,
  withMark,
} from '../../records/index.ts'
import type { SavedSheet } from '../../store/index.ts'
import { timeIn } from '../../time-of-day.ts'
import { isOtherwise } from './as-read.ts'
import { beforeCut, type Reckoning } from './before-cut.ts'
import { clearanceProblems, decisionProblems, refusedBefore, unmetWords } from './decide.ts'
import { whoAndWhen } from './found-kept.ts'
import { goneFrom, stays, whyFits } from './grave.ts'
import { GRAVE_WORDS, HAZARD_WORDS } from './hazard-words.ts'
import { hazardsFound } from './hazards.ts'
import { HEAT_AT_START } from './heat.ts'
import { heatSince, isPast } from './heat-read.ts'
import { placeOf, samePlace } from './place.ts'
import { secondProblems } from './second.ts'
import { isOfAnotherJob, knownAt, momentNow } from './sheet-handlers.ts'
import { blanksNow, reckoningOf, stoodOn, wentAhead } from './view.ts'
import { showsIn } from './words.ts'

/**
 * Why a sheet is not taken: a “go” over what holds it, a crew that clears itself, one person as two, a signature under
 * blanks. Only what is new since `known` is judged: what the server has, it has judged.
 */
export function sentProblems(
  c: AppContext,
  deps: PageDeps,
  known: Sheet,
  sent: Sheet,
  found: SavedSheet | null,
  /** The sheet’s id, photos that it names and that have not come, and whether its decision is asked about, and stands over nobody’s yet. */
  { id, absent, asks }: { id: string; absent: ReadonlySet<string>; asks: boolean },
): string[] {
  const { today } = c.var.frame
  const people = knownAt(c, deps, sent, found)
  const reckoned = (day: string): Reckoning =>
    beforeCut(sent, deps.store.protocol(), showsIn(c.var.frame.units), day)
  const said: string[] = []
  for (const x of fresh(known.check.clearances, sent.check.clearances)) {
    const about = `The clearance of “${HAZARD_WORDS[x.hazard]}”`
    said.push(...lines(about, clearanceProblems(x, sent, people, today)))
    if (x.photo !== undefined && absent.has(x.photo)) said.push(`${about}: its photo has not come`)
    if (x.photo !== undefined && isOfAnotherJob(deps, id, x.photo))
      said.push(`${about}: its photo is of another job`)
  }
  for (const x of fresh(known.check.seconds, sent.check.seconds)) {
    const about = `The second person for “${x.of}”`
    // Only this server hears a passphrase, and then it knows the line.
    if (x.account === true) said.push(`${about}: an account is confirmed with its passphrase, with signal`)
    said.push(...lines(about, secondProblems(x, sent, people)))
    if (x.on > today) said.push(`${about}: the day is in the future`)
    if (!isSignable(x.item, reckoned(x.on))) said.push(`${about}: no second person can sign for that`)
  }
  // What will be so tomorrow, nobody has seen.
  if (Object.values(sent.site.lookedAt ?? {}).some((at) => at?.on !== undefined && at.on > today))
    said.push(`What was looked at ${AHEAD}. Look again`)
  if (sent.check.doneOn !== undefined && sent.check.doneOn > today)
    said.push(`What was ticked ${AHEAD}. Tap again what is so now, and how hot it gets`)
  const { decision } = sent
  // Whoever finds gas lets a colleague's “go” fall, and decides nothing.
  const fellOnly =
    decision?.fell !== undefined &&
    [known, found?.last.sheet].some((s) => key(unfallen(decision)) === key(unfallen(s?.decision)))
  if (decision !== undefined && !fellOnly && key(decision) !== key(known.decision)) {
    if (decision.on > today) said.push(`The decision ${AHEAD}. Decide again`)
    if (decision.is === 'go' && decision.at === undefined) said.push('The decision has no hour')
    if (decision.by !== signedIn(c)) said.push('The decision is signed by somebody else than who sends it')
    // One that fell on the phone stands over nothing, and says so.
    if (decision.fell === undefined) {
      const over = asks ? undefined : refusedBefore(found?.last.sheet.decision, decision.by)
      // One's own is asked about where it is tapped; of two of one person the later one stands.
      const judged = { ...decision, ...(over === undefined || over.by === decision.by ? {} : { over }) }
      said.push(...lines('The decision', decisionProblems(judged, reckoned(decision.on), sent)))
      if (decision.is === 'go' && !samePlace(decision, placeOf(sent)))
        said.push('The decision is for another place than the sheet')
    }
  }
  if (fresh(known.site.noted, sent.site.noted).some((n) => n.by !== signedIn(c)))
    said.push('What came onto the sheet or went off it is signed by somebody else than who sends it')
  said.push(...begunProblems(c, deps, { id, known, sent, found }))
  const signed = sent.agreement.signature
  if (signed !== undefined && key(signed) !== key(known.agreement.signature))
    if (signed.terms.includes('____') || blanksNow(c, deps, sent).length > 0)
      said.push('The agreement: nothing is signed blank')
  return said
}

/** Work that was begun without a “go” is kept with a name and a reason, and not otherwise. */
function begunProblems(
  c: AppContext,
  deps: PageDeps,
  { id, known, sent, found }: { id: string; known: Sheet; sent: Sheet; found: SavedSheet | null },
): string[] {
  const { work, decision } = sent
  const { today } = c.var.frame
  const because = work.withoutGo
  const here = found?.last.sheet ?? known
  if (because !== undefined && ![known, here].some((s) => isOfOne(because, s.work.withoutGo)))
    return because.by === signedIn(c) && because.on <= today
      ? []
      : [
          'What was begun without a “go” is signed by somebody else than who sends it, or of a day that has not come',
        ]
  // What began here was judged when it came.
  if (!beginsIn(known, sent) || !beginsIn(here, sent)) return []
  const day = work.on ?? decision?.on ?? today
  const { underGo } = work
  const when = (x: { on: string; at: string }): string => `${x.on} ${x.at}`
  const stood =
    decision?.fell === undefined
      ? wentAhead(c, deps, known, sent, day)
      : underGo?.by === signedIn(c) && underGo.on === decision.on && when(underGo) <= when(decision.fell)
  // No form has taken it that was shown at the time: what stood here for over an hour was not read then.
  const past =
    underGo === undefined &&
    found !== null &&
    work.openedAt !== undefined &&
    work.outdoorC === here.work.outdoorC &&
    isPast(heatSince(c, deps, id, found, here), work.openedAt)
  return day <= today && stood && !past
    ? []
    : ['It was begun without a “go”: say why on the page of the removal']
}

const AHEAD = 'is of a day that has not come: the phone’s clock was ahead'

/** One mark, whatever came onto its list since. */
const isOfOne = (a: WithoutGo, b: WithoutGo | undefined): boolean =>
  b !== undefined && key({ ...a, unmet: [], more: [] }) === key({ ...b, unmet: [], more: [] })

/** Hazards only a trade clears, and items that a reason is enough for, have no second person. */
const isSignable = (item: string, { items }: Reckoning): boolean =>
  item === HEAT_AT_START || items.some((i) => i.id === item && i.weight === 'second')

const lines = (about: string, problems: readonly Problem[]): string[] =>
  problems.map((p) => `${about} ${p.message}`)

const key = (x: unknown): string => JSON.stringify(x) ?? ''

function fresh<T>(known: readonly T[] | undefined, sent: readonly T[] | undefined): T[] {
  const had = new Set((known ?? []).map(key))
  return (sent ?? []).filter((x) => !had.has(key(x)))
}

/** What was taken off with no word, or against the rules; nothing where all of it was said. `known`: what it was made from. */
export function goneUnsaid(last: Sheet, merged: Sheet, known: Sheet, today: string): string[] {
  // What its trade cleared on the same phone counts.
  const before: Sheet = { ...last, check: { ...last.check, clearances: merged.check.clearances ?? [] } }
  const said = fresh(last.site.noted, merged.site.noted).filter(
    (n) => n.is === 'gone' && n.why !== undefined && whyFits(n.what, n.why) && !isBackSince(n),
  )
  /** They left at eight, and somebody wrote at half past nine that they are back: the phone had not read that. */
  function isBackSince(n: Noted): boolean {
    const found = fresh(known.site.noted, last.site.noted).findLast(
      (x) => x.what === n.what && x.is === 'found',
    )
    return found !== undefined && `${found.on} ${found.at}` > `${n.on} ${n.at}`
  }
  const held: readonly Grave[] = stays(before, merged, today)
  return goneFrom(last, merged)
    .filter((what) => held.includes(what) || !said.some((n) => n.what === what))
    .map((what) => GRAVE_WORDS[what])
}

/** What the server has seen stays: lines of what came and went, why something was begun, that somebody refused. */
export function withKept(last: Sheet, merged: Sheet): Sheet {
  const noted = [...(last.site.noted ?? []), ...fresh(last.site.noted, merged.site.noted)].slice(-80)
  const [was, is] = [last.work.withoutGo, merged.work.withoutGo]
  const more = was !== undefined && is !== undefined && isOfOne(is, was) ? is : was
  const words = [...(was?.more ?? []), ...fresh(was?.more, more?.more)].slice(-40)
  const why =
    was === undefined
      ? is
      : {
          ...was,
          unmet: [...was.unmet, ...fresh(was.unmet, more?.unmet)].slice(-40),
          ...(words.length === 0 ? {} : { more: words }),
        }
  const near = last.site.nearWires === true || merged.site.nearWires === true || merged.check.wires === 'near'
  const d = merged.decision ?? last.decision
  const over =
    d === undefined || key(d) === key(last.decision) ? undefined : refusedBefore(last.decision, d.by)
  return {
    ...merged,
    ...(d === undefined ? {} : { decision: over === undefined ? d : { ...d, over } }),
    site: {
      ...merged.site,
      ...(near ? { nearWires: true as const } : {}),
      ...(noted.length === 0 ? {} : { noted }),
    },
    work: { ...merged.work, ...(why === undefined ? {} : { withoutGo: why }) },
  }
}

/**
 * A clearance names no hazard as known that is not on the sheet, and nothing is of an hour that has not come: what a phone sends proves
 * nothing beyond that. `on`, `at`: now, in the yard's time.
 */
export function honest(sheet: Sheet, now: string, { on, at }: { on: string; at: string }): Sheet {
  const { check, decision: d } = sheet
  const ahead = check.doneOn === on && check.tickedAt !== undefined && check.tickedAt > at
  const s: Sheet = {
    ...sheet,
    ...(ahead ? { check: { ...check, tickedAt: at } } : {}),
    ...(d?.on === on && d.at !== undefined && d.at > at ? { decision: { ...d, at } } : {}),
  }
  if (s.check.clearances === undefined) return s
  const found = hazardsFound(s)
  const clearances = s.check.clearances.map((c) => ({
    ...c,
    knew: c.knew.filter((h) => found.includes(h)),
    // A clock that is ahead makes nothing newer than it is.
    ...(c.writtenAt !== undefined && c.writtenAt > now ? { writtenAt: now } : {}),
  }))
  return { ...s, check: { ...s.check, clearances } }
}

/**
 * A “go” that does not stand over what both sides know, or another sheet of the house, fell: it does not come back when something else
 * is cleared. `read`: the sheet on which it was said; `before`: as it stood here. Of bees that were boxed, a “go” that stands no more for
 * all that is asked since does not fall over a note: it is kept as it was, as by a form.
 */
export function fallenNow(
  c: AppContext,
  deps: PageDeps,
  s: Sheet,
  id: string,
  { read, before }: { read: Sheet; before: Sheet },
): Sheet {
  const { decision: d } = s
  if (d?.is !== 'go' || d.fell !== undefined) return s
  const isDone = read === before && before.work.boxedAt !== undefined
  if (isDone && !stoodOn(c, deps, before, d.on, id)) return s
  if (!isOtherwise(read, s) && stoodOn(c, deps, s, d.on, id) && !isOfBefore(d, deps, c.var.frame.zone))
    return s
  const { writtenAt: _, ...fell } = momentNow(c, deps)
  return { ...s, decision: { ...d, fell } }
}

/** Another box came of it whose “go” has fallen: the job is marked, as it is by a form. */
export function withBoxes(c: AppContext, deps: PageDeps, before: Sheet, s: Sheet, id: string): Sheet {
  const more = s.boxes?.some((box) => before.boxes?.includes(box) !== true) === true
  return more && hasLostGo(s)
    ? withMark(s, { ...whoAndWhen(c, deps), unmet: unmetWords(reckoningOf(c, deps, s, id)).slice(0, 40) })
    : s
}

/** Decided before the book went back to a backup: what was found in between is not in it. */
function isOfBefore({ on, at = '' }: Decision, deps: PageDeps, zone: string): boolean {
  const back = deps.store.settings.get('setBack')
  if (back === null) return false
  const then = new Date(back)
  return `${on} ${at}` < `${dayIn(zone, then)} ${timeIn(zone, then)}`
}
