/** The field on which a name is drawn (web/islands/sign.ts). */
import { one, type Typed } from '../../forms/index.ts'
import { FIELD } from '../../records/index.ts'

/** `shut`: shown only where the name is to be drawn and not written on paper. */
export const Pad = ({ typed, shut = false }: { typed: Typed; shut?: boolean }) => (
  <div class={shut ? 'pad-field if-drawn' : 'pad-field'} id="f-drawing" data-pad hidden>
    <div class="pad-head">
      <p class="pad-title">Draw your name</p>
      <button class="button button-plain" type="button" data-pad-clear>
        Clear
      </button>
    </div>
    <svg
      class="pad"
      viewBox={`0 0 ${FIELD.width} ${FIELD.height}`}
      role="img"
      aria-label="Field to draw the name on"
      data-pad-field
    >
      <path class="pad-line" d={`M30 ${FIELD.height - 45}H${FIELD.width - 30}`} />
      <path class="pad-ink" d="" data-pad-ink />
    </svg>
    <input type="hidden" name="drawing" value={one(typed, 'drawing')} data-pad-value />
  </div>
)
