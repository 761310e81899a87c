/**
 * Every problem that a form of a helper, or the journal behind it, can answer with is said in Spanish. The sentences are
 * collected from the files that make them: a new one that Spanish does not know fails here.
 */
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { parseAst } from 'vite'
import { describe, expect, it } from 'vitest'
import { spanish } from '../../src/words/es/index.ts'

const ROOT = fileURLToPath(new URL('../..', import.meta.url))

const MAKE_PROBLEMS = [
  ...['history', 'entry', 'problem'].map((f) => `src/journal/${f}.ts`),
  ...['append', 'locks', 'conflicts', 'wording'].map((f) => `src/store/${f}.ts`),
  ...['submit.ts', 'photos-in.ts', 'new-yard.ts'].map((f) => `src/app/${f}`),
  ...['jpeg', 'photo'].map((f) => `src/photos/${f}.ts`),
  ...['suspicion', 'tracing'].map((f) => `src/recovery/${f}.ts`),
  ...['passphrase', 'people'].map((f) => `src/people/${f}.ts`),
  'src/forms/read.ts',
  'src/phone/sender.ts',
  'src/features/entries/other-box-route.tsx',
]

/** How they begin. What begins otherwise is a part of one, or no problem. */
const BEGINS =
  /^(?:(?:“?7”?|"7"|the tag "7") (?:is|was|came|left|mites|by|it)\b|is |must |needs |cannot |comes |names |has |was |does |no |an? [a-z]+ (?:cannot|must)|one entry |brood disease |This |holds )/

interface Node {
  type: string
  value?: unknown
  quasis?: { value: { cooked: string } }[]
}

/** Texts in the file, each with 7 where something known only then stands. */
function textsIn(file: string): string[] {
  const found: string[] = []
  const visit = (node: unknown): void => {
    if (Array.isArray(node)) node.forEach(visit)
    if (node === null || typeof node !== 'object') return
    const { type, value, quasis } = node as Node
    if (type === 'Literal' && typeof value === 'string') found.push(value)
    if (type === 'TemplateLiteral') found.push((quasis ?? []).map((q) => q.value.cooked).join('7'))
    Object.values(node).forEach(visit)
  }
  visit(parseAst(readFileSync(`${ROOT}${file}`, 'utf8'), { lang: file.endsWith('x') ? 'tsx' : 'ts' }))
  return found
}

/** Photos have no field of their own on a form: the name of the file leads. */
const led = (file: string, text: string): string =>
  file.startsWith('src/photos/') ? `“a.jpg” ${text}` : text

const collected = [
  ...new Set(
    MAKE_PROBLEMS.flatMap((file) =>
      textsIn(file)
        .filter((t) => BEGINS.test(t))
        .map((t) => led(file, t)),
    ),
  ),
]

/** Words that every English sentence here has and no Spanish one does. */
const ENGLISH =
  /\b(the|is|must|be|not|at|most|least|this|that|with|was|cannot|has|needs|comes|names|holds|by|it|take)\b/i

/** Without what was typed, which stays as it is. */
const ours = (sentence: string): string => sentence.replaceAll(/“[^”]*”/g, '')

describe('problems in Spanish', () => {
  it('are collected', () => {
    expect(collected.length).toBeGreaterThan(50)
    for (const part of [
      'is in the future',
      'may not be moved',
      'must be at most 60 frames',
      'make it smaller',
    ])
      expect(collected.some((t) => t.includes(part))).toBe(true)
  })

  it.each(collected)('%s', (sentence) => {
    const said = spanish.forms.problem(sentence)
    expect(said).not.toBe(sentence)
    expect(ours(said)).not.toMatch(ENGLISH)
  })

  it('say what stands in them, with its days', () => {
    expect(
      spanish.forms.problem(
        'does not go with the visit of Sun 10 May, which says: Tue 12 May is before the intake on Thu 14 May',
      ),
    ).toBe('no concuerda con la visita del dom 10 may: mar 12 may es antes del ingreso, del jue 14 may')
    expect(
      spanish.forms.problem('does not go with the clearance of disease of Sun 10 May, which is missing'),
    ).toBe('no concuerda con el aviso de que está sana del dom 10 may: falta')
    expect(spanish.forms.problem('does not go with an earlier entry, which is missing')).toBe(
      'no concuerda con una anotación anterior: falta',
    )
    expect(spanish.forms.problem('photos: must be at most 8 photos')).toBe(
      'photos: debe tener como mucho 8 fotos',
    )
  })

  it('leave a sentence that nobody knows as it is, so that this test can fail', () => {
    expect(spanish.forms.problem('is a sentence that nobody knows')).toBe('is a sentence that nobody knows')
  })
})
