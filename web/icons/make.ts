/**
 * Draws the icons and writes them into web/public: the drawing itself as SVG, and the PNGs that phones ask for. Two
 * boxes on a stand under their lid, the lower one ticked off.
 * Run: npx tsx web/icons/make.ts (needs the Chromium of the journeys).
 */
import { mkdirSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { launch } from '../../tests/support/browser.ts'

const PUBLIC = fileURLToPath(new URL('../public', import.meta.url))
const GREEN = '#17482c'
const PAPER = '#fbf8f1'

/** The drawing in a square of 64. `room`: how much of the side it fills; a mask may cut off the rest. */
function drawing(corner: number, room: number): string {
  const line = (d: string, width: number): string =>
    `<path d="${d}" fill="none" stroke="${PAPER}" stroke-width="${width}" stroke-linecap="round" stroke-linejoin="round"/>`
  const box = (y: number): string =>
    `<rect x="15.5" y="${y}" width="33" height="14" rx="1" fill="none" stroke="${PAPER}" stroke-width="3"/>`
  const hive = [
    `<rect x="11" y="10" width="42" height="6.5" rx="1.5" fill="${PAPER}"/>`,
    box(19.5),
    line('M28 26.5h8', 3),
    box(36.5),
    line('M26.5 43.3l3.8 3.7 7.2-8', 3.4),
    line('M11 55.5h42', 3.4),
  ].join('')
  const inset = (64 * (1 - room)) / 2
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><rect width="64" height="64" rx="${corner}" fill="${GREEN}"/>` +
    `<g transform="translate(${inset} ${inset}) scale(${room})">${hive}</g></svg>\n`
  )
}

const PICTURES = [
  { name: 'icon-192', size: 192, svg: drawing(10, 1) },
  { name: 'icon-512', size: 512, svg: drawing(10, 1) },
  // A mask may cut to the inner circle of 80 %; the colour goes to the edge.
  { name: 'icon-mask-512', size: 512, svg: drawing(0, 0.72) },
  // Rounded by the phone itself.
  { name: 'icon-touch-180', size: 180, svg: drawing(0, 0.86) },
]

mkdirSync(`${PUBLIC}/icons`, { recursive: true })
writeFileSync(`${PUBLIC}/icon.svg`, drawing(10, 1))
const browser = await launch()
try {
  for (const { name, size, svg } of PICTURES) {
    const page = await browser.newPage({ viewport: { width: size, height: size } })
    await page.setContent(
      `<body style="margin:0">${svg.replace('<svg ', `<svg width="${size}" height="${size}" style="display:block" `)}`,
    )
    writeFileSync(`${PUBLIC}/icons/${name}.png`, await page.screenshot({ omitBackground: true }))
    await page.close()
  }
} finally {
  await browser.close()
}
