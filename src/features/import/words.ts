/** Words that stand in old sheets for the queen, the outcome, the method, the removal type; and what they look like. */
import { REMOVAL_TYPES } from '../../journal/index.ts'

/** Columns whose words have to be understood. */
export const WORDED = ['queen_at_intake', 'outcome', 'method', 'removal_type'] as const
export type Worded = (typeof WORDED)[number]

/** Said of an outcome: the colony has not left. */
export const STILL_HERE = 'still-here'
/**
 * Stands among the words of the outcome for an empty cell of a colony that came longer than {@link LONG_STAY} days ago. No word
 * is like it: words begin without a space.
 */
export const LONG_BLANK = ' blank'
/** Longer in a holding yard than this without an outcome, in days, is more likely a gap in the sheet (our choice). */
export const LONG_STAY = 90
/** Said of a method: not recorded. */
export const NOT_SAID = 'not-said'

/** A word as it is compared: small letters, single spaces. Words that differ in nothing else mean the same. */
export const wordKey = (text: string): string =>
  text.normalize('NFC').trim().toLowerCase().replaceAll(/\s+/g, ' ')

/** Said of a queen or a removal type: nobody wrote it down. */
const NOT_WRITTEN = ['unknown', 'not known', 'not written down', 'not recorded', 'n/a', 'na', '-']

/** What each meaning is often called. Common practice; from memory. */
const CALLED: Record<Exclude<Worded, 'removal_type'>, Record<string, readonly string[]>> = {
  queen_at_intake: {
    caged: [
      'caged',
      'in cage',
      'cage',
      'clip',
      'clipped',
      'in clip',
      'caught',
      'captured',
      'queen caged',
      'yes caged',
    ],
    loose: [
      'loose',
      'seen',
      'found',
      'yes',
      'y',
      'present',
      'in box',
      'queenright',
      'qr',
      'marked',
      'true',
      '1',
    ],
    unseen: [
      'unseen',
      'not seen',
      'no',
      'n',
      'not found',
      '?',
      'unsure',
      'none seen',
      'not sure',
      'false',
      '0',
    ],
    unknown: ['', ...NOT_WRITTEN],
    lost: ['lost', 'dead', 'killed', 'queenless', 'ql', 'no queen', 'squished', 'crushed', 'none'],
  },
  outcome: {
    [STILL_HERE]: [
      'alive',
      'in yard',
      'current',
      'active',
      'here',
      'still here',
      'ok',
      'holding',
      'in progress',
      'open',
      'pending',
      '-',
      'recovering',
    ],
    'moved-out': [
      'moved out',
      'moved',
      'moved on',
      'sold',
      'rehomed',
      'given away',
      'placed',
      'transferred',
      'relocated',
      'out',
      'success',
      'survived',
      'kept',
      'to apiary',
      'adopted',
      'home',
      'yes',
      'y',
      'thriving',
      'graduated',
    ],
    united: ['united', 'merged', 'combined', 'combine', 'joined', 'newspapered', 'unite', 'merge'],
    died: [
      'died',
      'dead',
      'd',
      'dead out',
      'deadout',
      'dead-out',
      'lost',
      'loss',
      'collapsed',
      'failed',
      'starved',
      'perished',
      'no',
      'n',
      'fail',
      'dwindled',
      'robbed out',
    ],
    absconded: [
      'absconded',
      'abscond',
      'flew',
      'flew off',
      'flown',
      'gone',
      'left',
      'ran off',
      'took off',
      'abs',
      'empty',
    ],
    other: ['other', 'stolen', 'inspector', 'destroyed', 'returned', 'euthanized'],
    unknown: ['unknown', 'not known', 'not recorded', 'no record', '?', 'n/a', 'na'],
  },
  method: {
    [NOT_SAID]: ['', '-', 'n/a', 'na', 'unknown', '?', 'other'],
    vacuum: ['vacuum', 'vac', 'vacuumed', 'bee vac', 'beevac', 'bee vacuum', 'yes', 'y', 'true', '1'],
    brushed: [
      'brushed',
      'brush',
      'shaken',
      'shake',
      'scooped',
      'by hand',
      'hand',
      'cut out',
      'cutout',
      'no',
      'n',
    ],
    'walked-in': ['walked in', 'walked-in', 'marched', 'march', 'walk in', 'marched in'],
    trap: ['trap', 'trapped', 'trap out', 'trap-out', 'cone', 'trapout', 'bait'],
    hived: ['hived', 'hive', 'in hive', 'transferred', 'boxed', 'swarm'],
  },
}

const TYPES_CALLED: Record<string, readonly string[]> = {
  unknown: ['', '?', ...NOT_WRITTEN],
  wall: ['wall', 'house wall', 'in wall', 'siding', 'brick wall', 'stucco', 'chimney'],
  floor: ['floor', 'subfloor', 'crawl space', 'crawlspace', 'under floor', 'deck', 'mobile home floor'],
  roof: ['roof', 'eaves', 'eave', 'soffit', 'attic', 'fascia', 'ceiling', 'roof or eaves'],
  tree: ['tree', 'log', 'hollow tree', 'stump', 'tree trunk', 'limb', 'tree or log'],
  ground: ['ground', 'hole', 'in ground', 'burrow', 'hole in the ground'],
  'utility-box': [
    'utility box',
    'meter box',
    'water meter',
    'valve box',
    'irrigation box',
    'electric box',
    'meter',
    'pedestal',
    'meter or utility box',
  ],
  equipment: ['equipment', 'machine', 'vehicle', 'car', 'boat', 'tractor', 'grill', 'machine or equipment'],
  container: [
    'container',
    'bin',
    'tub',
    'compost',
    'compost bin',
    'barrel',
    'bucket',
    'box',
    'trash can',
    'owl box',
    'bin tub or container',
  ],
  swarm: ['swarm', 'swarms', 'hanging swarm', 'cluster'],
  'trap-out': ['trap out', 'trapout', 'trap-out', 'cone', 'trap'],
  'abandoned-hive': [
    'abandoned hive',
    'old hive',
    'abandoned',
    'hive',
    'hive pickup',
    'derelict hive',
    'unwanted hive',
  ],
}

const found = (called: Record<string, readonly string[]>, key: string): string | null =>
  Object.entries(called).find(([meaning, words]) => meaning === key || words.includes(key))?.[0] ?? null

/**
 * What a word most likely means; null when it looks like nothing known. A removal type that nobody knows is a new type,
 * as it is written.
 */
export function guessMeaning(column: Worded, word: string, ownTypes: readonly string[] = []): string | null {
  const key = wordKey(word)
  // A day it left and no word for it; or it came long ago, and nobody wrote what became of it: gone, not known how.
  if (column === 'outcome' && key === '') return 'unknown'
  if (column !== 'removal_type') return found(CALLED[column], key)
  const own = [...REMOVAL_TYPES, ...ownTypes].find(
    (t) => wordKey(t) === key || wordKey(t) === key.replaceAll(' ', '-'),
  )
  return own ?? found(TYPES_CALLED, key) ?? word.trim()
}
