/** The stories of a colony within one plan: followed once, asked several times. */

import { addDays, type Day, daysBetween } from '../days.ts'
import { type KindShares, type Model, oddsOn, type Story, storyOf } from '../forecast/index.ts'
import type { History } from '../journal/index.ts'

/** Days ahead on which options are thought of. */
const FARTHEST = 21

/** Lives as long as the history it is of: a plan's own. */
const followed = new WeakMap<History, Story>()

/** The stories as known on a day, followed as far ahead as options reach. */
export function storyAt(history: History, day: Day, model: Model): Story {
  const known = followed.get(history)
  if (known !== undefined && known.model === model && known.today === day) return known
  const made = storyOf(history, day, model, addDays(day, FARTHEST), false)
  followed.set(history, made)
  return made
}

/** The odds on a day: of the stories at hand, where nothing was recorded between them and that day. */
export function oddsAt(history: History, day: Day, model: Model): KindShares {
  const known = followed.get(history)
  if (known !== undefined && known.model === model && known.today <= day) {
    const ahead = daysBetween(known.today, day)
    const quiet = history.entries.every((e) => e.on <= known.today || e.on > day)
    if (ahead <= FARTHEST && quiet && history.outcome === null) return oddsOn(known, known.t + ahead)
  }
  const story = storyOf(history, day, model, day, false)
  return oddsOn(story, story.t)
}
