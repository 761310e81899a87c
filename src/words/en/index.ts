/** English. Its type is what every language has to say. */
import { dates } from './dates.ts'
import { account, signIn } from './door.ts'
import { frame } from './frame.ts'
import { reasons } from './reasons.ts'

export const english = { ...frame, dates, signIn, account, reasons }
