/** What was wrong with a form that writes nothing in the journal, each line leading to its field. */
import { type FormState, idOf, sentenceOf, useWords } from '../forms/index.ts'

interface RefusalProps {
  form: FormState
  labels: Record<string, string>
  heading: string
}

export const Refusal = ({ form, labels, heading }: RefusalProps) => {
  const words = useWords()
  return form.problems.length === 0 ? null : (
    <div class="notice notice-late" role="alert" tabindex={-1} id="problems">
      <h2>{heading}</h2>
      <ul class="problem-list">
        {form.problems.map((p) => (
          <li>
            {labels[p.field] === undefined ? (
              sentenceOf('', p.message, words)
            ) : (
              <a href={`#${idOf(p.field)}`}>{sentenceOf(labels[p.field] ?? '', p.message, words)}</a>
            )}
          </li>
        ))}
      </ul>
    </div>
  )
}
