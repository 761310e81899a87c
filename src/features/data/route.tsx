import { Hono } from 'hono'
import { type AppContext, type Deps, type Env, formIn, page, streamed } from '../../app/index.ts'
import { DataPage, type DataProps } from './page.tsx'
import { exportLines } from './yard-export.ts'
import { importYard, type TakenOver } from './yard-import.ts'

/** Backups, and the whole yard out and in. */
export function data(deps: Deps): Hono<Env> {
  const app = new Hono<Env>()
  const show = (c: AppContext, more: Partial<DataProps> = {}) =>
    page(
      c,
      <DataPage
        frame={c.var.frame}
        now={deps.clock().toISOString()}
        backups={deps.safekeeping?.state() ?? null}
        done={c.req.query('done') === 'backup' ? 'A backup was taken and proved whole.' : null}
        problems={[]}
        {...more}
      />,
      more.problems === undefined || more.problems.length === 0 ? 200 : 422,
    )

  app.get('/data', (c) => show(c))

  app.post('/data/backup', async (c) => {
    if (deps.safekeeping === null)
      return show(c, { problems: ['This database lives in memory and cannot be backed up.'] })
    try {
      await deps.safekeeping.backUp()
    } catch {
      // Reported by the safekeeping itself, whose state tells the page.
      return show(c, { problems: ['The backup could not be taken.'] })
    }
    return c.redirect('/data?done=backup', 303)
  })

  app.get('/data/export', (c) => {
    const withPrivate = c.req.query('private') === 'yes'
    return streamed(
      c,
      'application/jsonl; charset=utf-8',
      `yard-${c.var.frame.today}.jsonl`,
      exportLines(deps.store, { private: withPrivate, photos: deps.photos }),
    )
  })

  app.post('/data/import', async (c) => {
    const text = await fileIn(c)
    if (text === null)
      return show(c, { problems: ['Choose a file first: one that “Export the whole yard” made.'] })
    const { today, zone } = c.var.frame
    const at = { today, zone, now: deps.clock() }
    const result = importYard(deps.store, () => text.split('\n'), at, deps.photos)
    return result.ok ? show(c, { done: importedWords(result) }) : show(c, { problems: result.problems })
  })
  return app
}

async function fileIn(c: AppContext): Promise<string | null> {
  const file = (await formIn(c))?.get('file')
  return file instanceof File && file.size > 0 ? await file.text() : null
}

const importedWords = (r: TakenOver): string =>
  `Taken in: ${r.accepted} new entries. ${r.already} were here already.` +
  (r.settings > 0 ? ` ${r.settings} choices of the yard came along.` : '')
