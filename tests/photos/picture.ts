/** A picture of 48 by 32 pixels, drawn and coded by a browser's canvas; and what cameras hang onto theirs. */
const PICTURE =
  '/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1xeXBkeFxlZ2P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAARCAAgADADASIAAhEBAxEB/8QAGgABAQACAwAAAAAAAAAAAAAABAMCBQABBv/EAB8QAAMBAAEEAwAAAAAAAAAAAAACAwEEERIhoSIxQv/EABcBAAMBAAAAAAAAAAAAAAAAAAACAwT/xAAbEQEBAAIDAQAAAAAAAAAAAAAAAQIDESExcf/aAAwDAQACEQMRAD8A0OfDM8FV5GL+PZx5M2L251Os4l9+k94Z8rnz0tp16LhLn79bWSC5ITkguSFmOKSQXJDCSC5IB48dJBckMJILkgEikkFyQnJBckA0UkguSGEkFyQDx//Z'

export const picture = (): Uint8Array<ArrayBuffer> => new Uint8Array(Buffer.from(PICTURE, 'base64'))

const text = (s: string): number[] => [...Buffer.from(s, 'latin1')]

/** A segment with its marker and length. */
export const segment = (code: number, body: readonly number[]): number[] => {
  const length = body.length + 2
  return [0xff, code, length >> 8, length & 255, ...body]
}

/** Puts segments right behind the start of the file. */
export const withSegments = (file: Uint8Array, ...segments: number[][]): Uint8Array<ArrayBuffer> =>
  Uint8Array.from([...file.subarray(0, 2), ...segments.flat(), ...file.subarray(2)])

const short = (n: number): number[] => [n >> 8, n & 255]
const long = (n: number): number[] => [...short(n >>> 16), ...short(n & 0xffff)]

/**
 * An Exif block (Exif 2.3, section 4.6) as a phone writes it: orientation, camera, and a GPS directory with the place
 * 32° 30' N 111° 15' W.
 */
export function exifWithPlace(orientation: number): number[] {
  const make = text('Wren Optics\0')
  // Three entries: 2 + 3 * 12 + 4 bytes, from offset 8; then the maker's name, then the GPS directory.
  const makeAt = 8 + 42
  const gpsAt = makeAt + make.length
  const latitudeAt = gpsAt + 2 + 4 * 12 + 4
  const degrees = (d: number, m: number): number[] => [d, 1, m, 1, 0, 1].flatMap(long)
  const ifd0 = [
    ...short(3),
    ...[...short(0x010f), ...short(2), ...long(make.length), ...long(makeAt)],
    ...[...short(0x0112), ...short(3), ...long(1), ...short(orientation), 0, 0],
    ...[...short(0x8825), ...short(4), ...long(1), ...long(gpsAt)],
    ...long(0),
  ]
  const gps = [
    ...short(4),
    ...[...short(1), ...short(2), ...long(2), ...text('N\0'), 0, 0],
    ...[...short(2), ...short(5), ...long(3), ...long(latitudeAt)],
    ...[...short(3), ...short(2), ...long(2), ...text('W\0'), 0, 0],
    ...[...short(4), ...short(5), ...long(3), ...long(latitudeAt + 24)],
    ...long(0),
    ...degrees(32, 30),
    ...degrees(111, 15),
  ]
  return segment(0xe1, [...text('Exif\0\0MM\0*'), ...long(8), ...ifd0, ...make, ...gps])
}

export const XMP = segment(0xe1, text('http://ns.adobe.com/xap/1.0/\0<x:xmpmeta place="32.5,-111.25"/>'))
export const IPTC = segment(
  0xed,
  text('Photoshop 3.0\0' + '8BIM\x04\x04\0\0\0\0\0\x0a\x1c\x02\x5a\0\x05Tubac'),
)
export const COMMENT = segment(0xfe, text('12 Acacia Lane'))
export const COLOUR_TRANSFORM = segment(0xee, [...text('Adobe'), 0, 100, 0, 0, 0, 0, 1])
export const COLOUR_PROFILE = segment(0xe2, [...text('ICC_PROFILE\0'), 1, 1, 0, 0, 0, 4])
/** What some phones put behind the picture: a film of the moment, with its own place. */
export const FILM = text('....ftypmp42....moov....32.5000-111.2500/')
