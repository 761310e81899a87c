/** Every path of the app says who may open it: a page that nobody thought of would be the operator's alone, and missing to the rest. */
import { expect, test } from 'vitest'
import { appFor } from '../../src/node/app.ts'
import { actionAt } from '../../src/people/index.ts'
import { testYard } from '../support/yard-app.ts'

test('every path has its line in the table of places', async () => {
  const yard = await testYard()
  const paths = appFor('operator', yard.deps)
    .routes.filter((r) => r.method !== 'ALL')
    .map((r) => r.path)
  const silent = [...new Set(paths)].filter((path) => !path.includes('*') && actionAt(path) === null)
  expect(silent).toEqual([])
  expect(actionAt('/a-page-nobody-thought-of')).toBeNull()
})
