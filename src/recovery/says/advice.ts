/** Why an advice is given by facts, guard rails and dates: sentences beside the reason of the question it answers. */
import { type Day, inWords } from '../../days.ts'
import { frameCount } from './asks.ts'
import { type Deed, deedInEnglish } from './inside.ts'

export type PressingSign = 'robbing' | 'beetles' | 'moths' | 'deformed-wings'
/** What a look may leave out, though an answer hangs on it. */
export type Sought = 'eggs' | 'queen cells' | 'capped brood'

const SIGN: Record<PressingSign, string> = {
  robbing: 'Robbing',
  beetles: 'Small hive beetles',
  moths: 'Wax moths',
  'deformed-wings': 'Deformed wings',
}

/** What is done about a sign (common practice), without a full stop. */
export const REMEDY: Record<PressingSign, string> = {
  robbing:
    'Robbing: close the entrance to one bee’s width today, shut every gap, leave no honey or syrup about and do not open it. Feed only at dusk, inside, once it has stopped',
  beetles:
    'Small hive beetles: crush what you see, put traps in, take out comb the bees do not cover, and narrow the box; slimed comb goes out at once',
  moths:
    'Wax moths: take out comb the bees do not cover and freeze it, scrape out the webs, and narrow the box to what they fill',
  'deformed-wings':
    'Deformed wings: that is what mites do. Wash bees for mites now, whatever the last wash said, and treat by the label if they are over the threshold',
}

const LEFT_OUT: Record<Sought, string> = {
  eggs: 'whether there are eggs',
  'queen cells': 'whether there are queen cells',
  'capped brood': 'whether worker brood is capped',
}

const HOW_LOST = { 'no-bees': 'without bees', dead: 'dead', gone: 'gone' } as const

const FEW = {
  layer:
    'too few to keep brood warm, even with a laying queen. Unite it with a queenright colony and keep the better queen, or add bees and a frame of capped brood.',
  nucleus:
    'a laying queen with a nucleus of bees. Add a frame of capped brood with its bees, feed, and keep it small; do not unite it.',
  queen:
    'a queen is here. Add a frame of capped brood with its bees and feed, and see first whether she lays.',
  raising:
    'too few to raise a queen well. Cut the queen cells, then unite it with a queenright colony, or add a frame of capped brood.',
  mating: 'enough for a virgin to mate from. Add a frame of capped brood now, before quiet time.',
  unproven: 'and no queen is proven. Unite it with a queenright colony, or add a frame of capped brood.',
  queenless: 'unite it with a queenright colony, or add a frame of capped brood.',
} as const

/** Of few bees: what lives there besides. */
export type Few = keyof typeof FEW

type Cage = { on: Day; days: number }

