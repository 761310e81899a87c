/** The first page of a yard's sheet: what to bring, what to mind, and at each box why. The blocks behind it have room to write. */
import { useWords } from '../../forms/index.ts'
import { AtTheBox } from '../../parts/index.ts'
import { inUnits, lidCautions, toDoOf, type Units, type Words } from '../../words/index.ts'
import { LoadList, loadFor } from '../round/index.ts'
import type { PrintedBox } from './page.tsx'

/** Reasons that fit on the page beside what is to be brought and minded (measured in print, the longest of the demo's). */
export const REASONS_A_PAGE = 12

/** The boxes that have a reason: something is to be done there. */
export const reasoned = (boxes: readonly PrintedBox[]): PrintedBox[] =>
  boxes.filter((b) => toDoOf(b.plan) !== null)

interface FrontProps {
  /** All boxes of the yard on the sheet. */
  all: readonly PrintedBox[]
  /** Those whose reasons stand on this page. */
  boxes: readonly PrintedBox[]
  /** The first of the yard's front pages. */
  first: boolean
  units: Units
}

export const Front = ({ all, boxes, first, units }: FrontProps) => {
  const load = loadFor(all)
  const words = useWords()
  return (
    <>
      {first && load.length > 0 ? (
        <section class="front-bring">
          <h2>{words.round.bring}</h2>
          <LoadList load={load} words={words} />
        </section>
      ) : null}
      {first ? (
        <section>
          <h2>{words.parts.atTheBox}</h2>
          <AtTheBox units={units} />
        </section>
      ) : null}
      <section>
        <h2>{words.paper.sheet.why}</h2>
        <dl class="front-why">
          {boxes.map((box) => (
            <Reason box={box} units={units} words={words} />
          ))}
        </dl>
      </section>
    </>
  )
}

interface ReasonProps {
  box: PrintedBox
  units: Units
  words: Words
}

const Reason = ({ box: { tag, plan, history }, units, words }: ReasonProps) => {
  const toDo = toDoOf(plan, words)
  return toDo === null ? null : (
    <div>
      <dt>{tag}</dt>
      <dd>
        <b>{toDo.title}.</b> {inUnits(toDo.why, units)}
        {lidCautions(plan, history, words).map((caution) => (
          <span class="front-mind">{words.paper.sheet.mind(caution)}</span>
        ))}
      </dd>
    </div>
  )
}
