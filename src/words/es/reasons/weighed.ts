/** What is said by whoever weighs the open ways, in Spanish. */
import { type WEIGHED as English, type UnmetReason, type Way, wordsOf } from '../../../recovery/index.ts'
import { d } from './days.ts'
import { UNMET } from './unmet.ts'

function when({ act, days }: Way): string {
  const time =
    days === 1 ? 'un día' : days === 7 ? 'una semana' : days === 14 ? 'dos semanas' : `${days} días`
  switch (act) {
    case 'look':
      return days === 0 ? 'si se revisa ahora' : `si se espera ${time}`
    case 'give':
      return days === 0
        ? 'si se da ahora un cuadro con huevos'
        : `si se da un cuadro con huevos dentro de ${time}`
    case 'boost':
      return 'si se da un cuadro de cría operculada'
    case 'queen':
      return 'si se introduce una reina comprada'
    default:
      return 'si se une'
  }
}

const missing = (unmet: readonly UnmetReason[]): string => unmet.map((u) => wordsOf(UNMET, u)).join('; ')

export const WEIGHED: typeof English = {
  'of-100': ({ way, other }) =>
    `De 100 colonias como esta, ${way.keep} conservan reina ${when(way)}${other === null ? '' : `, ${other.keep} ${when(other)}`}.`,
  'nobody-lays': () =>
    'Parece que aquí nadie pone, y no queda nada de qué criar una reina: un cuadro con huevos les permite criar una, y su cría frena a las obreras ponedoras.',
  'cells-in-doubt': () =>
    'Parece que aquí nadie pone, y las celdas reales que se vieron pueden no dar nada: un cuadro con huevos les permite empezar de nuevo, y su cría frena a las obreras ponedoras.',
  'not-proven': () =>
    'No está probado que aquí viva una reina: si falta, hacen celdas en un cuadro con huevos en cinco días; además frena a las obreras ponedoras, y pueden empezar de nuevo.',
  'young-queen-not-proven': () =>
    'Para entonces debería haber nacido una reina joven, que puede perderse en sus vuelos: si se pierde, hacen celdas en un cuadro con huevos en cinco días; además frena a las obreras ponedoras, y pueden empezar de nuevo.',
  'cut-cells-first': () =>
    'Cortar todas las celdas reales antes de introducirla, o la primera virgen la mata.',
  'bought-lays-soon': () =>
    'Una reina fecundada pone a los pocos días de soltarla; una criada aquí tarda cuatro semanas, si se fecunda. Buscar primero una virgen y celdas.',
  'no-queen-to-save': () =>
    'Aquí no hay reina que salvar, y pocas abejas para criar una: su trabajo vale más en una colonia con reina. Revisar primero por enfermedades de la cría.',
  'few-bees-to-save': () =>
    'Pocas abejas, y una reina que salvar: un cuadro de cría operculada da dos cuadros con abejas en dos semanas.',
  'being-raised': ({ on }) =>
    `Una reina se está criando o fecundando: sus huevos no se esperan antes de que una revisión el ${d(on)} pueda decirlo.`,
  'queen-likely': ({ by }) =>
    `Es probable que aquí haya una reina: para el ${d(by)} lo dirán sus huevos o su cría, que ya no se pueden confundir con los de otra.`,
  'look-tells': ({ on }) =>
    `Una revisión el ${d(on)} es la que más dice: huevos, celdas reales o ninguno deciden lo que sigue.`,
  'look-now-tells': () =>
    'Una revisión ahora es la que más dice: huevos, celdas reales o ninguno deciden lo que sigue.',
  'order-now': () =>
    'Es probable que aquí haga falta una reina fecundada, y no hay ninguna a mano: pedir una ahora.',
  'order-one-today': () => 'No hay ninguna a mano: pedir una hoy.',
  'takes-days': ({ days }) => `Tarda ${days} días en llegar.`,
  'leave-then': ({ until, task, on }) => {
    const act = task === 'give' ? 'dar un cuadro con huevos' : 'revisar'
    return `Dejarla en paz hasta el ${d(until)}${on === null ? `, y entonces ${act}` : `; ${act} el ${d(on)}`}.`
  },
  'boost-layer': () =>
    'Una reina en postura con pocas abejas: un cuadro de cría operculada con sus abejas mantiene caliente su cría hasta que nazca la propia. No unirla.',
  'leave-layer': ({ until }) =>
    `Aquí hay una reina en postura: dejarla en paz hasta el ${d(until)}, cuando una sola revisión puede mostrar cría operculada de obrera, contar las abejas y resolver lo demás que falta.`,
  'leave-to-grow': ({ until }) =>
    `Aquí hay una reina en postura, y la colonia debe crecer: dejarla en paz hasta el ${d(until)}.`,
  'lets-go-later': () => 'La revisión que la deja ir viene después.',
  'cells-too-few-bees': ({ frames }) =>
    `Celdas reales, y solo ${frames} cuadros con abejas: muy pocos para mantenerlas calientes y para que una virgen se fecunde. Añadir ahora un cuadro de cría operculada con sus abejas, antes del tiempo de calma; o cortar las celdas y unir la colonia.`,
  'one-look-settles': ({ unmet }) =>
    `Lo que falta antes de que pueda irse se puede ver en una sola revisión: ${missing(unmet)}.`,
  'hold-over-missing': ({ unmet }) =>
    `El tiempo de espera terminó y está probada una reina fecundada. Lo que falta antes de que pueda irse: ${missing(unmet)}.`,
  'warm-day-only': () => 'Es la época fría: solo en un día sin viento de 16 °C o más, y por poco tiempo.',
  'record-has-queen': ({ share, before }) =>
    `De 100 colonias con este historial, ${share} tienen reina: antes de ${before === 'it-goes' ? 'que se vaya' : 'darla por perdida o comprar otra'}, buscar huevos una vez más, cuadro por cuadro a contraluz.`,
  'not-before': ({ on }) => `No antes del ${d(on)}.`,
}
