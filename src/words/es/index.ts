/** Spanish, as beekeepers of North and Central America say it: README.md has the glossary and where each term is from. */
import type { Words } from '../catalogue.ts'
import { dates } from './dates.ts'
import { account, signIn } from './door.ts'
import { frame } from './frame.ts'
import { reasons } from './reasons/index.ts'

export const spanish: Words = { ...frame, dates, signIn, account, reasons }
