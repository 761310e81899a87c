import { LAPTOP, launch, PHONE, watchedPage } from './support/browser.ts'
import { startYard } from './support/yard.ts'

const [, , path = '/', name = 'x', device = 'phone', open = ''] = process.argv
const yard = await startYard({ day: '2026-06-10', demo: true })
const browser = await launch()
const { page } = await watchedPage(browser, yard.url, device === 'phone' ? PHONE : LAPTOP)
await page.goto(path)
if (open)
  await page.evaluate((o) => {
    for (const d of document.querySelectorAll('details'))
      if (o === 'all' || d.querySelector('summary')?.textContent?.includes(o)) d.open = true
  }, open)
const h = await page.evaluate(() => document.documentElement.scrollHeight)
const words = (await page.locator('main').innerText()).split(/\s+/).length
console.log(path, h, 'px', words, 'words', (h / 844).toFixed(1), 'screens')
await page.screenshot({ path: `/tmp/house/look_${name}.png`, fullPage: true })
await browser.close()
await yard.stop()
process.exit(0)
