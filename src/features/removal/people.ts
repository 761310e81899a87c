/**
 * People about: what each answer on the sheet asks for. Distances and times are judgement, from common practice: bees that
 * defend a nest follow some tens of metres, Africanized ones several hundred; fewer people and bees are out early and late.
 */
import type { Sheet } from '../../records/index.ts'
import { cuts } from './hazards.ts'
import { type Facts, MET, NOT_NEEDED, type TickedId } from './item.ts'
import { lookedHere, saysAddress, tickedHere } from './place.ts'

/** Metres up to which somebody works from the ground: what is higher is climbed to, whatever was tapped (judgement). */
const REACH_M = 2.5

/** Somebody goes up. */
export const climbs = (s: Sheet): boolean =>
  (s.site.access !== undefined && s.site.access !== 'ground') || (s.site.heightM ?? 0) > REACH_M

/** A roof lower than this was typed in the other unit (judgement). */
const LEAST_ROOF_M = 1.8

/** “From the ground” is tapped of a second floor too: it counts only where somebody has said how high the bees are. */
const heightUnsaid = ({ site }: Sheet): boolean =>
  site.access === 'ground' &&
  (site.heightM === undefined || (site.type === 'roof' && site.heightM < LEAST_ROOF_M))

/** The score from which they are met as fierce (judgement). */
export const FIERCE = 4

const about = (s: Sheet, who: 'children' | 'allergic'): boolean => s.site.bystanders?.includes(who) === true

/** Somebody has said so, at the call or at work: temper 4 or 5, or stock that is established here. Of boxed bees it is of the colony. */
export const saidFierce = ({ site, work }: Sheet): boolean =>
  site.africanized === 'yes' ||
  [site.temper, work.boxedAt === undefined ? work.temper : 0].some((score) => Number(score) >= FIERCE)

/** Fierce, or nobody knows: what is not known is met as if it were. */
export const fierce = (s: Sheet): boolean =>
  saidFierce(s) || s.site.africanized === 'unknown' || s.site.temper === 'unknown'

export const temperAsked = ({ site }: Sheet): Facts => {
  const ask = [
    ...(site.temper === undefined ? ['How do they behave?'] : []),
    ...(site.africanized === undefined ? ['Are Africanized bees established here?'] : []),
  ]
  return ask.length === 0 ? MET : { state: 'unsaid', why: `${ask.join(' ')} Not knowing counts as fierce.` }
}

export const AS_TOLD: Record<TickedId, string> = {
  free: 'It hangs free in the open: nothing is opened, cut or unscrewed. In a wall, roof, floor, chimney or box it is a nest: change it at the call.',
  'not-alone': 'Somebody within call all the time, with a telephone that works here.',
  'ladder-person': 'One works, one holds the ladder and looks. On a roof: held against a fall.',
  'sting-plan':
    'Said aloud: who is allergic, where the adrenaline is, who calls the local emergency number, the address to give, where an ambulance gets in.',
  allergy:
    'Somebody allergic is about: away or indoors with windows shut; their adrenaline in date and in hand, somebody beside them who gives it; the way kept free for an ambulance.',
  children:
    'Children are about: away, or indoors with windows shut and a grown-up, until the last bees are in.',
  exclusion:
    'People and animals 15 m (50 ft) away, neighbours told, windows shut, until the last bees are in.',
  fierce:
    'Fierce or Africanized, or not known: everybody and every animal 100 m (330 ft) away or shut indoors, a car to get into, first or last light, two in full suits. Local rules decide whether they may be moved.',
  water: 'Water to drink and shade, for people in suits and for boxed bees.',
  droppings: 'Droppings or mould: a respirator (P100 or FFP3), wetted first, never swept dry.',
  insulation:
    'Insulation: respirator, gloves and goggles. Loose grey grains may be vermiculite with asbestos: leave it, and have it tested.',
  stopcock: 'A water pipe: find the stopcock and turn it once before the cut.',
  kit: 'Veil, suit, gloves for all inside the line. Smoker on bare ground, water beside it, never near dust. Boxes, bands, queen clip, chest, straps.',
}

/** Whether a ticked item is asked at this job. */
export function isAsked(id: TickedId, s: Sheet): boolean {
  const { behind, hazards } = s.site
  switch (id) {
    case 'free':
      return !cuts(s)
    case 'ladder-person':
      return s.site.access !== 'ground' || climbs(s) || heightUnsaid(s)
    case 'allergy':
      return about(s, 'allergic')
    case 'children':
      return about(s, 'children')
    case 'fierce':
      return fierce(s)
    // Of what is cut they are asked when it is opened, and nothing is opened without.
    case 'water':
    case 'kit':
      return !cuts(s)
    case 'droppings':
      return hazards?.includes('droppings') === true
    case 'insulation':
      return behind?.includes('insulation') === true
    case 'stopcock':
      return behind?.includes('water') === true
    default:
      return true
  }
}

/** Ticked on another day, hours ago (`late`), or at another place, counts for nothing: who is within call, what is cleared away, where water stands, is so today or not. */
export function tickedFacts(id: TickedId, s: Sheet, today: string, late = false): Facts {
  if (!isAsked(id, s)) return NOT_NEEDED
  if (id === 'ladder-person' && s.site.access === undefined && !climbs(s))
    return { state: 'unsaid', why: 'Not said yet how one gets to the bees.' }
  if (id === 'sting-plan' && !saysAddress(s))
    return {
      state: 'unsaid',
      why: 'There is no address on the sheet to send an ambulance to: type it at the call.',
    }
  if (id === 'free' && s.site.where === undefined)
    return { state: 'unsaid', why: 'Not said yet what it hangs on: tap it before the cut.', moved: true }
  // A box left open is not filled in: nobody has said that it is not so.
  const ticked = !late && tickedHere(s, today) && s.check.done?.includes(id) === true
  if (!ticked && id === 'ladder-person' && heightUnsaid(s))
    return {
      state: 'unsaid',
      why: `From the ground: how high are the bees? Type it at the call. Over 2.5 m (8 ft): ${AS_TOLD[id]}`,
      moved: true,
    }
  return { state: ticked ? 'met' : 'unsaid', why: AS_TOLD[id] }
}

export function bystandersAsked(s: Sheet, today: string): Facts {
  if (lookedHere(s, 'bystanders', today)) return MET
  return s.site.bystanders === undefined
    ? {
        state: 'unsaid',
        why: 'Who is about, and is anybody allergic? Ask in the house and next door. Not known: tap “Somebody allergic”.',
        moved: true,
      }
    : {
        state: 'unsaid',
        why: 'Who is about was asked of another address, or days ago: ask in the house and next door, and tap it again.',
        moved: true,
      }
}
