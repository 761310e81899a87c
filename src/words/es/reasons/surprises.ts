/** Evidence that contradicts the story so far, in Spanish. */
import type { SURPRISES as English } from '../../../recovery/index.ts'
import { causeWords, d } from './days.ts'

const CELL = {
  open: 'Una celda real abierta',
  capped: 'Una celda real operculada',
  emerged: 'Una celda real de la que ya nació la reina',
} as const

const ABOUT = {
  eggs: 'los huevos',
  'open brood': 'la cría abierta',
  'capped brood': 'la cría operculada',
  'queen cells': 'las celdas reales',
} as const

const MISTAKE = 'o está equivocada una fecha, o lo que se vio'

export const SURPRISES: typeof English = {
  'queen-given-while-raising': ({ on }) =>
    `Se introdujo una reina fecundada el ${d(on)} mientras la colonia criaba la suya. Una reina virgen o una celda la mata: asegurarse de que no queda ninguna.`,
  'queen-given-to-laying-workers': ({ on }) =>
    `Se introdujo una reina fecundada el ${d(on)} entre obreras ponedoras: casi siempre la matan. Es más probable que salga bien sacarla y unir con una colonia fuerte que tenga reina.`,
  'two-queens-one-caged': ({ on }) =>
    `Una reina sigue en su jaula el ${d(on)}, y otra pone: hay dos reinas. Sacar una, la enjaulada si los huevos son buenos.`,
  'let-out-beside-another': ({ on }) =>
    `El ${d(on)} se soltó una reina en una colonia en la que otra pone. Una de las dos morirá: comprobar en dos a tres días que sigue habiendo huevos.`,
  'lost-and-alive': ({ lost, on }) =>
    `La colmena se dio por perdida el ${d(lost)}, y el ${d(on)} se vieron abejas en ella. Una de las dos cosas está equivocada, o entró un enjambre.`,
  'fresh-comb-too-old': ({ on, since }) =>
    `La cría en panal nuevo del ${d(on)} es más vieja que la estancia de la colonia aquí, desde el ${d(since)}. Lo más probable: el panal vino con ellas; o está equivocada una fecha. No se toma como prueba.`,
  'cells-beside-layer': ({ on }) =>
    `Celdas reales junto a una reina en postura el ${d(on)}. Lo más probable: la están reemplazando, o quieren enjambrar; revisar otra vez antes de que nazcan.`,
  'cells-beside-caged': ({ on }) =>
    `Celdas reales el ${d(on)} mientras hay una reina enjaulada aquí: crían la suya. Cortar todas las celdas antes de que ella salga, o dejar las celdas y sacar a la reina.`,
  'cells-beside-seen': ({ on }) =>
    `Celdas reales el ${d(on)} junto a una reina que se vio. Lo más probable: la están reemplazando, o quieren enjambrar.`,
  'eggs-doubted': ({ eggs, on, begun }) =>
    `Se vieron huevos el ${d(eggs)}, y el ${d(on)} hay celdas reales empezadas a más tardar el ${d(begun)} y no hay huevos: las dos revisiones no concuerdan. Lo más probable: esos huevos no eran de ella, o eran otra cosa.`,
  'cells-younger': ({ on, latest, promised }) =>
    `Las celdas reales del ${d(on)} son más jóvenes de lo esperado: la reina nace a más tardar el ${d(latest)}, no el ${d(promised)}. Lo más probable: celdas lentas; o una reina todavía ponía aquí.`,
  'eggs-missed': ({ by, none }) =>
    `Hay cría puesta a más tardar el ${d(by)}, aunque no se encontraron huevos el ${d(none)}. Lo más probable: ese día no se vieron los huevos; ${MISTAKE}.`,
  'eggs-before-possible': ({ by, possible }) =>
    `Hay huevos nuevos a más tardar el ${d(by)}, pero la reina que se cría no puede poner antes del ${d(possible)}. Lo más probable: hay otra reina; ${MISTAKE}.`,
  'eggs-while-caged': ({ on, since }) =>
    `Hay huevos nuevos el ${d(on)} mientras la reina está en su jaula desde el ${d(since)}. Lo más probable: hay otra reina suelta en la colmena; o ella ya había salido.`,
  'eggs-though-queenless': (p) =>
    `Hay huevos nuevos a más tardar el ${d(p.by)} en una colonia que se daba por huérfana (${causeWords(p.because)}). Lo más probable: había una reina que todavía no ponía en la última revisión; ${MISTAKE}.`,
  'eggs-disagree': ({ seen, on }) =>
    `Se vieron huevos el ${d(seen)}, y ninguno el ${d(on)}: las dos revisiones no concuerdan. O no se vieron los huevos, o los del ${d(seen)} no lo eran. Revisar otra vez en dos a tres días.`,
  'queen-though-queenless': (p) =>
    `Se vio una reina el ${d(p.on)} en una colonia que se daba por huérfana (${causeWords(p.because)}). Lo más probable: antes no se vio, o entró una virgen extraviada; o fue un error.`,
  'queen-before-possible': ({ on, earliest }) =>
    `Se vio una reina el ${d(on)}, antes de que pueda nacer la que se cría (${d(earliest)}). Lo más probable: la reina vieja sigue ahí; u otra celda estaba más adelantada.`,
  'cell-dead': ({ on, last }) =>
    `Una celda real todavía cerrada el ${d(on)} está muerta: el último día en que una reina podía salir de ella era el ${d(last)}, y no se añadió cría joven. A menos que naciera una virgen de otra celda, no tienen reina.`,
  'swarm-may-have-virgin': ({ on }) =>
    `No hay huevos el ${d(on)}, y no vino cría con el enjambre: puede haber traído una reina virgen, y entonces la falta de celdas no dice nada. No quitar la tapa mientras ella vuela.`,
  'looks-disagree': ({ on, about }) =>
    `Dos revisiones del ${d(on)} no concuerdan sobre ${about.map((a) => ABOUT[a]).join(' y ')}. Una está equivocada: revisar una vez más en dos a tres días, con las dos personas si se puede.`,
  'cells-impossible': ({ stage, on }) =>
    `${CELL[stage]} el ${d(on)} no puede venir de la cría joven que se sabe que hay en esta colmena. Lo más probable: una reina ha puesto aquí desde entonces; ${MISTAKE}.`,
  'emerged-early': ({ on, earliest }) =>
    `Una celda real de la que ya nació la reina, vista el ${d(on)}, es anterior al día en que la reina que se cría puede salir de la suya (${d(earliest)}). Lo más probable: otra celda estaba más adelantada; ${MISTAKE}.`,
  'cells-do-not-fit': ({ stage, on, from, to }) =>
    `${CELL[stage]} el ${d(on)} no concuerda con la reina que se espera entre el ${d(from)} y el ${d(to)}. Lo más probable: un segundo grupo de celdas de cría más joven; ${MISTAKE}.`,
}
