/** The words of the page that is being drawn, for parts that stand too deep in it to be handed them. */
import { createContext, useContext } from 'hono/jsx'
import { type Words, wordsIn } from '../words/index.ts'

/** Set by the layout, to the words of its frame. Without it: English. */
export const Spoken = createContext<Words>(wordsIn('en'))

/** For components only: a context is known while a page is drawn, and not before. */
export const useWords = (): Words => useContext(Spoken)
