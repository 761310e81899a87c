/**
 * Where a swarm hangs, in words: only what is known to be open needs no look behind it. What nobody thought of is asked as a nest, for the
 * short sheet is the quickest way past every question that can kill.
 */
import type { Sheet } from '../../records/index.ts'

/** Said to be in something, in English or Spanish: a swarm that has gone into anything but a tree or a bush is a nest. */
const INSIDE =
  /\b(in|inside|into|behind|within|between|under|underneath|beneath|en|dentro|bajo|entre|debajo)\b|detrás/i
/**
 * “In the old pear tree” is open, “in the post in the garden fence” is in a post: only what it is said to be in counts. So does how it
 * hangs (“in a clump”) and since when.
 */
const IN_THE_OPEN =
  /\b(((in|into|inside|behind|within|between|under|underneath|beneath|en|dentro|bajo|entre|debajo)|(el|la|los|las|un|una|del?|the|an?|my|our|your|his|her|their|two|some)) ){1,4}((?!(in|the|by|near|next|under|of|on|over|at|to|from|beside|de|del)\b)[\p{L}-]+ ){0,2}(trees?|pear|apple|bush(es)?|hedges?|branch(es)?|twigs?|limbs?|shrubs?|garden|orchard|open|yard|vines?|grass|lawn|field|air|sun|shade|morning|afternoon|evening|hour|ball|clump|cluster|bunch|front|ramas?|arbustos?|seto|jardín|huerto|aire|árbol(es)?)(?!\p{L})/giu

/** A part of a building, or a hole in something: whatever tree stands beside it, it is no open branch. */
const BUILT =
  /\b(wall|roof|eaves?|soffit|vent|box|meter|chimney|shed|hollow|hole|gap|crack|cavity|shutter|siding|gable|attic|loft|cabinet|panel|pipe|knothole|(bird|tree|owl) ?house|pit|valve|pared|tejado|alero|hueco|agujero|caja|chimenea|mur)\b/i

/** What a swarm hangs on in the open (common practice). */
const OPEN =
  /\b(trees?|branch(es)?|twigs?|limb|bush(es)?|hedges?|shrubs?|vines?|(pear|apple|plum|cherry|oak|maple|pine|fir|willow|olive|lemon|orange|fig)s?|fences?|grass|lawn|rama|arbusto|seto|valla|cerca|hierba|césped)\b|árbol/i
/** Stands among trees as well, and carries current, or something to go into. */
const STANDS =
  /\b(on (the|our|my|a|his|her) house|fort|tower|tracks|rail(way|road)?|train|poles?|lamps?|lights?|pylon|transformers?|wires?|cables?|lines?|conditioner|manhole|doors?|windows?|frames?|rafters?|beams?|barn|floor|ceiling|porch|deck|engine|cars?|trucks?|vans?|downpipe|gutter|drain|tank|inside|into|within|dentro|highway|motorway|road|toma|poste|farola|coche)\b/i

const isOpen = (where: string): boolean => OPEN.test(where) && !STANDS.test(where)

/** Words for a part of a building, or for being in something that does not grow. */
export const isInside = (text = ''): boolean =>
  BUILT.test(text) || INSIDE.test(text.replaceAll(IN_THE_OPEN, ' '))

/** Whether the words of a sheet make a nest of what was tapped as a swarm. Where nothing is said, it is still to be asked. */
export const hangsInWords = ({ job, site }: Pick<Sheet, 'job' | 'site'>): boolean =>
  !isInside(job.told) && (site.where === undefined || (isOpen(site.where) && !isInside(site.where)))

/** Tapped beside the box; anything else is typed. */
export const HANGS_ON = ['On a branch', 'In a bush or hedge', 'On a fence', 'In the grass'] as const
