/** A box in which nothing lives: said with one tap, by anybody. */
import { useWords } from '../forms/index.ts'

/** `action`: where it is posted. `id`: of the entry it becomes, so that tapping twice is one. */
export const LostTaps = ({ tag, action, id }: { tag: string; action: string; id: string }) => {
  const { choices, parts } = useWords()
  return (
    <form method="post" action={action} class="lost-taps">
      <input type="hidden" name="id" value={id} />
      <span class="soft">{parts.nothingLives}</span>
      {choices.LOST.map((c) => (
        <button class="button" type="submit" name="lost" value={c.value}>
          {c.label}
          <span class="unseen">{parts.of(tag)}</span>
        </button>
      ))}
    </form>
  )
}
