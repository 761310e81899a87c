/** Cautions, short, where the work happens. They never replace local rules or the licensed trades. */

import { useWords } from '../forms/index.ts'
import { leastC } from '../recovery/index.ts'
import { temperature, type Units } from '../words/index.ts'

export const RemovalCautions = () => (
  <details class="caution">
    <summary>Before the next cut</summary>
    <ul>
      <li>
        Stings: know who is allergic, have the plan for anaphylaxis and your local emergency number at hand,
        never work alone.
      </li>
      <li>Ladder: a second person holds it. Heat: water and shade. Smoker: no dry grass.</li>
      <li>Live wires, pipes, asbestos, lead paint: stop and call the licensed trade.</li>
      <li>Very defensive bees, where Africanized bees are established: local rules decide.</li>
      <li>Registration, transport and removal licences differ from place to place: local codes decide.</li>
    </ul>
  </details>
)

interface AtTheBoxProps {
  /** The yard's own. */
  units: Units
}

/** Said on every round, on the screen and on paper. */
export const AtTheBox = ({ units }: AtTheBoxProps) => (
  <ul>
    {useWords()
      .parts.cautions(temperature(leastC('full'), units), temperature(leastC('short'), units))
      .map((text) => (
        <li>{text}</li>
      ))}
  </ul>
)

export const VisitCautions = ({ units }: AtTheBoxProps) => (
  <details class="caution">
    <summary>{useWords().parts.atTheBox}</summary>
    <AtTheBox units={units} />
  </details>
)
