/** Cautions, short, where the work happens. They never replace local rules or the licensed trades. */
import { useWords } from '../forms/index.ts'

export const RemovalCautions = () => (
  <details class="caution">
    <summary>Before the next cut</summary>
    <ul>
      <li>Stings: know who is allergic, have the plan for anaphylaxis at hand, never work alone.</li>
      <li>Ladder: a second person holds it. Heat: water and shade. Smoker: no dry grass.</li>
      <li>Live wires, pipes, asbestos, lead paint: stop and call the licensed trade.</li>
      <li>Very defensive bees, where Africanized bees are established: local rules decide.</li>
      <li>Registration, transport and removal licences differ from place to place: local codes decide.</li>
    </ul>
  </details>
)

export const VisitCautions = () => {
  const { parts } = useWords()
  return (
    <details class="caution">
      <summary>{parts.atTheBox}</summary>
      <ul>
        {parts.cautions.map((text) => (
          <li>{text}</li>
        ))}
      </ul>
    </details>
  )
}
