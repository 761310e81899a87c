/** Evidence that contradicts the story so far, with its likeliest explanations. */
import { type Day, inWords } from '../../days.ts'
import { type Cause, causeInEnglish } from './inside.ts'

type Stage = 'open' | 'capped' | 'emerged'
/** What two looks of a day can disagree about. */
export type About = 'eggs' | 'open brood' | 'capped brood' | 'queen cells'

const CELL: Record<Stage, string> = {
  open: 'An open queen cell',
  capped: 'A capped queen cell',
  emerged: 'An emerged queen cell',
}

export const SURPRISES = {
  'queen-given-while-raising': ({ on }: { on: Day }) =>
    `A mated queen went in on ${inWords(on)} while the colony was raising its own. A virgin or a cell kills her: make sure that none is left.`,
  'queen-given-to-laying-workers': ({ on }: { on: Day }) =>
    `A mated queen went in on ${inWords(on)} among laying workers: they mostly kill her. Likelier to succeed: take her out and unite with a strong queenright colony.`,
  'two-queens-one-caged': ({ on }: { on: Day }) =>
    `A queen is still in her cage on ${inWords(on)}, and another lays: two queens. Take one of them out, the caged one if the eggs are good.`,
  'let-out-beside-another': ({ on }: { on: Day }) =>
    `A queen was let out on ${inWords(on)} into a colony in which another lays. One of the two will be killed: see in two to three days that eggs are still laid.`,
  'lost-and-alive': ({ lost, on }: { lost: Day; on: Day }) =>
    `The box was said to be lost on ${inWords(lost)}, and bees were seen in it on ${inWords(on)}. One of the two is wrong, or a swarm moved in.`,
  'fresh-comb-too-old': ({ on, since }: { on: Day; since: Day }) =>
    `Brood on fresh comb on ${inWords(on)} is older than the colony’s stay here since ${inWords(since)}. Likeliest: the comb came along; or a date is wrong. It is not taken as proof.`,
  'cells-beside-layer': ({ on }: { on: Day }) =>
    `Queen cells beside a laying queen on ${inWords(on)}. Likeliest: she is being replaced, or they mean to swarm; look again before the cells are due.`,
  'cells-beside-caged': ({ on }: { on: Day }) =>
    `Queen cells on ${inWords(on)} while a queen is caged here: they raise their own. Cut every cell before she comes out, or keep the cells and not her.`,
  'cells-beside-seen': ({ on }: { on: Day }) =>
    `Queen cells on ${inWords(on)} beside a queen that was seen. Likeliest: she is being replaced, or they mean to swarm.`,
  'eggs-doubted': ({ eggs, on, begun }: { eggs: Day; on: Day; begun: Day }) =>
    `Eggs were seen on ${inWords(eggs)}, and on ${inWords(on)} there are queen cells that were begun by ${inWords(begun)} and no eggs: the two looks disagree. Likeliest: those eggs were not hers, or were something else.`,
  'cells-younger': ({ on, latest, promised }: { on: Day; latest: Day; promised: Day }) =>
    `Queen cells on ${inWords(on)} are younger than expected: she emerges by ${inWords(latest)}, not ${inWords(promised)}. Likeliest: slow cells at the end of their range; or a queen was still laying here.`,
  'eggs-missed': ({ by, none }: { by: Day; none: Day }) =>
    `Brood laid by ${inWords(by)}, though no eggs were found on ${inWords(none)}. Likeliest: eggs were missed then; or a date, or what was seen, is wrong.`,
  'eggs-before-possible': ({ by, possible }: { by: Day; possible: Day }) =>
    `New eggs by ${inWords(by)}, but the queen being raised cannot lay before ${inWords(possible)}. Likeliest: another queen is present; or a date, or what was seen, is wrong.`,
  'eggs-while-caged': ({ on, since }: { on: Day; since: Day }) =>
    `New eggs on ${inWords(on)} while the queen is in her cage since ${inWords(since)}. Likeliest: another queen is loose in the box; or she was out already.`,
  'eggs-though-queenless': ({ by, because }: { by: Day; because: readonly Cause[] }) =>
    `New eggs by ${inWords(by)} in a colony taken for queenless (${causeInEnglish(because)}). Likeliest: a queen was there and not yet laying when it was last looked at; or a date, or what was seen, is wrong.`,
  'eggs-disagree': ({ seen, on }: { seen: Day; on: Day }) =>
    `Eggs were seen on ${inWords(seen)}, and none on ${inWords(on)}: the two looks disagree. Either eggs were missed, or those of ${inWords(seen)} were none. Look again in two to three days.`,
  'queen-though-queenless': ({ on, because }: { on: Day; because: readonly Cause[] }) =>
    `A queen was seen on ${inWords(on)} in a colony taken for queenless (${causeInEnglish(because)}). Likeliest: she was missed before, or a stray virgin came in; or it was a mistake.`,
  'queen-before-possible': ({ on, earliest }: { on: Day; earliest: Day }) =>
    `A queen was seen on ${inWords(on)}, before the one being raised can emerge (${inWords(earliest)}). Likeliest: the old queen is still there; or another cell was further on.`,
  'cell-dead': ({ on, last }: { on: Day; last: Day }) =>
    `A queen cell still sealed on ${inWords(on)} is dead: the last day on which a queen could have left it was ${inWords(last)}, and no young brood was added. Unless a virgin came out of another one, they have no queen.`,
  'swarm-may-have-virgin': ({ on }: { on: Day }) =>
    `No eggs on ${inWords(on)}, and no brood came with the swarm: it may have brought a virgin, and then no cells say nothing. Keep the lid on while she flies.`,
  'looks-disagree': ({ on, about }: { on: Day; about: readonly About[] }) =>
    `Two looks of ${inWords(on)} disagree about ${about.join(' and ')}. One of them is wrong: look once more in two to three days, with both of them if you can.`,
  'cells-impossible': ({ stage, on }: { stage: Stage; on: Day }) =>
    `${CELL[stage]} on ${inWords(on)} cannot come from the young brood known to be in this box. Likeliest: a queen has laid here since; or a date, or what was seen, is wrong.`,
  'emerged-early': ({ on, earliest }: { on: Day; earliest: Day }) =>
    `An emerged queen cell on ${inWords(on)} is earlier than the queen being raised can leave hers (${inWords(earliest)}). Likeliest: another cell was further on; or a date, or what was seen, is wrong.`,
  'cells-do-not-fit': ({ stage, on, from, to }: { stage: Stage; on: Day; from: Day; to: Day }) =>
    `${CELL[stage]} on ${inWords(on)} does not fit the queen expected between ${inWords(from)} and ${inWords(to)}. Likeliest: a second batch of cells from younger brood; or a date, or what was seen, is wrong.`,
}
