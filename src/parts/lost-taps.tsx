/** A box in which nothing lives: said with one tap, by anybody. */
import { LOST } from '../words/index.ts'

/** `action`: where it is posted. `id`: of the entry it becomes, so that tapping twice is one. */
export const LostTaps = ({ tag, action, id }: { tag: string; action: string; id: string }) => (
  <form method="post" action={action} class="lost-taps">
    <input type="hidden" name="id" value={id} />
    <span class="soft">Nothing lives in it:</span>
    {LOST.map((c) => (
      <button class="button" type="submit" name="lost" value={c.value}>
        {c.label}
        <span class="unseen">: {tag}</span>
      </button>
    ))}
  </form>
)
