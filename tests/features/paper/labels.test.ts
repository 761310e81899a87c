/** The codes on the labels, read by another reader (jsQR) from the drawing itself. */
import jsQR from 'jsqr'
import { describe, expect, it } from 'vitest'
import { boxAddress, originTyped } from '../../../src/features/paper/labels.ts'
import { qrCode } from '../../../src/parts/qr-code.ts'

/** Four pixels a module, from the strokes of the drawing: 'M4 4.5h7m1 0h1…' are runs of dark modules, line by line. */
function pixelsOf(svg: string): { data: Uint8ClampedArray; size: number } {
  const modules = Number(/viewBox="0 0 (\d+) /.exec(svg)?.[1])
  const path = /stroke="#000000" d="([^"]+)"/.exec(svg)?.[1] ?? ''
  const size = modules * 4
  const data = new Uint8ClampedArray(size * size * 4).fill(255)
  let [x, y] = [0, 0]
  for (const [, command, numbers = ''] of path.matchAll(/([Mmh])([-\d. ]+)/g)) {
    const [a = 0, b = 0] = numbers.trim().split(/\s+/).map(Number)
    if (command === 'M') [x, y] = [a, b]
    else if (command === 'm') [x, y] = [x + a, y + b]
    else {
      for (let px = x * 4; px < (x + a) * 4; px++)
        for (let py = (y - 0.5) * 4; py < (y + 0.5) * 4; py++) data.set([0, 0, 0, 255], (py * size + px) * 4)
      x += a
    }
  }
  return { data, size }
}

const read = (svg: string): string | undefined => {
  const { data, size } = pixelsOf(svg)
  return jsQR(data, size, size)?.data
}

describe('the code on a label', () => {
  it.each(['W-12', 'Kiste 7', 'Gräfin-3', 'a&b=c', 'x'.repeat(40)])('of %s opens that box', (tag) => {
    const address = boxAddress('https://yard.example', tag)
    expect(read(qrCode(address))).toBe(address)
    expect(decodeURIComponent(new URL(address).pathname)).toBe(`/colony/${tag}`)
  })

  it('still reads with a thumb-sized blot on it', () => {
    const address = boxAddress('https://yard.example', 'W-12')
    const { data, size } = pixelsOf(qrCode(address))
    const at = Math.floor(size * 0.55)
    for (let y = at; y < at + 16; y++)
      for (let x = at; x < at + 16; x++) data.set([0, 0, 0, 255], (y * size + x) * 4)
    expect(jsQR(data, size, size)?.data).toBe(address)
  })

  it('is drawn without styles or scripts, so that a strict policy lets it through', () => {
    const svg = qrCode('https://yard.example/colony/W-12')
    expect(svg).not.toMatch(/style=|<script|<style/)
  })
})

describe('the address typed for the labels', () => {
  it.each([
    ['https://yard.example', 'https://yard.example'],
    ['  yard.example  ', 'https://yard.example'],
    ['http://192.168.1.20:8420/', 'http://192.168.1.20:8420'],
    ['https://yard.example/colony/W-1?x=1', 'https://yard.example'],
  ])('%j is taken as %s', (typed, origin) => expect(originTyped(typed)).toBe(origin))

  it.each(['', '   ', 'javascript:alert(1)', 'ftp://yard.example', 'https://', 'x'.repeat(201)])(
    '%j is none',
    (typed) => expect(originTyped(typed)).toBeNull(),
  )
})
