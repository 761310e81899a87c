/** A log that does not fill the disk: a file that is set aside when it is full, and few of those. */
import { appendFileSync, existsSync, renameSync, rmSync, statSync } from 'node:fs'
import type { DestinationStream } from 'pino'

/** Bytes after which a file is set aside, and how many are kept beside the one in use: 60 MB at most in all (judgement). */
const LOG_BYTES = 10 * 1024 * 1024
const LOGS_KEPT = 5

/** Lines into `file`; full ones become `file.1`, `file.2` and so on, the oldest thrown away. */
export function rotatingFile(file: string, most = LOG_BYTES, kept = LOGS_KEPT): DestinationStream {
  let bytes = existsSync(file) ? statSync(file).size : 0
  const rotate = (): void => {
    rmSync(`${file}.${kept}`, { force: true })
    for (let n = kept - 1; n >= 1; n--)
      if (existsSync(`${file}.${n}`)) renameSync(`${file}.${n}`, `${file}.${n + 1}`)
    renameSync(file, `${file}.1`)
    bytes = 0
  }
  return {
    write(line) {
      try {
        if (bytes > 0 && bytes + Buffer.byteLength(line) > most) rotate()
        appendFileSync(file, line, { mode: 0o600 })
        bytes += Buffer.byteLength(line)
      } catch {
        // A full disk must not stop the book from being read.
      }
    },
  }
}
