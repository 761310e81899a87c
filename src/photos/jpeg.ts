/**
 * A JPEG file without everything that does not make the picture: where it was taken, when, by which camera, thumbnails of
 * what was cropped away, comments, and whatever hangs behind its end. Of the metadata only the orientation is kept, in a
 * block of its own, because a photo lying on its side is no use.
 *
 * Structure: ITU-T T.81 (JPEG) annex B, markers in table B.1; JFIF 1.02; orientation: Exif 2.3, tag 0x0112.
 */

import { type Problems, type Result, refused } from '../result.ts'

/** A problem continues a sentence that began with the photo: 'is no JPEG picture'. */
export type Stripped = Result<
  { bytes: Uint8Array<ArrayBuffer>; width: number; height: number },
  Problems<string>
>

/** Marker codes. */
const SOI = 0xd8
const EOI = 0xd9
const SOS = 0xda
const APP0 = 0xe0
const APP1 = 0xe1
const APP2 = 0xe2
const APP14 = 0xee
const COM = 0xfe

const NO_JPEG = refused(['is no JPEG picture'])
const CUT_OFF = refused(['is cut off: take it again'])

/**
 * Pieces and scans at most. A camera's largest file has some two hundred pieces of 64 kB; a picture that builds up has ten
 * scans or so, and every scan makes a reader go over the whole picture. Judgement.
 */
const MOST_SEGMENTS = 2000
const MOST_SCANS = 100
/** Pixels of a block. One component at least has a block for every 64 pixels, and a block takes a bit at least (T.81, annex F). */
const BLOCK = 64

/** Stripping what was stripped changes nothing. Never changes what it is given. */
export function stripped(file: Uint8Array): Stripped {
  if (file[0] !== 0xff || file[1] !== SOI) return NO_JPEG
  const kept: Uint8Array[] = []
  let size: { width: number; height: number } | null = null
  let orientation = 1
  let jfif = false
  let scans = 0
  let coded = 0
  let segments = 0
  let at = 2
  for (;;) {
    const segment = segmentAt(file, at)
    if (segment === null) return scans > 0 || at >= file.length ? CUT_OFF : NO_JPEG
    if (++segments > MOST_SEGMENTS) return refused(['is made of too many pieces: take it again'])
    const { code, start, end } = segment
    const body = file.subarray(start + 4, end)
    if (code === EOI) break
    if (isFrame(code)) {
      if (size !== null) return refused(['holds two pictures in one: take it again'])
      size = sizeIn(body)
    }
    if (code === APP0) jfif ||= startsWith(body, 'JFIF\0')
    else if (code === APP1) orientation = orientationIn(body) ?? orientation
    else if (makesThePicture(code, body)) kept.push(file.subarray(start, end))
    at = end
    if (code === SOS) {
      at = endOfScan(file, end)
      kept.push(file.subarray(end, at))
      coded += at - end
      if (++scans > MOST_SCANS) return refused(['is made of too many pieces: take it again'])
    }
  }
  if (size === null || scans === 0 || size.width === 0 || size.height === 0) return NO_JPEG
  if (coded * 8 * BLOCK < size.width * size.height) return CUT_OFF
  const head = [
    Uint8Array.of(0xff, SOI),
    ...(jfif ? [PLAIN_JFIF] : []),
    ...(orientation === 1 ? [] : [orientationBlock(orientation)]),
  ]
  return { ok: true, bytes: joined([...head, ...kept, Uint8Array.of(0xff, EOI)]), ...size }
}

/** What is left of the metadata in a JPEG: names of its application and comment segments. For tests and for the curious. */
export function metadataIn(file: Uint8Array): string[] {
  const found: string[] = []
  for (let at = 2; ; ) {
    const segment = segmentAt(file, at)
    if (segment === null || segment.code === EOI) return found
    const { code, start, end } = segment
    if ((code >= APP0 && code <= 0xef) || code === COM) {
      const text = new TextDecoder('latin1').decode(file.subarray(start + 4, Math.min(end, start + 24)))
      found.push(`${code === COM ? 'COM' : `APP${code - APP0}`} ${text.split('\0')[0] ?? ''}`.trim())
    }
    at = code === SOS ? endOfScan(file, end) : end
  }
}