export const ADVICE = {
  'left-the-yard': ({ on }: { on: Day }) => `The colony left the yard on ${inWords(on)}.`,
  'found-lost': ({ how, on }: { how: keyof typeof HOW_LOST; on: Day }) =>
    `Found ${HOW_LOST[how]} on ${inWords(on)}: a beekeeper looks, closes the entrance so that it is not robbed, and records how it left (died, or absconded). Comb from a dead colony goes to no other before the brood has been looked at for disease.`,
  'disease-suspected': ({ on, cleanSince }: { on: Day; cleanSince: boolean }) =>
    `Brood disease was suspected on ${inWords(on)}${cleanSince ? ', and a clean look since does not clear it' : ''}: close up, do not move or unite it, take no brood from it, and call the apiary inspector. Local codes decide.`,
  bound: ({ how, on, from, opens, closes }: { how: Deed; on: Day; from: string; opens: Day; closes: Day }) =>
    `It ${deedInEnglish(how)} on ${inWords(on)}, and brood disease is suspected in ${from}: do not move or unite it and take no brood, bees or comb from it. Look at every brood frame, bees shaken off, between ${inWords(opens)} and ${inWords(closes)}, and note the signs.`,
  remedy: ({ sign, on }: { sign: PressingSign; on: Day }) => `${REMEDY[sign]} (seen on ${inWords(on)}).`,
  'sign-not-over': ({ sign, on }: { sign: PressingSign; on: Day }) =>
    `${SIGN[sign]} on ${inWords(on)}, and nobody has noted since that it is over: look.`,
  'look-again-on': ({ on }: { on: Day }) => `Look again on ${inWords(on)}.`,
  'is-it-over': () => 'Look whether it is over.',
  'robbed-and-hungry': () => 'Stores are low: close down first, then feed at dusk, inside.',
  'cut-cells-before-release': () =>
    'There are queen cells: cut every one before she comes out, or keep one and not her.',
  'two-queens': ({ still }: { still: Day }) =>
    `Two queens: one in the cage, still there on ${inWords(still)}, and another that lays. Take one of them out today: the caged one if the eggs are good.`,
  'cage-forgotten': () => 'Nobody has looked for days: look for queen cells as well, in case she is dead.',
  'virgin-still-caged': ({ on, days }: Cage) =>
    `Still in her cage on ${inWords(on)}, ${days} days after it went in: let her out by hand, for a virgin has to fly within her first three weeks.`,
  'long-caged': ({ on, days }: Cage) =>
    `Still in her cage on ${inWords(on)}, ${days} days after it went in: let her out by hand if the bees on the cage are calm; if they cling and bite, look for another queen or for cells.`,
  'still-caged': ({ on, days }: Cage) =>
    `Still in her cage on ${inWords(on)}, ${days} days after it went in: let her out by hand if the bees on the cage are calm; if they cling and bite, wait a day.`,
  'laying-workers-unite': () =>
    'Laying workers: unite with a strong queenright colony, after a look for brood disease. A bought queen would be killed.',
  'few-bees': ({ frames, few }: { frames: number; few: Few }) => `Only ${frameCount(frames)}: ${FEW[few]}`,
  'disease-first': () => 'Look for brood disease first.',
  'mates-out-of-season': ({ about }: { about: Day }) =>
    `A queen raised now would fly to mate about ${inWords(about)}, when queens do not mate here.`,
  'raised-out-of-season': ({ about }: { about: Day }) =>
    `She would fly to mate about ${inWords(about)}, when queens do not mate here. Cut the queen cells, or find the virgin and take her out.`,
  'unite-on-a-mild-day': () => 'Unite it with a queenright colony on a mild day.',
  'buy-or-unite': () => 'Look for a virgin and for cells, then introduce a mated queen; or unite it.',
  'order-today': ({ days }: { days: number | null }) =>
    `None is in hand: order one today${days === null ? '' : `, she takes ${days} days to come`}.`,
  'no-donor': () =>
    'No donor can spare a frame of eggs. Look for a virgin and for cells, then introduce a mated queen.',
  'eggs-may-be-ignored': () =>
    'More than a month without young brood: a frame of eggs may be ignored. Look for a virgin and for cells, then introduce a mated queen.',
  'swarm-may-bring-virgin': () => 'A swarm may have brought a virgin: look for one.',
  'give-gently': () => 'Give it early or late in the day, gently: a virgin may be about.',
  'left-out': ({ what }: { what: readonly Sought[] }) =>
    `You have not said ${what.map((w) => LEFT_OUT[w]).join(', nor ')}: that decides it.`,
  'virgin-by-now': () =>
    'By now a virgin may be in it (about one box in four): go early or late in the day, gently, or look from outside only.',
  'ready-until': ({ until }: { until: Day }) =>
    `The hold is over and every condition is met: a last disease look, and it may go. The looks and the wash count until ${inWords(until)}.`,
  'leave-quiet': ({ until, sure }: { until: Day | null; sure: boolean }) =>
    `Leave it alone${until === null ? '' : ` until ${inWords(until)}`}, lid on: a young queen ${sure ? 'is' : 'may be'} emerging, maturing or mating.`,
  'nothing-asked': () => 'Nothing is asked of this colony now.',
  'leave-alone': ({ until }: { until: Day }) => `Leave it alone until ${inWords(until)}.`,
  'lid-on-quiet': ({ until }: { until: Day }) => `Lid on: quiet time until ${inWords(until)}.`,
  'lid-on-cold': () =>
    'Lid on: it is too cold to open. Heft it, look at the entrance, and give fondant if it is light.',
  'order-ahead': ({ days }: { days: number | null }) =>
    `A mated queen is likely to be needed here and none is in hand${days === null ? '' : `; one takes ${days} days to come`}: order one now. If they raise their own after all, another colony will need her.`,
}
