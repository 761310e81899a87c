/** Bees by frames and by weight. Sources differ widely; the trade's figures are used and named. */
import { KG_PER_LB } from '../units.ts'

/** Bees in a pound: 3,492 smoked and engorged (Mitchell 1970), the trade's 3,500. Unfed bees weigh less (up to 5,159 a pound). */
export const BEES_PER_LB = 3500

/** Bees on one deep frame, both sides fully covered: 2,430 (Burgett & Burikam 1985, number from memory); the trade counts 2,300. */
export const BEES_PER_FRAME = 2300

/** Worker cells on one side of a deep frame: 3,344-3,520 (3.8-4.0 a cm² on 880 cm²). */
export const CELLS_PER_FRAME_SIDE = 3500

/** Frames of bees in a weight of bees. Example: framesOfBees(1.36) = 4.6 (a three-pound package). */
export const framesOfBees = (kg: number): number => ((kg / KG_PER_LB) * BEES_PER_LB) / BEES_PER_FRAME
