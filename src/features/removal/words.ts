/** A removal sheet in words: how far a job is, what was decided, what the reckoning says. */

import { type Decision, hasBegun, lastDayOf, type Sheet } from '../../records/index.ts'
import { dayAndDistance, depth, labelIn, temperature, type Units } from '../../words/index.ts'
import { notYet, type Reckoning, stops } from './before-cut.ts'
import { DECIDE } from './choices.ts'
import type { ClosingId } from './closing.ts'
import type { Shows } from './forecast.ts'
import type { Item } from './item.ts'
import type { Part, Stage } from './stage.ts'

export const CLOSING_WORDS: Record<ClosingId, string> = {
  comb: 'comb and honey out',
  void: 'void filled or screened',
  smell: 'smell covered',
  entrance: 'entrance shut',
  stragglers: 'box for stragglers',
  photo: 'photo of it closed',
}

const STAGE_WORDS: Record<Stage, string> = {
  called: 'Called',
  'looked-at': 'Looked at',
  agreed: 'Agreement signed',
  wait: 'Waiting',
  go: 'Go',
  worked: 'Bees are out',
  boxed: 'Boxed, to be closed up',
  finished: 'Finished',
  refused: 'Refused',
  ended: 'Ended without a removal',
}

/** “Waiting” stands over no refusal: what is begun is not over, and not put off. */
export const stageWords = (stage: Stage, { decision }: Sheet): string =>
  stage === 'wait' && decision?.is === 'refuse' ? 'Begun, and refused' : STAGE_WORDS[stage]

export const PART_WORDS: Record<Part, string> = {
  job: 'The call',
  site: 'Finding and opening',
  agreement: 'The agreement',
  check: 'Before the cut',
  work: 'The removal',
}

/** What one does next, on the button. */
export const NEXT_WORDS: Record<Part | 'intake', string> = {
  job: 'Who and where',
  site: 'Assess the site',
  agreement: 'Agree and sign',
  check: 'Check before the cut',
  work: 'Record the removal',
  intake: 'Log the intake',
}

export const showsIn = (units: Units): Shows => ({
  temperature: (c) => temperature(c, units),
  depth: (mm) => depth(mm, units),
})

/** '2 more to be met first', '15 not filled in yet': what there is of them beside what stops it. */
function counted(r: Reckoning): string[] {
  const stopping = r.unmet.filter(stops).length
  const unsaid = r.unmet.filter((i) => i.state === 'unsaid').length
  const unmet = r.unmet.length - stopping - unsaid
  return [
    unmet === 0 ? '' : `${unmet}${stopping === 0 ? '' : ' more'} to be met first`,
    unsaid === 0 ? '' : `${unsaid} not filled in yet`,
  ].filter(Boolean)
}

/** What stands where “Go” stood. `late`: its hour has gone. */
export const noGo = (s: Sheet, late: string | null, today: string): string =>
  late ??
  (!hasBegun(s) || s.decision?.fell !== undefined || lastDayOf(s) === today
    ? 'No go any more: it no longer stands'
    : 'Open since another day, and no go of today: look again before you go on')

/** 'Fri 12 Jun, today'; of a day that has gone by that it was only planned: a “Go” beside it is not of that day. */
export const plannedWords = (on: string, today: string, over: boolean): string =>
  `${!over && on < today ? 'planned for ' : ''}${dayAndDistance(on, today)}`

/**
 * The heading over the list of what is unmet; `goes`: a “go” stands over it, for a reason that somebody gave; `late`: why nothing is
 * begun now all the same, which the head says.
 */
export function reckoningTitle(r: Reckoning, goes = false, late: string | null = null): string {
  switch (r.says) {
    case 'refuse':
      return ['Stop', r.unmet.filter(stops).map(notYet).join('. '), ...counted(r)].filter(Boolean).join('. ')
    case 'wait':
      return `${goes ? 'Gone over with a reason' : 'Wait'}: ${counted(r).join('; ')}`
    case 'nothing-unmet':
      return `Nothing ${late === null ? '' : 'else '}on this list is unmet`
  }
}

/** Said under it, always. */
export const RECKONING_NOTE =
  'This list knows only what was typed in. Whoever is at the wall looks again, decides, and stops when something changes. Local codes and licensed practice stand above it: removal, transport, registration and building rules differ from place to place.'

export const ITEM_STATE: Record<Item['state'], string> = {
  met: 'met',
  unmet: 'unmet',
  unsaid: 'not filled in yet',
  'not-needed': 'not needed',
  signed: 'signed for by a second person',
}

/** 'Perpetua tapped “Refuse”, 2026-06-12 10:02: smell of gas' */
export const decidedWords = (d: Pick<Decision, 'is' | 'by' | 'on' | 'at' | 'reason'>): string =>
  `${d.by} tapped “${labelIn(DECIDE, d.is)}”, ${[d.on, d.at].filter(Boolean).join(' ')}${d.reason === undefined ? '' : `: ${d.reason.replace(/\.$/, '')}`}`
