/**
 * The fields of each part of a removal sheet, each said once: drawn, read and filled again from here. A field's name in
 * a form is its path in the part.
 */

import { ALONG, type FieldSpec, type FieldSpecs, spec, TAKEN } from '../../forms/index.ts'
import { TRADES } from '../../records/index.ts'
import { removalTypes, TEMPER } from '../../words/index.ts'
import {
  BEGUN,
  BEHIND_IT,
  BYSTANDER,
  CALLER,
  CLEAN,
  CLOSED,
  DECIDE,
  FOUND,
  HAZARD,
  HOW_LONG,
  NEWS,
  PRICING,
  SEAL,
  SECOND_WHY,
  VACUUM,
  WATER,
  WAY,
  WAY_UP,
  WIRES_NEAR,
  YES_NO,
} from './choices.ts'
import { TICKS, TRADE_WORDS } from './hazard-words.ts'
import { TICKED } from './item.ts'
import type { Part } from './stage.ts'
import { HANGS_ON } from './swarm.ts'

const { choice, day, lines, list, number, text, time, whole, yesNo } = spec

/** Pictures that are kept with the sheet, and seen by whoever may open it. */
const photos = (label: string): FieldSpec => ({
  as: 'photos',
  label,
  hint: 'Only beekeepers and operators see them. Where they were taken is left out.',
})

/** What is seen or told of the place at the call already: asked there, kept with the site. */
export const TRIAGE = {
  access: choice('How high', WAY_UP, 3, { asks: 'How high, and how one gets there' }),
  heightM: number('Height', { asks: 'Height of bees', quantity: 'height', max: 100 }),
  sprayed: choice('Sprayed', YES_NO, 4, { asks: 'Sprayed or foamed already?' }),
  sprayedNote: text('With what, and when', { maxlength: 300, wide: true }),
  bystanders: list('Who is about', BYSTANDER, 3, {
    asks: 'Who is about? Anybody allergic?',
  }),
  bystandersNote: text('More about them', { maxlength: 300, wide: true }),
} satisfies FieldSpecs

/** Asked with the site; of a swarm, which needs no such look, before it is boxed. */
export const TEMPERED = {
  temper: choice(
    'Temper',
    [...TEMPER.filter((c) => c.value !== ''), { value: 'unknown', label: 'Not known' }],
    3,
    {
      asks: 'How they behave',
    },
  ),
  africanized: choice('Africanized bees', YES_NO, 4, { asks: 'Africanized bees established here?' }),
} satisfies FieldSpecs

/** Where a swarm hangs: tapped, or in words, which are asked as a nest where they name nothing open. */
export const HANGS = {
  where: choice(
    'What it hangs on',
    HANGS_ON.map((value) => ({ value, label: value })),
    2,
    {
      hint: 'Anything in or on a building, a pole or a machine is asked as a nest.',
      other: { label: 'somewhere else', inputmode: 'text', maxlength: 300 },
    },
  ),
} satisfies FieldSpecs

