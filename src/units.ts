/** Units people use beside the ones we store (°C, kg, frames of bees, litres). */

/** °F to °C. Example: celsius(85) = 29.44… */
export const celsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9

/**
 * Degrees are kept and compared to a tenth: 85 °F, the common limit, is then 29.4 °C and not a hair over it. Finer than any
 * thermometer in a yard, and coarse enough that °F come back as they were typed. Example: tenth(celsius(85)) = 29.4.
 */
export const tenth = (degrees: number): number => Math.round(degrees * 10) / 10

/** Whether it is hotter than a limit, both °C. Example: hotterThan(celsius(85), 29.4) = false. */
export const hotterThan = (c: number, limitC: number): boolean => tenth(c) > tenth(limitC)

/** °C to °F. */
export const fahrenheit = (c: number): number => (c * 9) / 5 + 32

/** Kilograms in one international pound (exact, International Yard and Pound Agreement 1959). */
export const KG_PER_LB = 0.45359237

/** lb to kg. */
export const kilograms = (pounds: number): number => pounds * KG_PER_LB

/** kg to lb. */
export const pounds = (kg: number): number => kg / KG_PER_LB

/** Exact, by the same agreement. */
export const MM_PER_INCH = 25.4
export const M_PER_FOOT = 0.3048

/** Litres in one US liquid quart: a quarter of the gallon of 231 cubic inches. */
export const LITRES_PER_QUART = (231 / 4) * (MM_PER_INCH / 100) ** 3

/** International mile. */
export const KM_PER_MILE = 1.609344
