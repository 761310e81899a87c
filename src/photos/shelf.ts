/** The folder of photos beside the database: one file each, `<sha256>.jpg`, never changed once it is there. */

import { createHash, randomBytes } from 'node:crypto'
import {
  closeSync,
  copyFileSync,
  existsSync,
  fsyncSync,
  linkSync,
  mkdirSync,
  openSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  writeFileSync,
} from 'node:fs'
import { readFile } from 'node:fs/promises'
import { dirname, join } from 'node:path'
import { photoId } from '../journal/index.ts'
import { refused } from '../result.ts'
import { type Arriving, arrivingIn, arrivingInMemory } from './arriving.ts'
import { stripped } from './jpeg.ts'
import type { Photo, PhotoRead, PhotoShelf } from './photo.ts'

/** A shelf that can also be read and written at once, for what takes a whole yard in or out. */
export interface PhotoFiles extends PhotoShelf {
  readNow: (id: string) => Uint8Array<ArrayBuffer> | null
  keepNow: (photo: Photo) => void
  /** Takes one out for good; one that is not there is out already. */
  eraseNow: (id: string) => void
  /** Those that come in pieces. */
  arriving: Arriving
}

/** Where the photos of a database, or of a backup, are. */
export const photoFolder = (databaseFile: string): string => join(dirname(databaseFile), 'photos')

const NAME = /^[0-9a-f]{64}\.jpg$/
const fileName = (id: string): string => `${id}.jpg`
const isId = (id: string): boolean => photoId.safeParse(id).success

/** The shelf in a folder, which is made when the first photo comes. */
export function shelfIn(folder: string): PhotoFiles {
  const at = (id: string): string => join(folder, fileName(id))
  const keepNow = ({ id, bytes }: Photo): void => {
    mkdirSync(folder, { recursive: true, mode: 0o700 })
    if (sizeOf(at(id)) !== bytes.length) moveIntoPlace(at(id), (aside) => writeThrough(aside, bytes))
  }
  return {
    arriving: arrivingIn(join(folder, 'arriving')),
    keepNow,
    keep: async (photo) => keepNow(photo),
    eraseNow: (id) => {
      if (isId(id)) rmSync(at(id), { force: true })
    },
    readNow: (id) => (isId(id) && existsSync(at(id)) ? new Uint8Array(readFileSync(at(id))) : null),
    async find(id) {
      if (!isId(id)) return null
      try {
        return new Uint8Array(await readFile(at(id)))
      } catch (error) {
        if (isMissing(error)) return null
        throw error
      }
    },
  }
}

/** A shelf that lives as long as the process: for a database in memory. */
export function shelfInMemory(): PhotoFiles {
  const photos = new Map<string, Photo>()
  const keepNow = (photo: Photo): void => void photos.set(photo.id, photo)
  const readNow = (id: string): Uint8Array<ArrayBuffer> | null => photos.get(id)?.bytes ?? null
  const eraseNow = (id: string): void => void photos.delete(id)
  return {
    arriving: arrivingInMemory(),
    keepNow,
    eraseNow,
    readNow,
    keep: async (photo) => keepNow(photo),
    find: async (id) => readNow(id),
  }
}

/** The photo in bytes that were kept before, or what is wrong with them. For files that come from elsewhere. */
export function photoNow(id: string, bytes: Uint8Array): PhotoRead {
  const read = stripped(bytes)
  if (!read.ok) return read
  if (createHash('sha256').update(read.bytes).digest('hex') !== id)
    return refused(['is not the one of that name'])
  return { ok: true, photo: { id, bytes: read.bytes } }
}

/**
 * Brings what is in one folder of photos into another; what is there stays. On one disk no room is taken twice, because a
 * photo never changes. Returns how many came.
 */
export function copyPhotos(from: string, to: string): number {
  const there = photosIn(to)
  const missing = [...photosIn(from)].filter((name) => !there.has(name))
  if (missing.length > 0) mkdirSync(to, { recursive: true, mode: 0o700 })
  for (const name of missing) moveIntoPlace(join(to, name), (aside) => linkOrCopy(join(from, name), aside))
  return missing.length
}

const photosIn = (folder: string): Set<string> =>
  new Set(existsSync(folder) ? readdirSync(folder).filter((name) => NAME.test(name)) : [])

/** Made aside and moved, so that nobody ever finds half a photo under a whole one's name. */
function moveIntoPlace(file: string, make: (aside: string) => void): void {
  const aside = `${file}.${randomBytes(4).toString('hex')}.part`
  try {
    make(aside)
    renameSync(aside, file)
  } catch (error) {
    // A full disk is tried again and again: halves must not pile up on it.
    rmSync(aside, { force: true })
    throw error
  }
}

function writeThrough(file: string, bytes: Uint8Array): void {
  const handle = openSync(file, 'wx', 0o600)
  try {
    writeFileSync(handle, bytes)
    fsyncSync(handle)
  } finally {
    closeSync(handle)
  }
}

function linkOrCopy(from: string, to: string): void {
  try {
    linkSync(from, to)
  } catch {
    // Another disk, or one that knows no links.
    copyFileSync(from, to)
  }
}

const sizeOf = (file: string): number | null => (existsSync(file) ? statSync(file).size : null)

const isMissing = (error: unknown): boolean =>
  error instanceof Error && 'code' in error && error.code === 'ENOENT'
