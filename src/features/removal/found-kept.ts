/** What comes onto a sheet stays on it, and a “go” that it takes the ground from falls, whatever else the form is refused for. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { hasBegun, type Sheet } from '../../records/index.ts'
import { isOtherwise } from './as-read.ts'
import { refusedBefore } from './decide.ts'
import { withNoted } from './grave.ts'
import { momentNow, type Saved, stampOf } from './sheet-handlers.ts'
import { startOf, stoodOn } from './view.ts'

/** Who writes this, and when. */
export const whoAndWhen = (c: AppContext, deps: PageDeps) => {
  const { writtenAt: _, ...moment } = momentNow(c, deps)
  return moment
}

/** Open, not boxed, and hotter now than anybody may cut in, with no second person’s name under it. */
function grewTooHot(c: AppContext, deps: PageDeps, before: Sheet, after: Sheet): boolean {
  const { today } = c.var.frame
  const open = hasBegun(before) && before.work.boxedAt === undefined && after.work.on === today
  return open && startOf(c, deps, after).start.state === 'unmet'
}

/** A “go” that a change takes the ground from does not come back by itself: it is decided anew. */
export function fallen(c: AppContext, deps: PageDeps, before: Sheet, after: Sheet): Sheet {
  const { decision } = after
  if (decision === undefined || !stoodOn(c, deps, before, decision.on)) return after
  const stands = stoodOn(c, deps, after, decision.on) && !isOtherwise(before, after)
  if (stands && !grewTooHot(c, deps, before, after)) return after
  return { ...after, decision: { ...decision, fell: whoAndWhen(c, deps) } }
}

/**
 * A form that is refused for what it takes off loses nothing that it brings: live wires that were tapped beside an insulation that was
 * left out are on the sheet, and no “go” stands over them.
 */
export function keepFound(
  c: AppContext,
  deps: PageDeps,
  { id, last }: Pick<Saved, 'id' | 'last'>,
  { job, site, decision }: Pick<Sheet, 'job' | 'site' | 'decision'>,
): void {
  const { sheet } = last
  const added: Sheet = {
    ...sheet,
    ...heldBack(sheet.decision, decision, whoAndWhen(c, deps)),
    job: job.bees === 'wasps' || job.bees === 'unsure' ? { ...sheet.job, bees: job.bees } : sheet.job,
    site: {
      ...sheet.site,
      ...addedTo('behind', sheet.site.behind, site.behind),
      ...addedTo('hazards', sheet.site.hazards, site.hazards),
      ...addedTo('bystanders', sheet.site.bystanders, site.bystanders),
      ...(site.nearWires === true ? { nearWires: true as const } : {}),
    },
  }
  if (JSON.stringify(added) === JSON.stringify(sheet)) return
  const noted = withNoted(sheet, added, {}, momentNow(c, deps))
  deps.store.removals.save(id, last.version, fallen(c, deps, sheet, noted), stampOf(c, deps))
}

/** Somebody refuses, or has it wait, while another one's “go” stands: it falls, and who decides anew reads why. */
function heldBack(
  go: Sheet['decision'],
  mine: Sheet['decision'],
  fell: ReturnType<typeof whoAndWhen>,
): Pick<Sheet, 'decision'> {
  if (go?.is !== 'go' || go.fell !== undefined || mine === undefined || mine.is === 'go') return {}
  const over = refusedBefore(mine, go.by)
  return { decision: { ...go, fell, ...(over === undefined ? {} : { over }) } }
}

/** What a phone found since the version that it was made from: what a colleague took off meanwhile does not come back by it. */
export const foundSince = (
  known: Sheet,
  { job, site, decision }: Sheet,
): Parameters<typeof keepFound>[3] => ({
  job: job.bees === known.job.bees ? {} : job,
  site: {
    ...fresh('behind', known.site.behind, site.behind),
    ...fresh('hazards', known.site.hazards, site.hazards),
    ...fresh('bystanders', known.site.bystanders, site.bystanders),
    ...(site.nearWires === true && known.site.nearWires !== true ? { nearWires: true as const } : {}),
  },
  ...(decision === undefined || JSON.stringify(decision) === JSON.stringify(known.decision)
    ? {}
    : { decision }),
})

const fresh = <K extends string, T>(key: K, had: T[] | undefined, now: T[] | undefined) =>
  ({ [key]: (now ?? []).filter((x) => had?.includes(x) !== true) }) as { [k in K]?: T[] }

/** What is there with what is new; nothing where nothing is new. */
function addedTo<K extends string, T>(
  key: K,
  had: T[] | undefined,
  now: T[] | undefined,
): { [k in K]?: T[] } {
  const came = fresh(key, had, now)[key] ?? []
  return came.length === 0 ? {} : ({ [key]: [...(had ?? []), ...came] } as { [k in K]?: T[] })
}
