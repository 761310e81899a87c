/**
 * The fields of each part of a removal sheet, each said once: drawn, read and filled again from here. A field's name in
 * a form is its path in the part.
 */

import { ALONG, type FieldSpecs, spec, TAKEN } from '../../forms/index.ts'
import { removalTypes, TEMPER } from '../../words/index.ts'
import { TICKED } from './item.ts'
import type { Part } from './stage.ts'
import {
  BEHIND_IT,
  BYSTANDER,
  CLEAN,
  DECIDE,
  FOUND,
  HAZARD,
  PRICING,
  SEAL,
  TICKS,
  VACUUM,
  WAY_UP,
  YES_NO,
} from './words.ts'

const { choice, day, lines, list, number, score, text, time } = spec

export const PART_FIELDS = {
  job: {
    name: text('Name', { maxlength: 120 }),
    phone: text('Telephone', { maxlength: 60 }),
    email: text('E-mail', { maxlength: 200 }),
    address: text('Address', { asks: 'Address of the bees', maxlength: 300, wide: true }),
    wayIn: lines('The way in', { hint: 'Gate, parking, key, dog.', maxlength: 500, rows: 2 }),
    calledOn: day('Day of the call'),
    told: lines('What they see', {
      asks: 'What they see, and since when',
      hint: 'Where do they go in and out? How many? Has anybody sprayed?',
      maxlength: 1000,
    }),
    plannedOn: day('Day planned'),
    plannedAt: time('Time planned', { asks: 'Time' }),
  },
  site: {
    type: choice('Kind of removal', removalTypes(), 3, {
      other: { label: 'Another kind', inputmode: 'text', maxlength: 40 },
    }),
    where: text('Where the bees are', {
      asks: 'Where, in words',
      hint: 'In the wall left of the porch, above the window.',
      maxlength: 300,
      wide: true,
    }),
    foundBy: list('How that was found', FOUND, 3),
    foundNote: text('More about it', { asks: 'How large, how far it reaches', maxlength: 500, wide: true }),
    access: choice('How one gets there', WAY_UP, 3),
    heightM: number('Height', { quantity: 'height', max: 100 }),
    surface: text('What is cut', { hint: 'Siding, plaster, boards.', maxlength: 120 }),
    sheathingMm: number('Thickness of the sheathing', {
      hint: 'Measured at an edge or a drilled hole.',
      quantity: 'length',
      max: 500,
      maxlength: 10,
    }),
    behind: list('Behind the surface', BEHIND_IT, 3, {
      asks: 'What runs behind it',
      hint: 'Ask, trace from outlets and taps, use a detector. Wires, gas and flues: the licensed trade first.',
    }),
    hazards: list('Hazards', HAZARD, 3, {
      hint: 'Asbestos or lead paint suspected: nothing is cut, broken or swept until a licensed contractor has tested it.',
    }),
    old: choice('Built before 1980', YES_NO, 4, { asks: 'Built before 1980?' }),
    behindNote: text('More about it', { maxlength: 500, wide: true }),
    sprayed: choice('Sprayed', YES_NO, 4, { asks: 'Have they been sprayed or foamed?' }),
    sprayedNote: text('With what, and when', { maxlength: 300, wide: true }),
    bystanders: list('Bystanders', BYSTANDER, 3, { asks: 'Who is about' }),
    bystandersNote: text('More about them', { maxlength: 300, wide: true }),
    temper: score('Temper', TEMPER, 3, { min: 1, max: 5 }),
    africanized: choice('Africanized bees established here', YES_NO, 4, {
      asks: 'Are Africanized bees established here?',
      hint: 'Local rules decide what may be moved and where to.',
    }),
  },
  agreement: {
    pricing: choice('Price', PRICING, 3, { asks: 'How it is priced' }),
    hourly: number('Price of an hour', { asks: 'By the hour', max: 1_000_000, maxlength: 10 }),
    hours: number('Hours expected', { max: 1000 }),
    fixed: number('Fixed price', { max: 1_000_000, maxlength: 10 }),
    extra: lines('Agreed for this job', { hint: 'Stands at the end of the agreement.' }),
  },
  check: {
    on: day('Day of the forecast'),
    from: time('Work from'),
    until: time('Work until', { asks: 'until' }),
    cutMm: number('Cutting depth', {
      asks: 'Blade set to',
      hint: 'No deeper than the sheathing and the small margin of the protocol.',
      quantity: 'length',
      max: 500,
      maxlength: 10,
    }),
    vacuum: choice('How the bees come off', VACUUM, 2),
    done: list(
      'Checked',
      TICKED.map((value) => ({ value, label: TICKS[value] })),
      2,
      { asks: 'Tick what is so now' },
    ),
    hottestC: number('Hottest hour while you work', { quantity: 'temperature', min: -30, max: 60 }),
  },
  work: {
    on: day('Day of the removal', { past: true }),
    arrivedAt: time('Arrived'),
    openedAt: time('Opened'),
    boxedAt: time('Boxed'),
    leftAt: time('Left'),
    ...TAKEN,
    queenFoundAt: time('Queen found at', { asks: 'Found at' }),
    ...ALONG,
    sealed: choice('The entrance', SEAL, 2),
    cleaned: choice('The comb', CLEAN, 4, { asks: 'The comb taken out' }),
    left: text('Left to the owner', {
      hint: 'Closing up, repair: said to whom.',
      maxlength: 500,
      wide: true,
    }),
    note: lines('Note about the bees', {
      hint: 'Goes into the colony’s journal, which everybody in the yard reads: nothing about the customer.',
      maxlength: 1500,
    }),
  },
} satisfies Record<Part, FieldSpecs>

export const DECISION_FIELDS = {
  is: choice('Decision', DECIDE, 3),
  by: text('Who decides', {
    hint: 'By name: the one who answers for it at the wall.',
    maxlength: 120,
    required: true,
  }),
  reason: lines('Reason', {
    hint: 'Needed to go while something is unmet, and to refuse.',
    maxlength: 1000,
  }),
} satisfies FieldSpecs

/** The fields of a part that is only known when it runs. */
export const fieldsOfPart = (part: Part | 'decision'): FieldSpecs =>
  part === 'decision' ? DECISION_FIELDS : PART_FIELDS[part]
