/** The examples in the documentation, run as they stand against a yard: what is written there is what is answered. */
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { describe, expect, test } from 'vitest'
import { NAMES, ORIGIN, testYard } from '../../support/yard-app.ts'

const at = (path: string): string => fileURLToPath(new URL(`../../../${path}`, import.meta.url))
const BETWEEN = /<!-- api-examples -->([\s\S]*?)<!-- \/api-examples -->/

interface Example {
  command: string
  status: number
  answer: unknown
}

/** Every command followed by the answer it gets. */
function examplesIn(text: string): Example[] {
  const pair = /```sh\n([\s\S]*?)```\s+```json (\d{3})\n([\s\S]*?)```/g
  return [...text.matchAll(pair)].map(([, command = '', status, answer = '']) => ({
    command,
    status: Number(status),
    answer: JSON.parse(answer),
  }))
}

/** The words of a shell command: quotes, continued lines and $NAMES as sh reads them. */
function wordsOf(command: string, names: Record<string, string>): string[] {
  const filled = (text: string): string =>
    text.replaceAll(/\$([A-Z]+)/g, (_all, name: string) => names[name] ?? '')
  const word = /'([^']*)'|"([^"]*)"|(\S+)/g
  return [...command.replaceAll('\\\n', ' ').matchAll(word)].map(
    ([, single, double, bare]) => single ?? filled(double ?? bare ?? ''),
  )
}

interface Call {
  url: string
  init: RequestInit
}

/** Reads curl's arguments: those used in the documentation, and no others. */
function callOf(words: readonly string[]): Call {
  const [program, ...rest] = words
  if (program !== 'curl') throw new Error(`not a curl command: ${program}`)
  const headers = new Headers()
  const call: Call = { url: '', init: { headers } }
  for (let i = 0; i < rest.length; i++) {
    const word = rest[i] ?? ''
    const value = (): string => rest[++i] ?? ''
    if (word === '-s') continue
    if (word === '-X') call.init.method = value()
    else if (word === '-d') call.init.body = value()
    else if (word === '-H') {
      const [, name = '', text = ''] = /^([^:]+): *(.*)$/.exec(value()) ?? []
      headers.set(name, text)
    } else if (/^http/.test(word)) call.url = word
    else throw new Error(`an argument this test does not know: ${word}`)
  }
  return call
}

const path = 'src/features/api/README.md'

describe(`in ${path}`, () => {
  const examples = examplesIn(BETWEEN.exec(readFileSync(at(path), 'utf8'))?.[1] ?? '')

  test('every command has its answer', () => {
    const commands = (readFileSync(at(path), 'utf8').match(/^curl /gm) ?? []).length
    expect(examples.length).toBeGreaterThanOrEqual(8)
    expect(examples).toHaveLength(commands)
  })

  test('each answers as it is written there, in order, and the same entries again are 200', async () => {
    const yard = testYard({ day: '2026-06-01' })
    await yard.session('operator')
    const person = yard.services.people.accounts.byName(NAMES.operator)
    if (person === null) throw new Error('no operator')
    const made = yard.services.tokens.make({
      person,
      name: 'x',
      scopes: ['read', 'write', 'review'],
      days: 30,
    })
    if (!made.ok) throw new Error(made.problems[0]?.message)
    for (const { command, status, answer } of examples) {
      const { url, init } = callOf(wordsOf(command, { YARD: ORIGIN, TOKEN: made.value.token }))
      const response = await yard.app.request(url, init)
      const got: unknown = await response.json()
      expect(response.status, `${command}\n${JSON.stringify(got)}`).toBe(status)
      expect(got).toMatchObject(answer as object)
      if (status === 201) expect((await yard.app.request(url, init)).status).toBe(200)
    }
    expect(yard.errors).toEqual([])
  })
})
