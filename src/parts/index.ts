/** What other parts may import from here; README.md explains. */

export { BarePage } from './bare-page.tsx'
export { BeforeItLeaves } from './before-it-leaves.tsx'
export { BESIDE, BoxAndList, ListAndBox } from './beside.tsx'
export { Bonds } from './bonds.tsx'
export { AtTheBox, RemovalCautions, VisitCautions } from './cautions.tsx'
export { Counted, NotYet, Part, Reading, Share, Wide } from './chapter.tsx'
export {
  areaPath,
  BOX,
  bandPath,
  barPath,
  labelHeights,
  type StepPoint,
  stepPath,
  TOP,
  tickPath,
} from './chart-paths.ts'
export { Crumb } from './crumb.tsx'
export { FromTo, On, SpanOf, WindowOf } from './date.tsx'
export { ALL_SHARES, anchor, DaysPlot, type ValueScale } from './days-plot.tsx'
export { Fold, Jumps } from './fold.tsx'
export {
  along,
  below,
  betweenPath,
  linePath,
  namesIn,
  scaleFor,
  stacked,
  stretchOf,
} from './forecast-chart.ts'
export { FormPage } from './form-page.tsx'
export { Copy, HandOut } from './hand-out.tsx'
export { HeldNotice } from './held.tsx'
export { HowTo, howPath, Steps } from './how-to.tsx'
export { InspectorLine } from './inspector.tsx'
export { Journal, type JournalLine } from './journal.tsx'
export { KEYS, KeysTick, TAKEN_BACK } from './keys-tick.tsx'
export { type Frame, Layout } from './layout.tsx'
export { LostTaps } from './lost-taps.tsx'
export { Mark } from './mark.tsx'
export { ACCOUNT_TABS, SUPPLY_TABS } from './nav.ts'
export { Numbers } from './numbers.tsx'
export {
  type Ask,
  type ClockOff,
  clockWords,
  correctPath,
  type PhoneState,
  waitingWords,
} from './phone-state.ts'
export { PlotArea, shareLabel, ValueAxis } from './plot-area.tsx'
export { PressingMark } from './pressing-mark.tsx'
export { qrCode } from './qr-code.ts'
export { Range, RangeHead, ratios, type Scale, SHARES } from './range.tsx'
export { Reach } from './reach.tsx'
export { Refusal } from './refusal.tsx'
export { RibbonDefs } from './ribbon/key.tsx'
export { type Ribbon, ribbonOf } from './ribbon/model.ts'
export { RibbonSmall, RibbonStrip } from './ribbon/strip.tsx'
export { Select } from './select.tsx'
export { Tabs } from './tabs.tsx'
export { UNITS_LABELS, UnitsForm } from './units-form.tsx'
export { YardChoice } from './yard-choice.tsx'
export { YardFold } from './yard-fold.tsx'
