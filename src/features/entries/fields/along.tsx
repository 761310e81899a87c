/** What came along in the box, asked alike where the removal is written up and where the intake is logged. */

import { ALONG, type DrawnIn, Fields, useWords } from '../../../forms/index.ts'

export const BroodAlong = (p: DrawnIn) => (
  <>
    <p class="hint">{useWords().corrections.intake.broodAlong}</p>
    <Fields
      {...p}
      of={ALONG}
      show={['brood.eggs', 'brood.open', 'brood.capped', 'broodCare', 'queenCells']}
    />
  </>
)

export const BeesAndBox = (p: DrawnIn) => (
  <Fields {...p} of={ALONG} show={['bees.frames', ['bees.kg', 'deadBeesKg'], 'tiedComb', 'temper']} />
)