export const PART_FIELDS = {
  job: {
    /** A removal type, or why it is none: read apart (call.ts). */
    what: choice('What it is', removalTypes(), 3, {
      asks: 'What do they see?',
      other: { label: 'Another kind', inputmode: 'text', maxlength: 40 },
    }),
    since: choice('Since when', HOW_LONG, 5),
    ...TRIAGE,
    caller: choice('Who calls', CALLER, 3, { asks: 'Who calls: owner or tenant?' }),
    name: text('Name', { maxlength: 120 }),
    phone: text('Telephone', { maxlength: 60, keys: 'tel' }),
    email: text('E-mail', { maxlength: 200, keys: 'email' }),
    address: text('Address', { asks: 'Address of bees', maxlength: 300, wide: true }),
    wayIn: lines('The way in', { hint: 'Gate, parking, key, dog.', maxlength: 500, rows: 2 }),
    calledOn: day('Day of the call'),
    told: lines('What they see', { asks: 'What they say', maxlength: 1000, rows: 2 }),
    plannedOn: day('Day planned'),
    plannedAt: time('Time planned', { asks: 'Time' }),
    photos: photos('Photos'),
  },
  site: {
    where: text('Where the bees are', {
      asks: 'Where, in words',
      hint: 'In the wall left of the porch, above the window.',
      maxlength: 300,
      wide: true,
    }),
    foundBy: list('How that was found', FOUND, 3),
    foundNote: text('More about it', { asks: 'Where heat and scope showed it', maxlength: 500, wide: true }),
    nestHighMm: number('Height of the nest', {
      asks: 'Nest, high',
      quantity: 'length',
      max: 10_000,
      maxlength: 10,
    }),
    nestWideMm: number('Width of the nest', { asks: 'wide', quantity: 'length', max: 10_000, maxlength: 10 }),
    nestDeepMm: number('Depth of the nest', { asks: 'deep', quantity: 'length', max: 5000, maxlength: 10 }),
    entrance: text('Entrance', { asks: 'Where they fly in', maxlength: 200 }),
    entranceM: number('From entrance to nest', { quantity: 'height', max: 100 }),
    otherEntrances: text('Other entrances', { hint: 'Each has to be shut.', maxlength: 300, wide: true }),
    surface: text('What is cut', { hint: 'Siding, plaster.', maxlength: 120 }),
    sheathingMm: number('Thickness of the sheathing', {
      asks: 'How thick it is',
      hint: 'At a drilled hole.',
      quantity: 'length',
      max: 500,
      maxlength: 10,
    }),
    behind: list('Behind the surface', BEHIND_IT, 3, {
      asks: 'What runs behind it',
      hint: 'Ask, trace from outlets and taps, use a detector.',
    }),
    hazards: list('Hazards', HAZARD, 3, {
      asks: 'On it and around it',
      hint: 'Suspected is enough: a licensed contractor tests it first.',
    }),
    behindNote: text('More about it', { maxlength: 500, wide: true }),
    ...TEMPERED,
    photos: photos('Photos'),
  },
  agreement: {
    pricing: choice('Price', PRICING, 3, { asks: 'How it is priced' }),
    hourly: number('Price of an hour', { asks: 'By the hour', max: 1_000_000, maxlength: 10 }),
    hours: number('Hours expected', { max: 1000 }),
    fixed: number('Fixed price', { max: 1_000_000, maxlength: 10 }),
    warrantyDays: whole('Days of coming back', {
      asks: 'Coming back without charge, for',
      unit: 'days',
      max: 3650,
    }),
    deposit: number('Deposit', { max: 1_000_000, maxlength: 10 }),
    depositOn: day('Deposit paid on'),
    paid: number('Paid', { max: 1_000_000, maxlength: 10 }),
    paidOn: day('Paid on'),
    invoice: text('Invoice number', { maxlength: 60 }),
    extra: lines('Agreed for this job', { hint: 'Stands at the end of the agreement.', rows: 2 }),
  },
  check: {
    on: day('Day of the forecast'),
    hottestC: number('Hottest hour while you work', {
      asks: 'Hottest hour',
      quantity: 'temperature',
      min: -30,
      max: 60,
    }),
    from: time('Work from'),
    until: time('Work until', { asks: 'until' }),
    cutMm: number('Cutting depth', {
      asks: 'Blade set to',
      quantity: 'length',
      max: 500,
      maxlength: 10,
    }),
    vacuum: choice('How the bees come off', VACUUM, 3),
    wires: choice('Wires near', WIRES_NEAR, 3, {
      asks: 'Wires, meter, pole within 3 m (10 ft)?',
    }),
    done: list(
      'Checked',
      TICKED.map((value) => ({ value, label: TICKS[value] })),
      2,
      { asks: 'Tap what is so now' },
    ),
  },
  work: {
    on: day('Day of the removal', { past: true }),
    arrivedAt: time('Arrived', { now: true }),
    openedAt: time('Opened', { now: true }),
    boxedAt: time('Boxed', { now: true }),
    leftAt: time('Left', { now: true }),
    ...TAKEN,
    water: yesNo('Ready: clothing, smoker, water and shade', WATER, 3),
    queenFoundAt: time('Queen found at', { asks: 'Found at', now: true }),
    ...ALONG,
    cleaned: choice('Comb and honey taken out', CLEAN, 4),
    sealed: choice('The entrance', SEAL, 2),
    closedUp: list('Closed up', CLOSED, 3),
    photos: photos('Photo of it closed'),
    left: text('Left to the owner', {
      hint: 'Closing up, repair: said to whom.',
      maxlength: 500,
      wide: true,
    }),
    onTheWay: list('On the way', WAY, 2),
    boxHours: number('Hours in the box', { unit: 'hours', max: 96 }),
    boxC: number('Temperature in the box', { quantity: 'temperature', min: -30, max: 60 }),
    note: lines('Note about the bees', {
      hint: 'Helpers read this: it goes into the colony’s journal. Nothing about the customer.',
      maxlength: 1500,
    }),
  },
} satisfies Record<Part, FieldSpecs>

/** A clearance of one hazard. */
export const CLEARANCE_FIELDS = {
  as: choice(
    'Which trade',
    TRADES.map((value) => ({ value, label: TRADE_WORDS[value] })),
    3,
  ),
  says: choice('What their paper says', [], 3),
  who: text('Who cleared it', { asks: 'Their full name, or company', maxlength: 120, required: true }),
  licence: text('Number', { asks: 'Licence, ticket or report no.', maxlength: 120 }),
  on: day('Cleared on', { past: true, required: true }),
} satisfies FieldSpecs

/** A second person answers for one item. */
export const SECOND_FIELDS = {
  by: choice('Second person', [], 2, {
    other: { label: 'first and last name', inputmode: 'text', maxlength: 120 },
  }),
  why: choice('What they stand for', SECOND_WHY, 2, { asks: 'What they say' }),
  phone: text('Telephone', { asks: 'Your own telephone', maxlength: 60, keys: 'tel' }),
  reason: text('More about it', { maxlength: 500, wide: true }),
} satisfies FieldSpecs

/** Boxed on the day it was opened, and only written down on another: no reason is asked. */
export const THAT_DAY = 'that-day'

/** Something is told of the bees, and nothing was opened. */
export const NOT_OPENED = 'not-opened'

/** It was begun, and no “go” stood. */
export const WITHOUT_GO_FIELDS = {
  why: choice('Begun without a “go”', BEGUN, 3, { asks: 'No “go” of that day stands: why was it done?' }),
  words: text('More about it', { maxlength: 300, wide: true }),
} satisfies FieldSpecs

export const DECISION_FIELDS = {
  is: choice('Decision', DECIDE, 3),
  reason: lines('Reason', {
    hint: 'To refuse, or to go while something is unmet.',
    maxlength: 1000,
    rows: 2,
  }),
} satisfies FieldSpecs

/** Asked beside a “go” on a phone that has heard nothing for hours (as-known.ts). */
export const HEARD_FIELDS = {
  by: choice('Who read you the list', [], 3),
  at: time('When they read it', { now: true }),
  news: choice('What is new on it', NEWS, 2),
} satisfies FieldSpecs

/** The fields of a part that is only known when it runs. */
export const fieldsOfPart = (part: Part | 'decision'): FieldSpecs =>
  part === 'decision' ? DECISION_FIELDS : PART_FIELDS[part]
