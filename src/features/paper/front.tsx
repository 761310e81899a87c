/** The first page of a yard's sheet: what to bring, what to mind, and at each box why. The blocks behind it have room to write. */
import { useWords } from '../../forms/index.ts'
import { AtTheBox } from '../../parts/index.ts'
import { inUnits, lidCautions, toDoOf, type Units, type Words } from '../../words/index.ts'
import { LoadList, loadFor } from '../round/index.ts'
import type { PrintedBox } from './page.tsx'

/** Lines of a reason on a page of Letter paper, the shorter, and letters in a line (measured in print, rounded down). */
const LINES_A_PAGE = 59
const LETTERS_A_LINE = 102
/** How much wider letters in bold are. */
const BOLD = 1.12
/** What stands above the reasons of a first page, and the rule between two of them, in lines (measured in print). */
const A_HEADING = 2.2
const A_LOAD = 1.4
const A_RULE = 0.45

/** What is said of a box in front: what to do, why, and what to mind there. Null where nothing is to be done. */
function reasonOf({ plan, history }: PrintedBox, units: Units, words: Words) {
  const toDo = toDoOf(plan, words)
  return toDo === null
    ? null
    : { title: toDo.title, why: inUnits(toDo.why, units), mind: lidCautions(plan, history, words) }
}

/** The boxes of a yard that have a reason, page by page as they fit: how many do depends on the language too. */
export function frontPages(boxes: readonly PrintedBox[], units: Units, words: Words): PrintedBox[][] {
  const pages: PrintedBox[][] = []
  let room = 0
  for (const box of boxes) {
    const reason = reasonOf(box, units, words)
    if (reason === null) continue
    const bold = [reason.title, ...reason.mind.map(words.paper.sheet.mind)].join(' ').length
    const lines = Math.ceil((bold * BOLD + reason.why.length) / LETTERS_A_LINE) + A_RULE
    if (lines > room) {
      room = pages.length === 0 ? LINES_A_PAGE - above(boxes) : LINES_A_PAGE
      pages.push([])
    }
    room -= lines
    pages.at(-1)?.push(box)
  }
  return pages
}

/** Lines that what to bring and what to mind take: the four cautions are a line each. */
function above(boxes: readonly PrintedBox[]): number {
  const load = loadFor(boxes).length
  return (load === 0 ? 0 : A_HEADING + load * A_LOAD) + A_HEADING + 4
}

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

const Reason = ({ box, units, words }: ReasonProps) => {
  const reason = reasonOf(box, units, words)
  return reason === null ? null : (
    <div>
      <dt>{box.tag}</dt>
      <dd>
        <b>{reason.title}.</b> {reason.why}
        {reason.mind.map((caution) => (
          <span class="front-mind">{words.paper.sheet.mind(caution)}</span>
        ))}
      </dd>
    </div>
  )
}
