/** Lines of a file larger than what is read at once: the same as if it were split whole. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, expect, test } from 'vitest'
import { fileLines } from '../../../src/features/data/file-lines.ts'

const folder = mkdtempSync(join(tmpdir(), 'resettle-lines-'))
afterAll(() => rmSync(folder, { recursive: true, force: true }))
const file = (name: string, content: string | Uint8Array): string => {
  const path = join(folder, name)
  writeFileSync(path, content)
  return path
}

test.each([
  ['nothing', ''],
  ['one line without its feed', 'a'],
  ['an empty line at the end', 'a\n\n'],
  ['a mark of its bytes’ order', '\uFEFFa\nb'],
  ['a line longer than three chunks', `first\n${'é'.repeat(1_700_000)}\nlast`],
  // Three bytes each, so that chunks end within a character.
  [
    'many lines over many chunks',
    Array.from({ length: 40_000 }, (_, i) => `${i} ${'蜂'.repeat(25)}`).join('\n'),
  ],
])('%s', (name, text) => {
  const lines = [...fileLines(file(name, text))]
  expect(lines.length).toBe(text.split('\n').length)
  expect(lines.join('\n') === text).toBe(true)
})

test('what is no UTF-8 is said, even at the very end', () => {
  expect(() => [...fileLines(file('latin', Uint8Array.of(0x61, 0xe9)))]).toThrow(TypeError)
  expect(() => [...fileLines(join(folder, 'nowhere'))]).toThrow(/ENOENT/)
})
