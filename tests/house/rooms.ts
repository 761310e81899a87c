/**
 * The floor plan: every room, what it is for, and which rooms it may import. The one place where this is said; the test
 * beside it holds the code to every line and writes the map in DEVELOPERS.md from it.
 *
 * pure: no clock, no database, no network, runs in a browser unchanged. anywhere: in Node and in the phone's worker.
 */

type Runs = 'pure' | 'anywhere' | 'Node' | 'phone' | 'browser'

export interface Room {
  /** What is in it, for the map. */
  holds: string
  runs: Runs
  /** The rooms it may import, each by its door. */
  may: readonly string[]
}

/** What every pure room above the days may use. */
const DAYS = ['src'] as const
const KERNEL = [
  ...DAYS,
  'biology',
  'journal',
  'recovery',
  'forecast',
  'decision',
  'statistics',
  'records',
  'photos',
  'stays',
] as const
/** What a feature may use without a line of its own. */
const FEATURE = [...KERNEL, 'store', 'people', 'words', 'drawings', 'forms', 'parts', 'app'] as const

const feature = (holds: string, runs: Runs, ...others: string[]): Room => ({
  holds,
  runs,
  may: [...FEATURE, ...others],
})

/** From the ground up: a room imports only from those above it in this list. */
export const ROOMS: Readonly<Record<string, Room>> = {
  src: { holds: 'days, times of day, units, results', runs: 'pure', may: [] },
  biology: {
    holds: 'published constants with their sources; what a sighting proves, in days',
    runs: 'pure',
    may: DAYS,
  },
  journal: {
    holds:
      'the schema of every entry kind and its order within a day; history; contradictions; problems in words',
    runs: 'pure',
    may: DAYS,
  },
  recovery: {
    holds:
      'history → plan: what each entry proves, then spans, readiness, the ladder of advice; why, as codes and in English (says/)',
    runs: 'pure',
    may: [...DAYS, 'biology', 'journal'],
  },
  forecast: {
    holds:
      'the belief: queen odds from stories, with every rate behind them (mating, hasty looks), strength, supplies',
    runs: 'pure',
    may: [...DAYS, 'biology', 'journal', 'recovery'],
  },
  decision: {
    holds:
      'what to do: options weighed over the belief, behind the guard rails; the whole plan, the ladder where nothing is weighed',
    runs: 'pure',
    may: [...DAYS, 'biology', 'journal', 'recovery', 'forecast'],
  },
  statistics: {
    holds: 'survival (kaplan-meier), competing risks (incidence, gray), regression (cox), limits (intervals)',
    runs: 'pure',
    may: DAYS,
  },
  records: {
    holds:
      'what is kept beside the journal: removal sheets and how two versions merge, the agreement and its text, move-out records',
    runs: 'pure',
    may: [...DAYS, 'journal'],
  },
  stays: {
    holds: 'what is counted of a colony’s time in the yard: facts, its queen, what was spent',
    runs: 'pure',
    may: [...DAYS, 'journal', 'recovery'],
  },
  photos: {
    holds: 'a photo checked, stripped and named; the folder they lie in',
    runs: 'anywhere',
    may: [...DAYS, 'journal'],
  },
  store: {
    holds: 'SQLite: schema, open and migrate, append, projections, queries, verify, backups',
    runs: 'anywhere',
    may: KERNEL,
  },
  people: {
    holds:
      'accounts, sessions, invitations; who may do what; limits of guessing (wrong passphrases, links, tokens)',
    runs: 'anywhere',
    may: [...KERNEL, 'store'],
  },
  words: {
    holds: 'all words, a catalogue a language; not the reasons of a plan in English',
    runs: 'pure',
    may: [...KERNEL, 'people'],
  },
  drawings: { holds: 'line drawings of what a question means', runs: 'anywhere', may: [] },
  forms: {
    holds: 'fields of every entry kind, what was typed, both ways; a field drawn',
    runs: 'anywhere',
    may: [...KERNEL, 'words', 'drawings'],
  },
  parts: {
    holds: 'what pages share: layout, ribbon, charts, marks',
    runs: 'anywhere',
    may: [...KERNEL, 'store', 'people', 'words', 'forms'],
  },
  app: {
    holds: 'the Hono application: frame, forms, submit, respond, errors, forecasts kept',
    runs: 'anywhere',
    may: [...KERNEL, 'store', 'people', 'words', 'forms', 'parts'],
  },
  'features/refused': feature('what phones could not hand in, and whom to ask', 'anywhere'),
  'features/entries': feature(
    'recording: intake, visit, outside look, move, note, outcome, corrections',
    'anywhere',
    'features/refused',
  ),
  'features/colony': feature('a colony’s page: advice, checks, odds, strength, journal, photos', 'anywhere'),
  'features/yard': feature('all colonies as rows', 'anywhere'),
  'features/how': feature('acts in five steps, the words, a first round', 'anywhere'),
  'features/find': feature('finding anything by its words', 'anywhere'),
  'features/round': feature('the round of today, its pace, what to load', 'anywhere', 'features/entries'),
  'features/today': feature('what to do now, by yard', 'anywhere', 'features/round'),
  'features/removal': feature('a job from the call to the truck', 'anywhere', 'features/entries'),
  'features/offline': feature('what the server hands a phone for its round; the outbox’s page', 'anywhere'),
  features: {
    holds: 'the list of features that a phone answers',
    runs: 'anywhere',
    may: [
      'app',
      'features/colony',
      'features/entries',
      'features/find',
      'features/how',
      'features/removal',
      'features/round',
      'features/today',
      'features/yard',
    ],
  },
  'features/paper': feature(
    'round sheets, typing them in, labels',
    'Node',
    'features/entries',
    'features/round',
  ),
  'features/health': feature('mites, feed, pests, brood disease', 'Node', 'features/entries'),
  'features/supplies': feature('queens and egg frames to have on hand; stands free by date', 'Node'),
  'features/weeks': feature(
    'all boxes on one calendar of days, the work of each day summed',
    'Node',
    'features/supplies',
  ),
  'features/rates': feature('the rates behind the odds, and how far to trust them', 'Node'),
  'features/review': feature(
    'which removals end well: cohorts, readings, charts',
    'Node',
    'features/removal',
  ),
  'features/letters': feature('the customer’s letter', 'Node'),
  'features/handing-on': feature(
    'what can go, sheets for new keepers, move-out records, the yard book',
    'Node',
    'features/letters',
  ),
  'features/messages': feature('the morning digest by mail and webhook, and that none goes twice', 'Node'),
  'features/calendar': feature('calendar addresses and feeds', 'Node'),
  'features/import': feature('old spreadsheets in, colonies as CSV', 'Node', 'features/entries'),
  'features/tidying': feature(
    'an old book put in order: names merged, what is long gone closed, both taken back',
    'Node',
    'features/import',
  ),
  'features/protocol': feature('the yard’s rules and settings', 'Node', 'features/removal'),
  'features/accounts': feature('signing in, set-up, invitations, people', 'Node', 'features/removal'),
  'features/data': feature(
    'backups, the whole yard out and in, history of changes',
    'Node',
    'features/removal',
  ),
  'features/api': feature('the HTTP API and its tokens', 'Node', 'features/letters', 'features/review'),
  phone: {
    holds: 'the service worker: outbox, when it fetches and sends, pages without signal',
    runs: 'phone',
    may: [...FEATURE, 'features', 'features/entries', 'features/offline', 'features/removal'],
  },
  node: {
    holds: 'listening, services on one database, commands; which chore runs at what hour',
    runs: 'Node',
    may: [...FEATURE, 'features', 'features/*', 'demo'],
  },
  'web/islands': {
    holds: 'what runs in pages, over the same rooms',
    runs: 'browser',
    may: [...KERNEL, 'words', 'forms', 'parts', 'features/entries', 'features/review'],
  },
}
