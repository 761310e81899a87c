/** What comes onto a sheet stays on it, and a “go” that it takes the ground from falls, whatever else the form is refused for. */
import type { AppContext, PageDeps } from '../../app/index.ts'
import { hasBegun, type Sheet } from '../../records/index.ts'
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
  if (stoodOn(c, deps, after, decision.on) && !grewTooHot(c, deps, before, after)) return after
  return { ...after, decision: { ...decision, fell: whoAndWhen(c, deps) } }
}

/**
 * A form that is refused for what it takes off loses nothing that it brings: live wires that were tapped beside an insulation that was
 * left out are on the sheet, and no “go” stands over them.
 */
export function keepFound(c: AppContext, deps: PageDeps, { id, last }: Saved, { job, site }: Sheet): void {
  const { sheet } = last
  const added: Sheet = {
    ...sheet,
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

/** What is there with what is new; nothing where nothing is new. */
function addedTo<K extends string, T>(
  key: K,
  had: T[] | undefined,
  now: T[] | undefined,
): { [k in K]?: T[] } {
  const fresh = (now ?? []).filter((x) => had?.includes(x) !== true)
  return fresh.length === 0 ? {} : ({ [key]: [...(had ?? []), ...fresh] } as { [k in K]?: T[] })
}
