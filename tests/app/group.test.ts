import { expect, test } from 'vitest'
import { groupOf } from '../../src/app/group.ts'

/** A database of words: a transaction that throws leaves it as it was. */
function words(): { kept: string[]; transactions: number; together: (work: () => void) => void } {
  const made = {
    kept: [] as string[],
    transactions: 0,
    together: (work: () => void): void => {
      const before = [...made.kept]
      made.transactions++
      try {
        work()
      } catch (error) {
        made.kept = before
        throw error
      }
    },
  }
  return made
}

test('writes of the same moment are one transaction, each answered with its own value', async () => {
  const repository = words()
  const write = groupOf(repository.together)
  const answers = await Promise.all(['a', 'b', 'c'].map((w) => write(() => repository.kept.push(w))))
  expect(answers).toEqual([1, 2, 3])
  expect(repository.kept).toEqual(['a', 'b', 'c'])
  expect(repository.transactions).toBe(1)
})

test('one that fails takes nobody with it, and nothing is written twice', async () => {
  const repository = words()
  const write = groupOf(repository.together)
  const answers = await Promise.allSettled(
    ['a', 'bad', 'c'].map((w) =>
      write(() => {
        repository.kept.push(w)
        if (w === 'bad') throw new Error('no')
        return w
      }),
    ),
  )
  expect(answers.map((a) => a.status)).toEqual(['fulfilled', 'rejected', 'fulfilled'])
  expect(repository.kept).toEqual(['a', 'c'])
})

test('nobody is answered before it is durable', async () => {
  const order: string[] = []
  const write = groupOf((work) => {
    work()
    order.push('durable')
  })
  await write(() => order.push('written')).then(() => order.push('answered'))
  expect(order).toEqual(['written', 'durable', 'answered'])
})

test('more than six that wait are several transactions, and others are let in before each', async () => {
  const repository = words()
  const order: string[] = []
  const pause = async (): Promise<void> => {
    order.push(`others, ${repository.kept.length} written`)
  }
  const write = groupOf(repository.together, { pause })
  const answers = await Promise.all(
    Array.from({ length: 30 }, (_, n) => write(() => repository.kept.push(`${n}`))),
  )
  expect(answers).toEqual(Array.from({ length: 30 }, (_, n) => n + 1))
  expect(repository.transactions).toBe(5)
  expect(order).toEqual([0, 6, 12, 18, 24].map((n) => `others, ${n} written`))
})

test('nothing is written before all is ready, and then everything is', async () => {
  const repository = words()
  let begin = (): void => undefined
  const ready = new Promise<void>((go) => {
    begin = go
  })
  const write = groupOf(repository.together, { ready })
  const early = write(() => repository.kept.push('early'))
  await new Promise((go) => setTimeout(go, 20))
  expect(repository.kept).toEqual([])
  begin()
  expect(await early).toBe(1)
})
