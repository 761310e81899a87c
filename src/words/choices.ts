/** The answers people can tap, in the words of a yard. '' is "not looked" or "not known": it is left out of the entry. */
import {
  BROOD_STATES,
  CLEARED_BY,
  GIFTS,
  SEARCHED as HOW_SEARCHED,
  LOST_BOX,
  METHODS,
  MISSED_REASONS,
  OUTCOMES,
  QUEEN_AT_INTAKE,
  REMOVAL_TYPES,
  SETTLES as SETTLED,
  SIGNS,
  SYRUPS,
} from '../journal/index.ts'

import type { Language } from '../languages.ts'
import { type ChoiceWords, choices as english, type Hinted } from './en/choices.ts'

export interface Choice {
  value: string
  label: string
  /** A few words under the label. */
  hint?: string
  /** The language of the label, where it is another than the page's. */
  language?: Language
}

/** A list of answers: those not in `labels` are not offered. */
const listed = <T extends string>(values: readonly T[], labels: Record<T, string | Hinted>): Choice[] =>
  values.map((value) => one(value, labels[value]))

const one = (value: string, words: string | Hinted): Choice => {
  if (typeof words === 'string') return { value, label: words }
  const [label, hint] = words
  return hint === undefined ? { value, label } : { value, label, hint }
}

const unsaid = (label: string): Choice => ({ value: '', label })

/**
 * What a colony was lost of, as far as anybody can tell (common practice). Kept in these words, so that an export and an older
 * version read the same; anything else is typed.
 */
const CAUSES = [
  'no queen',
  'laying workers',
  'too few bees',
  'starved',
  'robbed out',
  'mites',
  'brood disease',
  'beetles or moths',
  'heat',
  'cold or wet',
  'poisoned',
  'the removal itself',
] as const

/** Every list of answers, in the words of a language. */
export function choicesIn(w: ChoiceWords) {
  const notSaid = unsaid(w.notSaid)
  const notLooked = unsaid(w.notLooked)
  const none = one('none', w.none)
  const count = (shown: Record<string, string>, values: readonly string[]): Choice[] => [
    unsaid(w.notCounted),
    ...values.map((value) => ({ value, label: shown[value] ?? value })),
  ]
  return {
    METHOD: [notSaid, ...listed(METHODS, w.method)],
    SPRAYED: [one('unknown', w.notKnown), one('no', w.no), one('yes', w.sprayed)],
    QUEEN: listed(QUEEN_AT_INTAKE, w.queen),
    /** Of a queen caged or loose. */
    VIRGIN: [notSaid, ...listed(['no', 'yes'], w.virgin)],
    MARKED: [notSaid, ...listed(['no', 'yes'], w.marked)],
    CLIPPED: [notSaid, ...listed(['no', 'yes'], w.clipped)],
    BROOD_STATE: [notSaid, ...listed(BROOD_STATES, w.broodState)],
    BROOD_CARE: [notSaid, ...listed(['closed-chest', 'open-air'], w.broodCare)],
    CELLS_AT_REMOVAL: [notLooked, none, one('open', w.open), one('capped', w.capped)],
    TIED: [notSaid, one('yes', w.yes), one('no', w.no)],
    LID: listed(['yes', 'no'], w.lid),
    EGGS: [notLooked, none, ...listed(['single', 'multiple'], w.eggs)],
    OPEN_BROOD: [notLooked, none, ...listed(['some', 'plenty'], w.openBrood)],
    CAPPED_BROOD: [notLooked, none, ...listed(['worker', 'drone-in-worker'], w.cappedBrood)],
    FRESH_COMB: [unsaid(w.notSure), ...listed(['no', 'yes'], w.freshComb)],
    QUEEN_SEEN: [notLooked, ...listed(['unseen', 'seen'], w.queenSeen)],
    CELLS: [notLooked, none, ...listed(['cups', 'open', 'capped', 'emerged', 'torn-down'], w.cells)],
    /** How surely "none" was looked for. */
    SEARCHED: [notSaid, ...listed(HOW_SEARCHED, w.searched)],
    /** A box in which nothing lives, as anybody may say it. */
    LOST: listed(LOST_BOX, w.lost),
    NOTE_FOR: [unsaid(w.justANote), one('look', w.pleaseLook)],
    /** What a signed note decides. */
    SETTLES: [unsaid(w.nothing), ...listed(SETTLED, w.settles)],
    STORES: [notLooked, ...listed(['low', 'enough', 'heavy'], w.stores)],
    SIGN: [one('none', w.noSigns), ...listed(SIGNS, w.signs)],
    TEMPER: [
      notSaid,
      one('1', ['1', w.temper.calm]),
      one('2', '2'),
      one('3', ['3', w.temper.usual]),
      one('4', '4'),
      one('5', ['5', w.temper.fierce]),
    ],
    CAGE: listed(['released', 'still-caged', 'rejected', 'dead'], w.cage),
    GIFT: listed(GIFTS, w.gifts),
    SYRUP: [notSaid, ...listed(SYRUPS, w.syrup)],
    CLEARED: listed(CLEARED_BY, w.cleared),
    OUTCOME: listed(OUTCOMES, w.outcome),
    CAUSE: [notSaid, ...listed(CAUSES, w.causes)],
    /** Why a box could not be got to. */
    MISSED: listed(MISSED_REASONS, w.missed),
    /** Why an entry is taken back: what is tapped is kept as it reads. */
    WHY_TAKEN_BACK: w.takenBack.map((words) => ({ value: words, label: words })),
    /** Quarter frames that can be tapped; others are typed. */
    FRAMES_TAPPED: count({ '0': w.none, '0.25': '¼', '0.5': '½' }, ['0', '0.25', '0.5', '1', '2', '3']),
    /** Frames covered with bees: more than brood. */
    BEES_TAPPED: count({}, ['1', '2', '3', '4', '5', '6']),
  }
}

/** A removal type of an old book: nobody wrote it down. */
export const NOT_WRITTEN_DOWN = 'unknown'

/** The shipped removal types, then those the yard added. */
export const removalTypes = (own: readonly string[] = [], { queen, removal } = english): Choice[] => [
  ...listed(REMOVAL_TYPES, removal),
  ...own
    .filter((t) => !(REMOVAL_TYPES as readonly string[]).includes(t))
    .map((t) => ({ value: t, label: t === NOT_WRITTEN_DOWN ? queen.unknown[0] : t })),
]

/** In English, for pages that are in no other language. */
export const { BROOD_CARE, CELLS_AT_REMOVAL, GIFT, METHOD, OUTCOME, QUEEN, SIGN, TEMPER } = choicesIn(english)

/** The label of a value among choices; the value itself when it is not one of them. */
export const labelIn = (choices: readonly Choice[], value: string): string =>
  choices.find((c) => c.value === value)?.label ?? value
