import {
  type AppContext,
  colonyIn,
  colonyPath,
  idIn,
  onward,
  type PageDeps,
  signedIn,
  submit,
  typedIn,
  unknownColony,
} from '../../app/index.ts'
import { draftOf, type Typed } from '../../forms/index.ts'

interface Tap {
  /** What the tap says, beside that the lid stayed on today. */
  says: (typed: Typed) => Typed
  /** A field without which it says nothing. */
  needs?: string
  /** The form where anything wrong is mended, after the colony's path. */
  form: string
}

/** A visit in one tap, lid on, today. What cannot be saved so leads to the whole form. */
export async function oneTap(c: AppContext, deps: PageDeps, { says, needs, form }: Tap): Promise<Response> {
  const colony = colonyIn(c, deps.store)
  if (colony === null) return unknownColony(c, deps, c.req.param('tag') ?? '')
  const typed = await typedIn(c)
  const { today, units } = c.var.frame
  const draft = draftOf('inspection', { on: [today], opened: ['no'], ...says(typed) }, units)
  const id = idIn(typed)
  const saved =
    needs !== undefined && draft.raw[needs] === undefined
      ? { ok: false }
      : await submit(deps, today, signedIn(c), [{ draft, id, colony: colony.summary.id }])
  return saved.ok ? onward(c, colony.summary, id) : c.redirect(`${colonyPath(colony.summary)}/${form}`, 303)
}
