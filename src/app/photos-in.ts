/** Photos that come with a form: checked, stripped and kept, then named in what was typed, so that a form that comes back has them. */
import { type FieldProblem, many, type Typed } from '../forms/index.ts'
import { MOST_PHOTOS } from '../journal/index.ts'
import { photoIn } from '../photos/index.ts'
import type { AppContext, PageDeps } from './context.ts'
import { formIn } from './sent.ts'

export interface FormWithPhotos {
  /** `photos` names those that were kept, the ones from before first. */
  typed: Typed
  /** What is wrong with those that were not. */
  problems: FieldProblem[]
}

/** The name of the files in a form; `photos` is the list of those that were kept. */
const PHOTO_FILES = 'photo'

/** Takes the photos of a posted form. */
export async function withPhotos(
  c: AppContext,
  deps: Pick<PageDeps, 'photos'>,
  typed: Typed,
): Promise<FormWithPhotos> {
  const problems: FieldProblem[] = []
  const ids = new Set(many(typed, 'photos'))
  for (const file of await filesIn(c)) {
    if (ids.size >= MOST_PHOTOS) {
      problems.push({
        field: 'photos',
        message: `one entry takes at most ${MOST_PHOTOS}; the others were left out`,
      })
      break
    }
    const read = await photoIn(new Uint8Array(await file.arrayBuffer()))
    if (read.ok) {
      await deps.photos.keep(read.photo)
      ids.add(read.photo.id)
    } else
      problems.push(
        ...read.problems.map((p) => ({ field: 'photos', message: `“${file.name.slice(0, 60)}” ${p}` })),
      )
  }
  return { typed: ids.size === 0 ? typed : { ...typed, photos: [...ids] }, problems }
}

async function filesIn(c: AppContext): Promise<File[]> {
  if (!/^multipart\/form-data\b/i.test(c.req.header('content-type') ?? '')) return []
  const files = (await formIn(c))?.getAll(PHOTO_FILES) ?? []
  return files.filter((f): f is File => f instanceof File && f.size > 0)
}
