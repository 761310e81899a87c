/** Why something may not be done today, in Spanish; without a full stop. */
import type { GUARDS as English } from '../../../recovery/index.ts'
import { d, deedWords } from './days.ts'

export const GUARDS: typeof English = {
  held: ({ since }) => `el ${d(since)} se sospechó una enfermedad de la cría y no está descartada`,
  exposed: ({ since, how }) =>
    `${deedWords(how)} el ${d(since)}, y en esa colonia se sospecha una enfermedad de la cría`,
  'lost-box': ({ on }) => `el ${d(on)} se encontró que la colonia se perdió`,
  robbing: ({ on }) => `el ${d(on)} se vio pillaje: una colmena abierta alimenta a las pilladoras`,
  quiet: ({ until }) => `una reina joven está naciendo, madurando o fecundándose hasta el ${d(until)}`,
  'cold-season': () => 'es la época fría: esperar un día templado y sin viento',
  'cold-day': ({ outdoorC, leastC }) => `a ${outdoorC} °C la cría se enfría: esperar ${leastC} °C`,
  'caged-queen': ({ since }) =>
    `hay una reina enjaulada en esta colmena desde el ${d(since)}: atenderla primero`,
  'layer-with-bees': ({ frames }) =>
    frames === null
      ? 'aquí hay una reina en postura'
      : `aquí hay una reina en postura, y ${frames} cuadros con abejas son un núcleo, no una colonia perdida`,
  raising: ({ until }) => `puede haber una reina virgen o celdas reales hasta el ${d(until)}, y la matarían`,
  layer: () => 'aquí hay una reina en postura',
  'laying-workers': () => 'las obreras ponedoras matan a la reina que se introduce',
  'another-queen': ({ since }) =>
    `el ${d(since)} una reina fue rechazada o estaba muerta en su jaula: es probable que haya otra`,
  'no-mating': ({ about }) =>
    `una reina criada de ahí volaría a fecundarse alrededor del ${d(about)}, cuando aquí las reinas no se fecundan`,
}
