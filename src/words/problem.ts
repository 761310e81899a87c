/** A problem's sentence as a page says it. The journal words problems for programs too: days as ISO, straight quotes. */
import { type Day, dayWords, isDay } from '../days.ts'

const QUOTED = /"((?:[^"\\]|\\.)*)"/
const DAY = /\b\d{4}-\d\d-\d\d\b/g

/** The parts of a message, with `say` done to what is not quoted: what is quoted somebody typed, and it stays as typed. */
const reworded = (message: string, say: (text: string) => string): string =>
  message
    .split(QUOTED)
    .map((part, i) => (i % 2 === 1 ? `“${part.replace(/\\(["\\])/g, '$1')}”` : say(part)))
    .join('')

/** Example: '"T-05" is already in the yard' becomes '“T-05” is already in the yard'. */
export const problemQuotes = (message: string): string => reworded(message, (text) => text)

/** With its days in words as well. Example: '2026-12-24 is in the future' becomes 'Thu 24 Dec is in the future'. */
export const problemWords = (message: string, today: Day): string =>
  reworded(message, (text) => text.replace(DAY, (day) => (isDay(day) ? dayWords(day, today) : day)))
