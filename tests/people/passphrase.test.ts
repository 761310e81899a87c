import { describe, expect, test } from 'vitest'
import { nameKey, nameProblem, nameTyped } from '../../src/people/names.ts'
import { COST, hashed, matches, outdated, passphraseProblem } from '../../src/people/passphrase.ts'
import { CHEAP, PASSPHRASE } from '../support/people.ts'

describe('what is asked of a passphrase', () => {
  test.each([
    ['short words', 'must be at least 12 characters'],
    ['x'.repeat(201), 'must be at most 200 characters'],
    ['abababababababab', 'same few characters'],
    ['password password', 'too easily guessed'],
    ['Odalys-Odalys-1', 'too easily guessed'],
    ['resettle 12345678', 'too easily guessed'],
    // A word and what everybody puts behind it; a date; a telephone number.
    ['Chrysanthemum1987!', 'too easily guessed'],
    ['Marmalade-2026', 'too easily guessed'],
    ['12.05.1987 12.05.1988', 'too easily guessed'],
    ['0199 555 0147 38', 'too easily guessed'],
    // Walks.
    ['qwertyuiop asdfgh', 'too easily guessed'],
    ['1qaz2wsx3edc4rfv', 'too easily guessed'],
    ['zyxwvutsrqponm', 'too easily guessed'],
    ['azertyuiop1234', 'too easily guessed'],
    ['poiuztrewq-4321', 'too easily guessed'],
    // Names: one’s own, backwards, the yard’s.
    ['bramsyladoqwerty', 'too easily guessed'],
    ['QuarryQuarryYard', 'too easily guessed'],
    ['quarry yard 2026!', 'too easily guessed'],
    // What is common, spelled anyhow, alone or together.
    ['p4$$w0rd-p4$$w0rd', 'too easily guessed'],
    ['honeybees and honey', 'too easily guessed'],
    ['summer winter spring', 'too easily guessed'],
    ['correct horse battery staple', 'too easily guessed'],
    ['SaveTheHoneyBees', 'too easily guessed'],
    ['ToBeOrNotToBe!!', 'too easily guessed'],
    ['gravel gravel gravel', 'too easily guessed'],
    ['trelkovtrelkov', 'too easily guessed'],
  ])('%s: %s', (passphrase, why) =>
    expect(passphraseProblem(passphrase, ['Odalys Bram', 'Quarry yard'])).toContain(why),
  )

  test.each([PASSPHRASE, 'крик в тумане над рекой', '🐝🌧️ vierzehn Nägel', 'a1!b2@c3#d4$'])(
    '%s is taken',
    (passphrase) => expect(passphraseProblem(passphrase, ['Odalys Bram', 'Quarry yard'])).toBeNull(),
  )

  test('words that have nothing to do with each other are taken, whichever they are', () => {
    const words = [
      'lantern',
      'gravel',
      'otter',
      'velvet',
      'crumb',
      'harbour',
      'pickle',
      'walnut',
      'tundra',
      'ember',
    ]
    const refused = words.flatMap((a) =>
      words.flatMap((b) =>
        words
          .filter((c) => a !== b && b !== c && a !== c)
          .map((c) => `${a} ${b} ${c}`)
          .filter((p) => passphraseProblem(p, ['Odalys Bram', 'Quarry yard']) !== null),
      ),
    )
    expect(refused).toEqual([])
  })

  test('letters and digits out of a generator are taken', () => {
    for (const p of ['f7Kq2mXv9LtB', 'x4b9-zq7n-k2mv', 'hgzrtwqkdplxnbvy'])
      expect([p, passphraseProblem(p, ['Odalys'])]).toEqual([p, null])
  })
})

describe('hashing', () => {
  test('is scrypt with the parameters of the OWASP password storage cheat sheet (N=2^15, r=8, p=3)', async () => {
    expect(COST).toEqual({ n: 2 ** 15, r: 8, p: 3 })
    const hash = await hashed(PASSPHRASE)
    expect(hash).toMatch(/^scrypt\$32768\$8\$3\$[\w-]{22}\$[\w-]{43}$/)
    expect(await matches(PASSPHRASE, hash)).toBe(true)
    expect(await matches(`${PASSPHRASE}!`, hash)).toBe(false)
  })

  test('agrees with RFC 7914, section 12: P="password", S="NaCl", N=1024, r=8, p=16', async () => {
    // The first 32 of the 64 octets printed there.
    const key = 'fdbabe1c9d3472007856e7190d01e9fe7c6ad7cbc8237830e77376634b373162'
    const salt = Buffer.from('NaCl').toString('base64url')
    const kept = `scrypt$1024$8$16$${salt}$${Buffer.from(key, 'hex').toString('base64url')}`
    expect(await matches('password', kept)).toBe(true)
    expect(await matches('Password', kept)).toBe(false)
  })

  test('salts: the same passphrase never gives the same hash', async () => {
    expect(await hashed(PASSPHRASE, CHEAP)).not.toBe(await hashed(PASSPHRASE, CHEAP))
  })

  test('takes the same passphrase from two keyboards', async () => {
    const hash = await hashed('caf\u00e9 under the bridge', CHEAP)
    expect(await matches('cafe\u0301 under the bridge', hash)).toBe(true)
  })

  test('knows a hash made with other settings, and text that is none', async () => {
    expect(outdated(await hashed(PASSPHRASE, CHEAP), CHEAP)).toBe(false)
    expect(outdated(await hashed(PASSPHRASE, CHEAP))).toBe(true)
    await expect(matches(PASSPHRASE, 'plain text')).rejects.toThrow(RangeError)
  })
})

describe('names', () => {
  test('one person’s name in any writing is one name', () => {
    expect(nameTyped('  Odalys   Bram ')).toBe('Odalys Bram')
    expect(nameKey('ODALYS  Bram')).toBe(nameKey('odalys bram'))
    expect(nameKey('Ame\u0301lie')).toBe(nameKey('Am\u00e9lie'))
    expect(nameKey('\uff2fdalys')).toBe(nameKey('Odalys'))
  })

  test.each([
    ['', 'empty'],
    ['x'.repeat(61), '60'],
    ['Oda\u202elys', 'cannot be seen'],
    ['Oda\u200blys', 'cannot be seen'],
    ['Oda\nlys', 'cannot be seen'],
  ])('%j is refused', (name, why) => expect(nameProblem(name)).toContain(why))
})
