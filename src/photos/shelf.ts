/** The folder of photos beside the database: one file each, `<sha256>.jpg`, never changed once it is there. */
import { randomBytes } from 'node:crypto'
import { mkdir, open, readFile, rename, stat } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { photoId } from '../journal/entry.ts'
import type { Photo, PhotoShelf } from './photo.ts'

/** Where the photos of a database are. */
export const photoFolder = (databaseFile: string): string => join(dirname(databaseFile), 'photos')

export const fileName = (id: string): string => `${id}.jpg`

/** The shelf in a folder, which is made when the first photo comes. */
export const shelfIn = (folder: string): PhotoShelf => ({
  async keep({ id, bytes }) {
    await mkdir(folder, { recursive: true })
    const file = join(folder, fileName(id))
    if (await sizeOf(file).then((size) => size === bytes.length)) return
    // Written aside and moved into place, so that nobody ever finds half a photo under a whole one's name.
    const aside = join(folder, `.${id}.${randomBytes(4).toString('hex')}`)
    const handle = await open(aside, 'wx')
    try {
      await handle.writeFile(bytes)
      await handle.sync()
    } finally {
      await handle.close()
    }
    await rename(aside, file)
  },
  async find(id) {
    if (!photoId.safeParse(id).success) return null
    try {
      return new Uint8Array(await readFile(join(folder, fileName(id))))
    } catch (error) {
      if (isMissing(error)) return null
      throw error
    }
  },
})

/** A shelf that lives as long as the process: for a database in memory. */
export function shelfInMemory(): PhotoShelf {
  const photos = new Map<string, Photo>()
  return {
    keep: async (photo) => void photos.set(photo.id, photo),
    find: async (id) => photos.get(id)?.bytes ?? null,
  }
}

async function sizeOf(file: string): Promise<number | null> {
  try {
    return (await stat(file)).size
  } catch (error) {
    if (isMissing(error)) return null
    throw error
  }
}

const isMissing = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'ENOENT'
