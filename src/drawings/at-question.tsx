/** Which drawings stand at which question, by the name of its field. */
import { type Captions, Drawing, type DrawingName } from './drawings.tsx'

const AT_QUESTION: Readonly<Record<string, readonly DrawingName[]>> = {
  eggs: ['egg', 'many-eggs'],
  open: ['larva'],
  capped: ['flat-caps', 'raised-caps', 'sunken-caps'],
  cells: ['cup', 'open-cell', 'capped-cell', 'emerged-cell', 'torn-cell'],
  queen: ['queen', 'virgin', 'drone'],
  signs: ['chalkbrood', 'sunken-caps'],
  'ties.done': ['comb-ties'],
}

interface MeantProps {
  name: string
  /** The question, for those who hear the page. */
  label: string
  /** ‘How it looks’, in the language of the page. */
  title: string
  captions: Captions
}

/** Folded beside a question: what its answers look like. */
export const Meant = ({ name, label, title, captions }: MeantProps) => {
  const drawings = Object.hasOwn(AT_QUESTION, name) ? AT_QUESTION[name] : undefined
  return drawings === undefined ? null : (
    <details class="meant">
      <summary>
        {title}
        <span class="unseen">: {label}</span>
      </summary>
      <div class="meant-in">
        {drawings.map((of) => (
          <Drawing of={of} caption={captions[of]} />
        ))}
      </div>
    </details>
  )
}
