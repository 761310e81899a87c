/** What came along in the box, asked alike where the removal is written up and where the intake is logged. */

import { ALONG, type DrawnIn, Fields } from '../../../forms/index.ts'

export const BroodAlong = (p: DrawnIn) => (
  <>
    <p class="hint">Brood comb that came along, in frames. Not counted is not the same as none.</p>
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