interface Segment {
  code: number
  /** Where its marker begins. */
  start: number
  /** Where the next one begins. */
  end: number
}

/** The segment whose marker is at that place, fill bytes skipped; null when there is none, or it is cut off. */
function segmentAt(file: Uint8Array, at: number): Segment | null {
  if (file[at] !== 0xff) return null
  let start = at
  while (file[start + 1] === 0xff) start++
  const code = file[start + 1]
  if (code === undefined || code === 0) return null
  if (code === EOI) return { code, start, end: start + 2 }
  const [high, low] = [file[start + 2], file[start + 3]]
  if (high === undefined || low === undefined) return null
  const length = high * 256 + low
  const end = start + 2 + length
  return length < 2 || end > file.length ? null : { code, start, end }
}

/** Where the coded data of a scan ends: at the next marker that is neither a stuffed zero nor a restart. */
function endOfScan(file: Uint8Array, from: number): number {
  for (let at = from; at < file.length - 1; at++) {
    const next = file[at + 1] ?? 0
    if (file[at] === 0xff && next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at
  }
  return file.length
}

/** SOF0 to SOF15, less DHT, JPG and DAC, which lie between them. */
const isFrame = (code: number): boolean =>
  code >= 0xc0 && code <= 0xcf && code !== 0xc4 && code !== 0xc8 && code !== 0xcc

/** Tables, frames and scans; of the application's own only colour profile and colour transform. */
function makesThePicture(code: number, body: Uint8Array): boolean {
  if (code === APP2) return startsWith(body, 'ICC_PROFILE\0')
  if (code === APP14) return startsWith(body, 'Adobe')
  return !(code >= APP0 && code <= 0xef) && code !== COM
}

const sizeIn = (frame: Uint8Array): { width: number; height: number } => ({
  height: (frame[1] ?? 0) * 256 + (frame[2] ?? 0),
  width: (frame[3] ?? 0) * 256 + (frame[4] ?? 0),
})

/** JFIF 1.02, one dot to one dot, no thumbnail. */
const PLAIN_JFIF = Uint8Array.of(0xff, APP0, 0, 16, 0x4a, 0x46, 0x49, 0x46, 0, 1, 2, 0, 0, 1, 0, 1, 0, 0)

const EXIF = 'Exif\0\0'

/** The orientation an Exif block gives, 1 to 8; null when it gives none. */
function orientationIn(body: Uint8Array): number | null {
  if (!startsWith(body, EXIF)) return null
  const tiff = new DataView(body.buffer, body.byteOffset + EXIF.length, body.byteLength - EXIF.length)
  if (tiff.byteLength < 8) return null
  const little = tiff.getUint16(0) === 0x4949
  const ifd = tiff.getUint32(4, little)
  if (ifd + 2 > tiff.byteLength) return null
  const entries = tiff.getUint16(ifd, little)
  for (let i = 0; i < entries; i++) {
    const at = ifd + 2 + i * 12
    if (at + 12 > tiff.byteLength) return null
    if (tiff.getUint16(at, little) !== 0x0112) continue
    const value = tiff.getUint16(at + 8, little)
    return value >= 1 && value <= 8 ? value : null
  }
  return null
}

/** An Exif block that says nothing but the orientation. */
function orientationBlock(orientation: number): Uint8Array {
  const tiff = [
    0x4d,
    0x4d,
    0,
    0x2a,
    0,
    0,
    0,
    8,
    0,
    1,
    0x01,
    0x12,
    0,
    3,
    0,
    0,
    0,
    1,
    0,
    orientation,
    0,
    0,
    0,
    0,
    0,
    0,
  ]
  const exif = [...EXIF].map((c) => c.charCodeAt(0))
  return Uint8Array.of(0xff, APP1, 0, 2 + exif.length + tiff.length, ...exif, ...tiff)
}

const startsWith = (bytes: Uint8Array, text: string): boolean =>
  bytes.length >= text.length && [...text].every((c, i) => bytes[i] === c.charCodeAt(0))

function joined(parts: readonly Uint8Array[]): Uint8Array<ArrayBuffer> {
  const whole = new Uint8Array(parts.reduce((sum, p) => sum + p.length, 0))
  let at = 0
  for (const part of parts) {
    whole.set(part, at)
    at += part.length
  }
  return whole
}
