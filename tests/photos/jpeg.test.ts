import ExifReader from 'exifreader'
import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { metadataIn, stripped } from '../../src/photos/jpeg.ts'
import { photoIn } from '../../src/photos/photo.ts'
import {
  COLOUR_PROFILE,
  COLOUR_TRANSFORM,
  COMMENT,
  exifWithPlace,
  FILM,
  IPTC,
  picture,
  segment,
  withSegments,
  XMP,
} from './picture.ts'

/** Everything a camera can hang onto a picture. */
const laden = (orientation = 1): Uint8Array<ArrayBuffer> =>
  Uint8Array.from([
    ...withSegments(picture(), exifWithPlace(orientation), XMP, IPTC, COMMENT, COLOUR_PROFILE),
    ...FILM,
  ])

function cleaned(file: Uint8Array): Uint8Array<ArrayBuffer> {
  const result = stripped(file)
  if (!result.ok) throw new Error(result.problems[0])
  return result.bytes
}

/** Read by another program's reader (exifreader): groups of tags, less what only describes the picture itself. */
async function tagsIn(file: Uint8Array<ArrayBuffer>): Promise<string[]> {
  const tags = await ExifReader.load(file.buffer, { expanded: true })
  return Object.keys(tags).filter((group) => !['file', 'jfif', 'icc', 'composite'].includes(group))
}

describe('a photo without its metadata', () => {
  it('loses its place, as another reader finds', async () => {
    const before = await ExifReader.load(laden().buffer, { expanded: true })
    expect(before.gps?.Latitude).toBeCloseTo(32.5)
    expect(before.gps?.Longitude).toBeCloseTo(-111.25)
    expect(await tagsIn(laden())).toEqual(expect.arrayContaining(['exif', 'gps', 'xmp', 'iptc']))
    expect(await tagsIn(cleaned(laden()))).toEqual([])
  })

  it('holds no byte of what was hung onto it', () => {
    const left = Buffer.from(cleaned(laden())).toString('latin1')
    for (const words of ['Wren Optics', '32.5', 'Tubac', 'Acacia', 'Exif', 'ftyp'])
      expect(left).not.toContain(words)
  })

  it('keeps the picture itself, byte for byte', () => {
    expect(cleaned(laden())).toEqual(cleaned(withSegments(picture(), COLOUR_PROFILE)))
    const coded = (file: Uint8Array): string =>
      Buffer.from(file).toString('latin1').split('\xff\xdb').slice(1).join('')
    expect(coded(cleaned(picture()))).toBe(coded(picture()))
  })

  it('keeps what colours need', () => {
    const kept = metadataIn(cleaned(withSegments(picture(), COLOUR_PROFILE, COLOUR_TRANSFORM, COMMENT)))
    expect(kept).toEqual(['APP0 JFIF', 'APP2 ICC_PROFILE', 'APP14 Adobe'])
  })

  it.each([2, 3, 6, 8])(
    'still stands upright (orientation %i), and says nothing else',
    async (orientation) => {
      const file = cleaned(laden(orientation))
      const tags = await ExifReader.load(file.buffer, { expanded: true })
      expect(tags.exif?.Orientation?.value).toBe(orientation)
      expect(Object.keys(tags.exif ?? {})).toEqual(['Orientation'])
      expect(tags.gps).toBeUndefined()
    },
  )

  it('changes no more when stripped again, and what it was given not at all', () => {
    const file = laden(6)
    const before = Uint8Array.from(file)
    const once = cleaned(file)
    expect(cleaned(once)).toEqual(once)
    expect(file).toEqual(before)
  })

  it('gives width and height', () => {
    expect(stripped(picture())).toMatchObject({ ok: true, width: 48, height: 32 })
  })

  it('keeps every scan of a picture that comes in several', () => {
    const whole = picture()
    const scan = [...whole.subarray(whole.indexOf(0xda) - 1, whole.length - 2)]
    const twice = Uint8Array.from([...whole.subarray(0, -2), ...COMMENT, ...scan, 0xff, 0xd9])
    expect(cleaned(twice).length).toBe(cleaned(whole).length + scan.length)
  })
})

describe('what is no photo', () => {
  it.each([
    ['nothing', []],
    ['text', [...Buffer.from('<script>alert(1)</script>')]],
    ['a PNG', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]],
    ['a start without a picture', [0xff, 0xd8, 0xff, 0xd9]],
    ['a start and then text', [0xff, 0xd8, ...Buffer.from('<html>')]],
    [
      'a picture of no size',
      [0xff, 0xd8, ...segment(0xc0, [8, 0, 0, 0, 0, 1]), ...segment(0xda, [0]), 0xff, 0xd9],
    ],
  ])('%s is refused', (_, bytes) => {
    expect(stripped(Uint8Array.from(bytes))).toEqual({
      ok: false,
      problems: [expect.stringMatching(/^is (no JPEG|cut off)/)],
    })
  })

  it('a photo cut off anywhere is refused', () => {
    const whole = laden(6)
    const end = whole.length - FILM.length
    for (let n = 0; n < end - 1; n += 7) expect(stripped(whole.subarray(0, n)).ok).toBe(false)
    expect(stripped(whole.subarray(0, end)).ok).toBe(true)
  })

  it('never throws, never grows, and never lets an application segment through that it does not know', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 0, max: 255 }), { maxLength: 400 }),
        fc.nat(1200),
        (noise, at) => {
          const whole = laden(6)
          const file = Uint8Array.from([
            ...whole.subarray(0, at % whole.length),
            ...noise,
            ...whole.subarray(at % whole.length),
          ])
          const result = stripped(file)
          if (!result.ok) return
          expect(result.bytes.length).toBeLessThanOrEqual(file.length)
          for (const name of metadataIn(result.bytes))
            expect(name).toMatch(/^APP(0 JFIF|1 Exif|2 ICC_PROFILE|14 Adobe)/)
        },
      ),
      { numRuns: 300 },
    )
  })

  it('is named by its bytes, so that two names are two pictures', async () => {
    const a = await photoIn(laden())
    const b = await photoIn(withSegments(picture(), COMMENT, COLOUR_PROFILE))
    if (!a.ok || !b.ok) throw new Error('both are photos')
    expect(a.photo.id).toMatch(/^[0-9a-f]{64}$/)
    expect(b.photo.id).toBe(a.photo.id)
  })

  it('is refused when it is larger than a photo gets', async () => {
    const large = new Uint8Array(13 * 1024 * 1024)
    expect(await photoIn(large)).toEqual({ ok: false, problems: ['is larger than 12 MB: make it smaller'] })
  })
})
