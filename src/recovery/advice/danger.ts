/** Before anything else: it has left, it is lost, it may be sick. */
import { boundTo } from '../tracing.ts'
import type { Adviser } from './context.ts'

export const left: Adviser = ({ s }) =>
  s.history.outcome === null
    ? null
    : { action: 'none', reasons: [{ code: 'left-the-yard', on: s.history.outcome.on }] }

/** Nothing is asked of a box that is lost, but that a beekeeper says how it left. */
export const lostBox: Adviser = ({ s }) =>
  s.lost === null
    ? null
    : { action: 'none', reasons: [{ code: 'found-lost', how: s.lost.how, on: s.lost.on }] }

/** Said where a later look was clean and the suspicion still stands. */
const cleanSince = (look: { on: string; suspectedOn?: string }): boolean =>
  look.suspectedOn !== undefined && look.on > look.suspectedOn

export const sick: Adviser = ({ s }) =>
  s.diseaseLook?.suspected === true
    ? {
        action: 'call-inspector',
        reasons: [
          {
            code: 'disease-suspected',
            on: s.diseaseLook.suspectedOn ?? s.diseaseLook.on,
            cleanSince: cleanSince(s.diseaseLook),
          },
        ],
      }
    : null

/** Bound to a suspected colony: held, and looked at in its weeks. */
export const exposed: Adviser = ({ exposure, today, quiet }) => {
  if (exposure === null || today < exposure.look.opens) return null
  if (quiet !== null && today >= quiet.from && today <= quiet.to) return null
  return { action: 'open-and-look', reasons: [boundTo(exposure)] }
}
