import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, unknownPage } from '../../app/index.ts'
import { photoId } from '../../journal/index.ts'
import { PHOTO_LIMIT, photoIn } from '../../photos/index.ts'

/**
 * GET /photos/ID: the picture. PUT /photos/ID: keeps one, which must be, once stripped, what its name says; 200 {kept} or
 * 422 {problems}. Keeping it again is harmless.
 *
 * GET /photos/ID/arrived, PATCH /photos/ID: the same in pieces, so that a lost line costs one of them. A piece says where it
 * begins (Upload-Offset) and how long the whole is (Upload-Length), as the IETF's draft on resumable uploads names these
 * headers; the answer is {kept}, or {offset}: where the next piece has to begin, whatever was sent. 0 after the last piece:
 * what had come was spoiled.
 */
export function photos(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()

  app.get('/photos/:id', async (c) => {
    const bytes = await deps.photos.find(c.req.param('id'))
    if (bytes === null) return unknownPage(c)
    // It can never change under its name; but only who is signed in may have it.
    return c.body(bytes, 200, {
      'Content-Type': 'image/jpeg',
      'Cache-Control': 'private, max-age=31536000, immutable',
      'Content-Disposition': 'inline',
    })
  })

  app.put('/photos/:id', async (c) => {
    const id = c.req.param('id')
    const read = await photoIn(new Uint8Array(await c.req.arrayBuffer()))
    if (!read.ok) return refuse(c, ...read.problems)
    if (read.photo.id !== id) return refuse(c, 'is not the one of that name')
    await deps.photos.keep(read.photo)
    return c.json({ kept: id })
  })

  app.get('/photos/:id/arrived', async (c) => {
    const id = c.req.param('id')
    if (!photoId.safeParse(id).success) return unknownPage(c)
    if ((await deps.photos.find(id)) !== null) return c.json({ kept: id })
    return c.json({ offset: deps.photos.arriving.size(id) })
  })

  app.patch('/photos/:id', async (c) => {
    const id = c.req.param('id')
    const { arriving } = deps.photos
    const from = bytesSaid(c.req.header('Upload-Offset'))
    const length = bytesSaid(c.req.header('Upload-Length'))
    if (!photoId.safeParse(id).success) return unknownPage(c)
    if (from === null || length === null || length > PHOTO_LIMIT)
      return refuse(c, 'in pieces must say where each begins and how long it is')
    const piece = new Uint8Array(await c.req.arrayBuffer())
    // From here on nothing waits: two phones, or two tries of one, cannot come between.
    const size = arriving.size(id)
    const fits = from === size && size + piece.length <= length
    const here = fits ? arriving.add(id, piece) : size
    if (here < length) return c.json({ offset: here })
    const read = await photoIn(arriving.whole(id))
    const good = read.ok && read.photo.id === id
    if (good) await deps.photos.keep(read.photo)
    arriving.drop(id)
    return c.json(good ? { kept: id } : { offset: 0 })
  })
  return app
}

/** A number of bytes as a header says it; null where it says none. */
const bytesSaid = (said: string | undefined): number | null =>
  said !== undefined && /^\d{1,9}$/.test(said) ? Number(said) : null

const refuse = (c: AppContext, ...problems: string[]): Response =>
  c.json({ problems: problems.map((p) => ({ field: 'photos', message: `A photo ${p}` })) }, 422)
