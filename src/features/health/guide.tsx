/** Guides that stand wherever brood disease or treating comes up. */
import { useWords } from '../../forms/index.ts'

/**
 * Brood disease: what to look for, when to stop, what to leave alone. Plain words; the inspector and the law decide.
 * Lengths of the thread differ between sources (10-30 mm; 25 mm or more), so none is asked for.
 */
export const DiseaseGuide = ({ inspector, open }: { inspector: string; open: boolean }) => {
  const said = useWords().health.disease
  return (
    <details class="caution guide" open={open}>
      <summary>{said.guide}</summary>
      <p>
        <b>{said.stopAt}</b>
        {said.andClose}
      </p>
      <ul>
        {said.signs.map((sign) => (
          <li>{sign}</li>
        ))}
      </ul>
      <p>
        <b>{said.after}</b>
      </p>
      <ol>
        {said.steps.map((step) => (
          <li>{step}</li>
        ))}
        <li>
          {said.call}
          {inspector === '' ? '' : ': '}
          {inspector === '' ? null : <b>{inspector}</b>}
          {said.mustCall}
        </li>
        <li>{said.record}</li>
      </ol>
      <p>
        <b>{said.leaveToThem}</b>
        {said.whatToLeave}
      </p>
      <p>
        <b>{said.notCleared}</b>
        {said.whatNot}
      </p>
      <p>
        <b>{said.somethingElse}</b>
        {said.whatElse}
      </p>
    </details>
  )
}

/** About treating mites, wherever it comes up. */
export const TreatmentNote = () => <p class="fine">{useWords().health.window.note}</p>
