/** Answers when there is nothing to show: an unknown page or colony, a body too large, a bug of ours. */
import { HTTPException } from 'hono/http-exception'
import { BrokenPage, NoColonyPage, NoEntryPage, NoPagePage, TooLargePage } from '../../web/pages/errors.tsx'
import type { Frame } from '../../web/parts/layout.tsx'
import type { Store } from '../store/index.ts'
import type { Deps, Here } from './deps.ts'
import { nearestTags } from './nearest.ts'
import { colonyPath, page } from './respond.tsx'

type Answer = Response | Promise<Response>

export const unknownPage = (c: Here): Answer => page(c, <NoPagePage frame={frameOf(c)} />, 404)

/** An unknown colony: says so and offers the tags that look most like what was asked for. */
export function unknownColony(c: Here, deps: Deps, asked: string): Answer {
  const known = deps.store.colonies({})
  const near = nearestTags(asked, known).map((s) => ({
    tag: s.tag,
    path: colonyPath(s),
    left: s.closedOn !== null,
  }))
  return page(c, <NoColonyPage frame={frameOf(c)} asked={asked} near={near} />, 404)
}

export const unknownEntry = (c: Here): Answer => page(c, <NoEntryPage frame={frameOf(c)} />, 404)

export const tooLarge = (c: Here): Answer => page(c, <TooLargePage frame={frameOf(c)} />, 413)

/** Something of ours broke: reported in full to the log, in a sentence to the reader. */
export const broken =
  (deps: Deps) =>
  (error: Error, c: Here): Answer => {
    if (error instanceof HTTPException && error.status < 500) return error.getResponse()
    deps.report(error, `${c.req.method} ${c.req.path}`)
    return page(c, <BrokenPage frame={frameOf(c)} posted={c.req.method === 'POST'} />, 500)
  }

/** The frame, or one that stands when the frame itself could not be made. */
function frameOf(c: Here): Frame {
  return (
    (c.get('frame') as Frame | undefined) ?? {
      today: '',
      zone: 'UTC',
      units: { temperature: 'F', weight: 'lb' },
      viewer: null,
      may: () => false,
      mayOpen: () => false,
      path: c.req.path,
      built: () => null,
    }
  )
}

/** The colony of a path, by tag or id; null when there is none. */
export function colonyIn(c: Here, store: Store): NonNullable<ReturnType<Store['colony']>> | null {
  return store.colony(c.req.param('tag') ?? '')
}
