/** What becomes of simulated colonies whose keeper does as told, against simple habits: the advice by its consequences. */
import { Fold, Numbers, Wide } from '../../parts/index.ts'
import { percent, percentRange } from '../../words/index.ts'
import LOOP from './closed-loop.json' with { type: 'json' }

type WorldLine = (typeof LOOP.worlds)[number]

const better = (w: WorldLine): boolean => w.saved.mean > w.bestFixed.saved.mean

export const ClosedLoop = () => {
  const n = LOOP.worlds.filter(better).length
  return (
    <Fold
      id="closed-loop"
      title="What becomes of those whose keeper does as told (simulated)"
      says={`In ${n} of ${LOOP.worlds.length} simulated worlds more colonies are saved by doing all that the advice says than by the best of the simple habits; saved means moved out with a laying, mated queen.`}
    >
      <Wide label="Simulated worlds">
        <Numbers
          heads={[
            'World',
            'The advice',
            'Best habit',
            'Knowing the truth',
            'Cost, and of the cheapest habit',
          ]}
        >
          {LOOP.worlds.map((w) => (
            <tr>
              <th scope="row">{w.name}</th>
              <td>
                <b>{percent(w.saved.mean)}</b>{' '}
                <span class="limits-words">{percentRange(w.saved.lower, w.saved.upper)}</span>
              </td>
              <td class="habit">
                {percent(w.bestFixed.saved.mean)} <span class="soft">{w.bestFixed.rule}</span>
              </td>
              <td>{percent(w.truth.mean)}</td>
              <td>
                {w.cost}, {w.cheapest.cost}
              </td>
            </tr>
          ))}
        </Numbers>
      </Wide>
      <p class="fine">
        {LOOP.colonies} simulated colonies a world, the same for every rule, 95 % limits; made by{' '}
        <code>{LOOP.command}</code>, seed {LOOP.seed}. The simulator shares no table with the odds. It shows
        what follows from the advice if colonies are as it plays them, not what will happen in your yard.
      </p>
    </Fold>
  )
}
