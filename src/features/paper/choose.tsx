/** What is chosen above each of the pages of paper: which boxes, what paper, and to show it. */
import { useWords } from '../../forms/index.ts'
import { Select } from '../../parts/index.ts'
import { SIZES, type Size } from './sizes.ts'

export const ChooseBoxes = ({ all }: { all: boolean }) => {
  const { paper } = useWords()
  const options = [['', paper.onTheRound] as const, ['1', paper.all] as const]
  return <Select name="all" label={paper.boxes} value={all ? '1' : ''} options={options} />
}

export const ChooseSize = ({ size }: { size: Size }) => {
  const { paper } = useWords()
  const options = SIZES.map((s) => [s, paper.sizes[s]] as const)
  return <Select name="size" label={paper.size} value={size} options={options} />
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
