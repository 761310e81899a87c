import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, unknownPage } from '../../app/index.ts'
import { photoIn } from '../../photos/index.ts'

/**
 * GET /photos/ID: the picture. PUT /photos/ID: keeps one, which must be, once stripped, what its name says; 200 {kept} or
 * 422 {problems}. Keeping it again is harmless.
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
  return app
}

const refuse = (c: AppContext, ...problems: string[]): Response =>
  c.json({ problems: problems.map((p) => ({ field: 'photos', message: `A photo ${p}` })) }, 422)
