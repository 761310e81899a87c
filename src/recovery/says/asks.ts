/** Why a question is asked. */
import { type Day, inWords } from '../../days.ts'
import { type Cause, capital, causeInEnglish } from './inside.ts'

type Because = { because: readonly Cause[] }

export const frameCount = (n: number): string =>
  `${Math.round(n * 4) / 4} ${n === 1 ? 'frame' : 'frames'} of bees`

export const ASKS = {
  'first-days': () => 'Do they fly, is there feed, are there dead bees, or have they left? The lid stays on.',
  'load-unknown': () => 'How many mites per 100 bees? Nobody knows this colony’s load yet.',
  'combs-tied': () => 'Are the combs attached to their frames? Then the bands come off.',
  'first-brood-check': ({ lastEgg }: { lastEgg: Day }) =>
    `Eggs, queen cells, or neither? Her last egg on this comb was laid by ${inWords(lastEgg)}; from the fourth day after, eggs can only be new, and cells show if she is gone.`,
  'caged-at-removal': ({ on }: { on: Day | null }) =>
    `Is she out of her cage, and do the bees accept her? She was caged ${on === null ? 'at intake' : `on ${inWords(on)}, at the removal`}.`,
  'caged-given': ({ on, who }: { on: Day; who: 'queen' | 'virgin' }) =>
    `Is she out of her cage, and do the bees accept her? ${who === 'virgin' ? 'A virgin' : 'A mated queen'} went in caged on ${inWords(on)}.`,
  'no-young-brood': ({ because }: Because) =>
    `${capital(causeInEnglish(because))}, and no young brood came along: they can raise a queen only from eggs given to them.`,
  'give-eggs': ({ because }: Because) =>
    `${capital(causeInEnglish(because))}. Give a frame of eggs: they raise a queen from it, or show that one is there.`,
  'bought-failed-unite': ({ because }: Because) =>
    `${capital(causeInEnglish(because))}. The bought queen failed too: unite it with a queenright colony.`,
  'buy-again': ({ because }: Because) =>
    `${capital(causeInEnglish(because))}. Only where it is still strong and the season allows, instead of uniting it: look for a virgin and for queen cells, then another mated queen goes in.`,
  buy: ({ because }: Because) =>
    `${capital(causeInEnglish(because))}. Look for a virgin and for queen cells first; then a mated queen goes in.`,
  'did-treatment-work': ({ on }: { on: Day }) =>
    `Did the treatment of ${inWords(on)} work? Wash again ten to fourteen days after it.`,
  'wash-again-later': ({ on, per100 }: { on: Day; per100: number }) =>
    `How many mites per 100 bees now? The wash of ${inWords(on)} found ${per100.toFixed(1)}, while many were still under caps.`,
  'cells-on-frame': ({ on }: { on: Day }) =>
    `Queen cells on the frame of eggs given on ${inWords(on)}? Cells: they have no queen and raise one. None: they behave as if they had one.`,
  'does-she-lay': ({ on }: { on: Day }) =>
    `Does she lay? She was let out on ${inWords(on)}; a queen in good order lays within ten days.`,
  'cage-and-eggs': ({ since, on }: { since: Day; on: Day }) =>
    `A queen was put in a cage on ${inWords(since)}, and on ${inWords(on)} there were eggs. Is she still in it? Then there are two queens: take one of them out. Or is she out, and the eggs are hers?`,
  'worker-caps': ({ on }: { on: Day }) =>
    `New eggs were seen on ${inWords(on)}: flat worker caps now prove a mated queen; raised drone caps in worker cells show that she is not.`,
  'worker-caps-later': ({ on, until }: { on: Day; until: Day }) =>
    `New eggs were seen on ${inWords(on)}, but capped brood from before may be about until ${inWords(until)}. After that, flat worker caps prove a mated queen.`,
  'paused-queen': ({ on, seen }: { on: Day; seen: boolean }) =>
    `No eggs on ${inWords(on)}, but ${seen ? 'the queen was seen' : 'stores were low'}: a queen that has no food or no flow stops for a while. Feed, and look again in seven to ten days.`,
  'laying-workers-found': ({ because }: Because) =>
    `Laying workers: ${causeInEnglish(because)}. Do not waste a queen on them; unite with a strong queenright colony. Shaking out is disputed: the layers fly back.`,
  'several-eggs-look-again': ({ on }: { on: Day }) =>
    `Several eggs in a cell on ${inWords(on)}: a queen that has just begun may do so for some days. Look again: one egg a cell, and worker caps, clear her.`,
  'half-a-look': ({ on }: { on: Day }) =>
    `No eggs on ${inWords(on)} in a colony whose queen lays, and nothing was said of queen cells. Are there eggs now, and are there cells?`,
  'no-cells-on-frame': ({ on }: { on: Day }) =>
    `No queen cells on the frame of eggs given on ${inWords(on)}: they behave as if they had a queen, mated or not. Are there eggs once the frame’s own are out of the way?`,
  'cells-torn-down': ({ on, early }: { on: Day; early: boolean }) =>
    `The queen cells were torn down by ${inWords(on)}${early ? ', before one could emerge' : ''}: some queen may be there. Eggs?`,
  'cells-were-gone': ({ on }: { on: Day }) =>
    `The queen cells were gone on ${inWords(on)}, before one could emerge. Eggs?`,
  'new-queen': ({ from, to }: { from: Day; to: Day }) =>
    `Eggs of the new queen? She emerges between ${inWords(from)} and ${inWords(to)}, then needs 8 to 21 days to mature, mate and lay. None after the last day: she failed.`,
  'seen-no-eggs': ({ on }: { on: Day }) =>
    `The queen was seen on ${inWords(on)} but there were no eggs: does she lay now?`,
  'seen-not-yet': ({ on }: { on: Day }) =>
    `She was seen on ${inWords(on)} but has not laid yet: does she now?`,
  insurance: ({ lastYoung }: { lastYoung: Day }) =>
    `No layer is proven, and the last young brood was laid by ${inWords(lastYoung)}. A frame of eggs tells within four days whether there is a queen: no cells on it, and there is. It holds laying workers off as well, and lets them start again.`,
  'watch-for-laying-workers': ({ lastYoung }: { lastYoung: Day }) =>
    `Signs of laying workers? No queen is proven and the last young brood was laid by ${inWords(lastYoung)}; the risk begins three weeks later.`,
  'what-of-the-cells': ({ on, from, to }: { on: Day; from: Day; to: Day }) =>
    `What became of the queen cells seen on ${inWords(on)}? Left alone, a virgin comes out between ${inWords(from)} and ${inWords(to)} and the queen is replaced, or they swarm. Cut them all, or leave one, and write down which.`,
  'under-strength': ({ frames, on, minimum }: { frames: number; on: Day; minimum: number }) =>
    `${frameCount(frames)} on ${inWords(on)}, under the minimum of ${minimum}: unite it, or add a frame of capped brood.`,
  welfare: ({ last }: { last: Day }) =>
    `Stores, robbing, beetles, moths, strength? The last visit was on ${inWords(last)}.`,
  'has-moved-on': () => 'The colony has moved on.',
  'may-go': () => 'The hold is over and every condition is met: a last disease look, and it may go.',
  'expected-to-go': () => 'Expected from what has been seen; the hold is only the minimum.',
}
