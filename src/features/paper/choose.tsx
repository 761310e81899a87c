/** What is chosen above each of the pages of paper: which boxes, what paper, and to show it. */
import { useWords } from '../../forms/index.ts'
import { SIZES, type Size } from './sizes.ts'

export const ChooseBoxes = ({ all }: { all: boolean }) => {
  const { paper } = useWords()
  return (
    <label>
      {paper.boxes}
      <select name="all">
        <option value="">{paper.onTheRound}</option>
        <option value="1" selected={all}>
          {paper.all}
        </option>
      </select>
    </label>
  )
}

export const ChooseSize = ({ size }: { size: Size }) => {
  const { paper } = useWords()
  return (
    <label>
      {paper.size}
      <select name="size">
        {SIZES.map((s) => (
          <option value={s} selected={s === size}>
            {paper.sizes[s]}
          </option>
        ))}
      </select>
    </label>
  )
}

/** `print`: beside it the button that prints. */
export const Show = ({ print = false }: { print?: boolean }) => {
  const { paper } = useWords()
  return (
    <>
      <button class="button" type="submit">
        {paper.show}
      </button>
      {print ? (
        <button class="button button-do" type="button" id="print" hidden>
          {paper.print}
        </button>
      ) : null}
    </>
  )
}
