/** What is said beside the advice of the day: feed, mites, cells, a move. */
import { type Day, inWords } from '../../days.ts'

/** Foragers fly back to an old stand nearer than this, km (common practice: 3 km, 2 miles). */
export const FORAGERS_RETURN_KM = 3

export const NEEDS = {
  'hungry-and-robbed': ({ since }: { since: Day }) =>
    `Stores were low on ${inWords(since)}: close down against robbers first, then feed it at dusk, inside.`,
  hungry: ({ since }: { since: Day }) => `Stores were low on ${inWords(since)}: feed it.`,
  'mites-over': ({ per100, on, most }: { per100: number; on: Day; most: number }) =>
    `Mites: ${per100.toFixed(1)} per 100 bees on ${inWords(on)}, the threshold is ${most}. Treat as the label allows, best while there is no capped brood, and wash again.`,
  'treatment-kills-caged': () =>
    'A queen is in a cage in there: formic acid, thymol and the like can kill her. See to her first.',
  'treatment-costs-young': () =>
    'A young queen may be in there: formic acid, thymol and the like can cost her, so wait until she lays, lid on, unless the mites cannot wait.',
  'treated-wash-again': ({ on }: { on: Day }) =>
    `It was treated on ${inWords(on)}: wash again, to see whether it worked.`,
  'mates-when-none-do': ({ about }: { about: Day }) =>
    `She would fly to mate about ${inWords(about)}, when queens do not mate here: have a mated queen or a colony to unite it with in mind.`,
  'cells-came-along': () =>
    'Queen cells came along: cut every one before the caged queen is let out, or one of them kills her; or keep one cell and not her.',
  'cells-beside-queen': ({ since }: { since: Day }) =>
    `Queen cells beside a queen since ${inWords(since)}: she may be replaced, or they swarm. Cut them all, or leave one.`,
  'virgin-may-be-out': () => 'A virgin may be out already.',
  'may-cast': ({ cells, before }: { cells: number; before: Day }) =>
    `Strong, and ${cells} queen cells: cut all but one or two before ${inWords(before)}, or expect a cast swarm with the first virgin.`,
  moved: ({ on }: { on: Day }) => `Moved on ${inWords(on)}.`,
  'moved-maybe-near': ({ on }: { on: Day }) =>
    `Moved on ${inWords(on)}: if it was under ${FORAGERS_RETURN_KM} km, foragers fly back to the old stand. ${LEARN_ANEW}`,
  'moved-near': ({ on }: { on: Day }) =>
    `Moved on ${inWords(on)} by less than ${FORAGERS_RETURN_KM} km: foragers fly back to the old stand and are lost to it. ${LEARN_ANEW}`,
  'moved-young-queen': () => 'A young queen who has learnt the old place may not come home from her flight.',
  'mites-seen': () => 'Mites were seen on bees: wash, to know how many there are.',
  'queenless-roar': () => 'They roar like bees without a queen: look for eggs and cells when the lid is off.',
  chalkbrood: () => 'Chalkbrood: keep it dry, strong and fed; a new queen often clears it.',
  'removed-in-heat': ({ outdoorC }: { outdoorC: number }) =>
    `It was removed in the heat, at ${outdoorC} °C: shade and water at once, an open entrance, and look at the floor for dead bees and slumped comb.`,
  'many-dead': () =>
    'Many bees died on the way: clear the dead from the floor and the entrance, and count the frames of bees soon.',
  'brood-dead': () =>
    'The brood that came along is dead: take that comb out before beetles and moths find it.',
  sprayed: () =>
    'It was sprayed: keep, feed and give on none of its comb or honey. No cells are to be awaited from that brood; take the comb out, and note it.',
}

const LEARN_ANEW =
  'Move in the evening, closed, and lean branches before the entrance so that they learn the place anew.'
