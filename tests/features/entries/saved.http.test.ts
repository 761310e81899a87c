/** What the page one lands on says of what was just saved. */
import { beforeEach, describe, expect, it } from 'vitest'
import { INTAKE, wordsOf, type Yard, yardOn } from '../../support/yard-on.ts'

const DAY = '2026-05-06'

let yard: Yard
beforeEach(async () => {
  yard = await yardOn(DAY)
})

const landedOn = async (path: string, fields: Record<string, string>): Promise<string> => {
  const saved = await yard.post(path, fields)
  expect(saved.status).toBe(303)
  return wordsOf((await yard.get(saved.to ?? '')).text)
}

describe('after saving', () => {
  it('an intake: until when it is left alone, and when the lid comes off first', async () => {
    const words = await landedOn('/intake', { ...INTAKE, on: DAY })
    expect(words).toContain('Leave it alone until Thu 7 May')
    expect(words).toContain('The lid comes off first on Sun 10 May.')
  })

  it('a visit: what was given and done too, there and on the round', async () => {
    await yard.post('/intake', INTAKE)
    await yard.post('/intake', { ...INTAKE, colony: 'W-13', stand: '6' })
    const visit = {
      on: DAY,
      opened: 'yes',
      eggs: 'none',
      open: 'none',
      'given1.what': 'egg-frame',
      'given1.frames': '1',
      'given1.donor': 'W-13',
      'ties.done': 'yes',
    }
    const words = await landedOn('/colony/W-12/visit', visit)
    expect(words).toMatch(
      /In the book: Opened; comb ties taken off; frame of eggs given \(.*W-13.*\), Wed 6 May/,
    )
    const onRound = await landedOn('/colony/W-12/visit?then=%2Fround%2Fbox%2FW-13%3Fyard%3D', visit)
    expect(onRound).toMatch(/In the book for W-12: opened.*frame of eggs given/)
  })

  it('an intake or a move onto a stand that is taken: who stands there too, as a notice', async () => {
    await yard.post('/intake', INTAKE)
    expect(await landedOn('/intake', { ...INTAKE, colony: 'W-13' })).toContain('W-12 stands on stand 4 too.')
    expect(await landedOn('/colony/W-13/move', { on: DAY, yard: 'North field', stand: '7' })).not.toContain(
      ' too.',
    )
    expect(await landedOn('/colony/W-12/move', { on: DAY, yard: 'North field', stand: ' 7' })).toContain(
      'W-13 stands on stand 7 too.',
    )
  })
})
