/** The call: one tap says what is seen, which is a removal type, or why it is none; and what of the site is told already. */
import type { Job, Sheet, Site } from '../../records/index.ts'
import { TRIAGE } from './fields.ts'

/** What was tapped of `what` as the sheet keeps it: bees, and a type where it is one. */
function whatSeen(what: string | undefined): { bees?: Job['bees']; type?: string } {
  if (what === undefined) return {}
  if (what === 'unsure' || what === 'wasps') return { bees: what }
  return { bees: what === 'swarm' ? 'swarm' : 'nest', type: what }
}

/** The answer that stands in the form. */
const whatShown = ({ job, site }: Sheet): string | undefined =>
  site.type ?? (job.bees === 'unsure' || job.bees === 'wasps' ? job.bees : undefined)

const AT_THE_CALL = ['type', ...Object.keys(TRIAGE)] as (keyof Site)[]

const pick = (from: object, which: (key: string) => boolean): object =>
  Object.fromEntries(Object.entries(from).filter(([key]) => which(key)))
const isOfCall = (key: string): boolean => (AT_THE_CALL as string[]).includes(key)

/** What the call's form holds, as one: the job and what is told of the site. */
export const callOf = (s: Sheet): object => {
  const what = whatShown(s)
  return { ...s.job, ...pick(s.site, isOfCall), ...(what === undefined ? {} : { what }) }
}

/** The sheet with a call's answers put where they belong; the rest of the site stays. */
export function withCall(s: Sheet, raw: Record<string, unknown>): Record<'job' | 'site', object> {
  const { what, ...rest } = raw
  const { type, ...seen } = whatSeen(what as string | undefined)
  return {
    job: { ...pick(rest, (key) => !isOfCall(key)), ...seen },
    site: {
      ...pick(s.site, (key) => !isOfCall(key)),
      ...pick(rest, isOfCall),
      ...(type === undefined ? {} : { type }),
    },
  }
}

/** The site with the answers of its own form: what was told at the call stays. */
export const withSite = (s: Sheet, raw: Record<string, unknown>): object => ({
  ...pick(s.site, isOfCall),
  ...raw,
})
