/** An address as a QR code (ISO/IEC 18004), drawn as SVG so that it prints sharp at any size. */
import { encode } from 'uqr'

/** Level M mends 15 % of the code: mud and a scratch. The quiet zone is the four modules the standard asks for. */
const OPTIONS = { ecc: 'M', border: 4 } as const

/** The code of that text, as an SVG element that fills its place. Throws RangeError for text too long for a code. */
export function qrCode(text: string): string {
  const { data, size } = encode(text, OPTIONS)
  const lines = data.map((row, y) => {
    const runs = row
      .map((dark) => (dark ? '#' : ' '))
      .join('')
      .matchAll(/#+/g)
    return [...runs].map((run) => `M${run.index} ${y}.5h${run[0].length}`).join('')
  })
  return `<svg aria-hidden="true" xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" shape-rendering="crispEdges"><path fill="#ffffff" d="M0 0h${size}v${size}H0z"/><path stroke="#000000" d="${lines.join('')}"/></svg>`
}
