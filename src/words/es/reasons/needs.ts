/** What is said beside the advice of the day, in Spanish. */
import type { NEEDS as English } from '../../../recovery/index.ts'
import { d } from './days.ts'

/** As far as foragers fly back, km; the number is the core's (src/recovery/says/needs.ts). */
const NEAR = '3 km'
const LEARN_ANEW =
  'Mover al anochecer, con la colmena cerrada, y poner ramas delante de la piquera para que aprendan el lugar de nuevo.'

export const NEEDS: typeof English = {
  'hungry-and-robbed': ({ since }) =>
    `Había pocas reservas el ${d(since)}: primero cerrar contra el pillaje, después alimentar al anochecer, adentro.`,
  hungry: ({ since }) => `Había pocas reservas el ${d(since)}: alimentar.`,
  'mites-over': ({ per100, on, most }) =>
    `Ácaros: ${per100.toFixed(1)} por cada 100 abejas el ${d(on)}; el límite es ${most}. Tratar como permite la etiqueta, mejor mientras no hay cría operculada, y hacer otro lavado.`,
  'treatment-kills-caged': () =>
    'Hay una reina en jaula ahí dentro: el ácido fórmico, el timol y similares pueden matarla. Atenderla primero.',
  'treatment-costs-young': () =>
    'Puede haber una reina joven ahí dentro: el ácido fórmico, el timol y similares pueden costarle la vida, así que esperar a que ponga, con la tapa puesta, a menos que los ácaros no puedan esperar.',
  'treated-wash-again': ({ on }) => `Se trató el ${d(on)}: hacer otro lavado, para ver si funcionó.`,
  'mates-when-none-do': ({ about }) =>
    `La reina que se cría volaría a fecundarse alrededor del ${d(about)}, cuando aquí las reinas no se fecundan: tener pensada una reina fecundada o una colonia con la que unirla.`,
  'cells-came-along': () =>
    'Vinieron celdas reales: cortarlas todas antes de soltar a la reina enjaulada, o una de ellas la mata; o dejar una sola celda y sacar a la reina.',
  'cells-beside-queen': ({ since }) =>
    `Celdas reales junto a una reina desde el ${d(since)}: pueden reemplazarla, o enjambrar. Cortarlas todas, o dejar una.`,
  'virgin-may-be-out': () => 'Puede que ya haya nacido una virgen.',
  'may-cast': ({ cells, before }) =>
    `Colonia fuerte, y ${cells} celdas reales: cortar todas menos una o dos antes del ${d(before)}, o saldrá un enjambre secundario con la primera virgen.`,
  moved: ({ on }) => `Se movió el ${d(on)}.`,
  'moved-maybe-near': ({ on }) =>
    `Se movió el ${d(on)}: si fue a menos de ${NEAR}, las pecoreadoras regresan al sitio viejo. ${LEARN_ANEW}`,
  'moved-near': ({ on }) =>
    `Se movió el ${d(on)} a menos de ${NEAR}: las pecoreadoras regresan al sitio viejo y se pierden. ${LEARN_ANEW}`,
  'moved-young-queen': () => 'Una reina joven que ya aprendió el lugar viejo puede no regresar de su vuelo.',
  'mites-seen': () => 'Se vieron ácaros sobre las abejas: hacer un lavado, para saber cuántos hay.',
  'queenless-roar': () => 'Zumban como abejas sin reina: buscar huevos y celdas cuando se quite la tapa.',
  chalkbrood: () =>
    'Cría de cal: mantener la colmena seca, fuerte y alimentada; una reina nueva muchas veces la cura.',
  'removed-in-heat': ({ outdoorC }) =>
    `Se rescató con calor, a ${outdoorC} °C: sombra y agua de inmediato, piquera abierta, y mirar en el fondo si hay abejas muertas y panal derrumbado.`,
  'many-dead': () =>
    'Murieron muchas abejas en el camino: limpiar las muertas del fondo y de la piquera, y contar pronto los cuadros con abejas.',
  'brood-dead': () =>
    'La cría que vino está muerta: sacar ese panal antes de que lo encuentren los escarabajos y la polilla.',
  sprayed: () =>
    'Se roció con veneno: no guardar, no dar de comer ni pasar a otra colmena nada de su panal ni de su miel. De esa cría no hay que esperar celdas; sacar el panal, y anotarlo.',
}
