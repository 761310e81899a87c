/**
 * The agreement with a customer: an operator's own text with a few words in braces, filled in for each job. Plain text:
 * an empty line ends a paragraph, a line that begins with '# ' is a heading, lines with '- ' are a list.
 */
import type { Agreement, Sheet } from './removal-sheet.ts'

/** Words in braces that are filled in. */
export const BLANKS = {
  customer: 'the customer’s name',
  address: 'where the bees are',
  yard: 'the name of your yard',
  bees: 'where in the building they are, as far as it is known',
  price: 'hourly or fixed price, from the sheet',
  day: 'the day planned',
  heat: 'the heat limit of your protocol',
  warranty: 'the days in which you come back without charge',
  deposit: 'the deposit, where there is one',
  extra: 'what is agreed for this job beside the rest',
} as const
export type Blank = keyof typeof BLANKS

export const TERMS_LIMIT = 12_000

/** Ours, in plain words; an operator makes it theirs and has it looked over where they work. */
export const DEFAULT_TERMS = `# Taking honey bees out, alive

Between {yard} and {customer}. The bees are at {address}: {bees}. Planned for {day}.

# What is included

- Finding where the colony sits, and showing you.
- Opening the surface as far as the comb, and no further.
- Taking out bees, brood and the comb in reach, alive as far as we can.
- Closing the hole they used, for the time being.
- Looking after the bees in our yard. Not every colony lives through a removal; you may ask us on day 30.

# What is not included

- Closing up for good and repair: yours to arrange, with whom you like.
- Electric, gas, water, heating, asbestos and lead work: a licensed trade does that before we open anything.
- Comb and honey out of reach: it can run, smell and draw other bees, whatever we cover and screen.
- Single bees that come back for some days, and swarms that move in later.
- Damage that was there before, or that hidden wires, pipes or rot cause although both of us looked for them.

# What you do

- Say whether the bees were sprayed or foamed, with what and when, and who in the house or next door is allergic.
- Keep people and animals away, and windows shut, until we say that the last bees are in.
- Be the owner, or have the owner’s leave to open the building.

# When bees come back

{warranty} A new swarm is a new job. Tell us on the day you see them.

# Photos

We take photos, open and closed. They stay with this paper; nobody else sees them without asking you.

# When we stop

Above {heat}, in wind or thunder, when wires, pipes, asbestos or weak boards come to light, or when the bees are fiercer than the place allows, we stop, close up for the time being and come back, or say no. Whoever is working decides that. Local codes stand above this paper.

# Price

{price} {deposit}

{extra}`

const LINE = /^_+$/

/** Fills in the words in braces; one that is not known stays as a line to write on. */
export function filledTerms(template: string, words: Partial<Record<Blank, string>>): string {
  const text = template.replaceAll(/\{([a-z]+)\}/g, (whole, name: string) => {
    if (!Object.hasOwn(BLANKS, name)) return whole
    if (name === 'extra' || name === 'deposit') return words[name] ?? ''
    return words[name as Blank] ?? '____________________'
  })
  return text
    .replaceAll(/[ \t]+$/gm, '')
    .replaceAll(/\n{3,}/g, '\n\n')
    .trim()
}

/** Braces that nobody will fill in: a slip of the pen. */
export const unknownBlanks = (template: string): string[] => [
  ...new Set(
    [...template.matchAll(/\{([^{}\n]{1,40})\}/g)]
      .map((m) => m[1] ?? '')
      .filter((name) => !Object.hasOwn(BLANKS, name)),
  ),
]

const amount = (n: number, currency: string): string =>
  `${currency}${Number.isInteger(n) ? String(n) : n.toFixed(2)}`

/** '$95 an hour, about 4 hours ($380); the hours worked are charged.' Undefined while nothing is said. */
export function priceWords(a: Agreement, currency: string): string | undefined {
  if (a.pricing === 'fixed' && a.fixed !== undefined)
    return `A fixed price of ${amount(a.fixed, currency)}, however long it takes.`
  if (a.pricing !== 'hourly' || a.hourly === undefined) return undefined
  const expected =
    a.hours === undefined
      ? ''
      : ` We expect about ${Number(a.hours.toFixed(2))} hours, that is about ${amount(a.hourly * a.hours, currency)}.`
  return `${amount(a.hourly, currency)} an hour for the hours worked.${expected}`
}

const warrantyWords = (days: number | undefined): string =>
  days === undefined || days === 0
    ? 'Coming back for bees is charged like any visit.'
    : `If bees settle again in the same hollow within ${days} days, we come back once without charge; after that a visit is a new job.`

export interface Surroundings {
  yard: string
  currency: string
  heat: string
  /** Where the bees are, when nobody has written it down: the kind of place. */
  bees?: string
  /** A day in words. */
  dayWords: (day: string) => string
}

/** The agreement of one job as it would be signed now. */
export function termsOf(template: string, s: Sheet, around: Surroundings): string {
  const words: Partial<Record<Blank, string | undefined>> = {
    customer: s.job.name,
    address: s.job.address,
    yard: around.yard === '' ? undefined : around.yard,
    bees: s.site.where ?? around.bees,
    price: priceWords(s.agreement, around.currency),
    day: s.job.plannedOn === undefined ? undefined : around.dayWords(s.job.plannedOn),
    heat: around.heat,
    extra: s.agreement.extra,
    warranty: warrantyWords(s.agreement.warrantyDays),
    deposit:
      s.agreement.deposit === undefined
        ? undefined
        : `A deposit of ${amount(s.agreement.deposit, around.currency)} is due now and counts towards it.`,
  }
  const known = Object.fromEntries(Object.entries(words).filter(([, v]) => v !== undefined))
  return filledTerms(template, known as Partial<Record<Blank, string>>)
}

/** Blanks of a text that would still be a line to write on: nothing is signed while there is one. */
export const openBlanks = (template: string, s: Sheet, around: Surroundings): Blank[] =>
  (Object.keys(BLANKS) as Blank[]).filter(
    (name) => template.includes(`{${name}}`) && LINE.test(termsOf(`{${name}}`, s, around)),
  )

export type Block = { is: 'heading' | 'text'; text: string } | { is: 'list'; items: string[] }

/** The text as blocks to be laid out. */
export function blocksOf(terms: string): Block[] {
  const blocks: Block[] = []
  for (const line of terms.replaceAll('\r\n', '\n').split('\n')) {
    const text = line.trim()
    const last = blocks.at(-1)
    if (text === '') blocks.push({ is: 'text', text: '' })
    else if (text.startsWith('# ')) blocks.push({ is: 'heading', text: text.slice(2) })
    else if (text.startsWith('- ')) {
      if (last?.is === 'list') last.items.push(text.slice(2))
      else blocks.push({ is: 'list', items: [text.slice(2)] })
    } else if (last?.is === 'text' && last.text !== '') last.text += ` ${text}`
    else blocks.push({ is: 'text', text })
  }
  return blocks.filter((b) => b.is === 'list' || b.text !== '')
}
