/**
 * Photos that are still on their way: a file each of the bytes that have come, so that one which a lost line cut off goes on
 * from there. Nothing vouches for them until the whole is read as any other photo is.
 */
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  readdirSync,
  readFileSync,
  rmdirSync,
  rmSync,
  statSync,
} from 'node:fs'
import { join } from 'node:path'

/** What has come of photos, by their ids; callers judge the ids. */
export interface Arriving {
  /** Bytes that are here; 0 where nothing is. */
  size: (id: string) => number
  /** Adds a piece to its end. Returns the bytes that are here then. */
  add: (id: string, piece: Uint8Array) => number
  /** Everything that is here. */
  whole: (id: string) => Uint8Array<ArrayBuffer>
  /** Lets it go: kept as a photo, or spoiled. */
  drop: (id: string) => void
}

/** Days after which one that has not gone on is let go: its phone sends it again from the start. Judgement. */
const GIVEN_UP_DAYS = 14
/** How many may be on their way; beyond, the oldest goes. A round of phones has some dozens. Judgement. */
const MOST = 200

const DAY_MS = 86_400_000
const PART = /^[0-9a-f]{64}\.jpg\.part$/

/** In a folder that is there only while something is on its way. */
export function arrivingIn(folder: string, now: () => number = Date.now): Arriving {
  const at = (id: string): string => join(folder, `${id}.jpg.part`)
  const size = (id: string): number => statSync(at(id), { throwIfNoEntry: false })?.size ?? 0
  return {
    size,
    add(id, piece) {
      if (!existsSync(at(id))) {
        mkdirSync(folder, { recursive: true, mode: 0o700 })
        makeRoom(folder, now())
      }
      appendFileSync(at(id), piece, { mode: 0o600 })
      return size(id)
    },
    whole: (id) => new Uint8Array(existsSync(at(id)) ? readFileSync(at(id)) : []),
    drop(id) {
      rmSync(at(id), { force: true })
      if (existsSync(folder) && readdirSync(folder).length === 0) rmdirSync(folder)
    },
  }
}

/** Lets go of what was given up, and of the oldest where there are too many. */
function makeRoom(folder: string, now: number): void {
  const parts = readdirSync(folder)
    .filter((name) => PART.test(name))
    .map((name) => ({ file: join(folder, name), at: statSync(join(folder, name)).mtimeMs }))
    .sort((a, b) => b.at - a.at)
  for (const [i, { file, at }] of parts.entries())
    if (i >= MOST - 1 || now - at > GIVEN_UP_DAYS * DAY_MS) rmSync(file, { force: true })
}

/** As long as the process lives: for a database in memory. */
export function arrivingInMemory(): Arriving {
  const parts = new Map<string, Uint8Array<ArrayBuffer>>()
  const whole = (id: string): Uint8Array<ArrayBuffer> => parts.get(id) ?? new Uint8Array()
  return {
    whole,
    size: (id) => whole(id).length,
    add(id, piece) {
      const longer = new Uint8Array(whole(id).length + piece.length)
      longer.set(whole(id))
      longer.set(piece, whole(id).length)
      parts.set(id, longer)
      return whole(id).length
    },
    drop: (id) => void parts.delete(id),
  }
}
