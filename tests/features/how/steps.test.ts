/** Every act that the plan can advise has its steps, and no step says a day or a temperature that the plan might say otherwise. */
import { expect, it } from 'vitest'
import { GLOSSARY } from '../../../src/features/how/glossary.ts'
import { LANGUAGES } from '../../../src/languages.ts'
import { ACTIONS } from '../../../src/recovery/index.ts'
import { ACTS } from '../../../src/words/acts.ts'
import { wordsIn } from '../../../src/words/catalogue.ts'
import { actOf } from '../../../src/words/steps.ts'

/** Nothing is done, or what is done is in the reason. */
const WITHOUT = ['none', 'leave-alone', 'open-and-look', 'order-queen', 'see-to-signs']

it('leads from every act that is advised to its steps', () => {
  const without = ACTIONS.filter((action) => actOf({ action, why: '', reasons: [] }, undefined) === null)
  expect(without).toEqual(WITHOUT)
})

it('knows the act of a look by the check that leads', () => {
  const look = { action: 'open-and-look', why: '', reasons: [] } as const
  expect(actOf(look, 'telling-visit')).toBe('first-brood-check')
  expect(actOf(look, 'mite-wash')).toBe('mite-wash')
  expect(actOf(look, 'comb-ties')).toBeNull()
  expect(actOf({ action: 'see-to-signs', sign: 'robbing', why: '', reasons: [] }, undefined)).toBe(
    'close-down',
  )
})

it.each(ACTS)(
  '%s can be read at the box: five steps, none a page long, no temperature, no “telling visit”',
  (act) => {
    for (const language of LANGUAGES) {
      const { steps } = wordsIn(language).steps[act]
      expect(new Set(steps).size).toBe(5)
      for (const step of steps) expect(step.split(' ').length, step).toBeLessThan(50)
      expect(steps.join(' ')).not.toMatch(/°|telling|day \d|día \d/i)
    }
  },
)

it('explains each word once', () => {
  const ids = GLOSSARY.flatMap((g) => g.terms.map((t) => t.id))
  expect(new Set(ids).size).toBe(ids.length)
  for (const language of LANGUAGES) {
    const { terms, firstRound } = wordsIn(language).how
    expect(Object.keys(terms).sort()).toEqual([...ids].sort())
    const said = firstRound.flatMap((p) => p.says).join(' ')
    expect(said.split(' ').length, language).toBeLessThan(400)
  }
})
