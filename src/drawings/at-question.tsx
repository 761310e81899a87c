/** Which drawings stand at which question, by the name of its field. */
import { Drawing, type DrawingName } from './drawings.tsx'

const AT_QUESTION: Readonly<Record<string, readonly DrawingName[]>> = {
  eggs: ['egg', 'many-eggs'],
  open: ['larva'],
  capped: ['flat-caps', 'raised-caps', 'sunken-caps'],
  cells: ['cup', 'open-cell', 'capped-cell', 'emerged-cell', 'torn-cell'],
  queen: ['queen', 'virgin', 'drone'],
  signs: ['chalkbrood', 'sunken-caps'],
  'ties.done': ['comb-ties'],
}

/** Folded beside a question: what its answers look like. `label`: the question, for those who hear the page. */
export const Meant = ({ name, label }: { name: string; label: string }) => {
  const drawings = Object.hasOwn(AT_QUESTION, name) ? AT_QUESTION[name] : undefined
  return drawings === undefined ? null : (
    <details class="meant">
      <summary>
        How it looks<span class="unseen">: {label}</span>
      </summary>
      <div class="meant-in">
        {drawings.map((of) => (
          <Drawing of={of} />
        ))}
      </div>
    </details>
  )
}
