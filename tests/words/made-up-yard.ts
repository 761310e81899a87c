/** The invented yard, served in the made-up language to whoever does not read English; a helper is signed in. */
import { join } from 'node:path'
import { wordsIn } from '../../src/words/index.ts'
import { writeFilled } from '../support/filled.ts'
import { type TestYard, testYard } from '../support/yard-app.ts'
import { MADE_UP } from './made-up.ts'

export async function madeUpYard(folder: string, day: string): Promise<TestYard> {
  const file = join(folder, 'yard.db')
  writeFilled(file, day)
  const yard = testYard({
    file,
    day,
    deps: { words: (language) => (language === 'en' ? wordsIn('en') : MADE_UP) },
  })
  await yard.session('helper')
  return yard
}
