/** A text file line by line, so that one larger than memory, or than the longest string, can be read. */
import { closeSync, openSync, readSync } from 'node:fs'

const CHUNK = 1024 * 1024

/** The lines, without their line feeds. Throws the system's error where there is no such file, a TypeError where it is not UTF-8. */
export function* fileLines(file: string): Generator<string> {
  const handle = openSync(file, 'r')
  try {
    const decoder = new TextDecoder('utf-8', { fatal: true, ignoreBOM: true })
    const bytes = new Uint8Array(CHUNK)
    let rest = ''
    for (let length = CHUNK; length > 0; ) {
      length = readSync(handle, bytes)
      const lines = (rest + decoder.decode(bytes.subarray(0, length), { stream: length > 0 })).split('\n')
      rest = lines.pop() ?? ''
      yield* lines
    }
    yield rest
  } finally {
    closeSync(handle)
  }
}
