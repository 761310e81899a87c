/** Checks, actions, phases and a colony's line, in Spanish. */
import type { trade as English } from '../en/trade.ts'
import { sources } from './sources.ts'

export const trade: typeof English = {
  rules: {
    'outside-look': {
      name: 'Primera mirada por fuera',
      question: '¿Vuelan? ¿Alimento? ¿Abejas muertas? ¿Siguen ahí?',
    },
    'queen-release': {
      name: 'Mirar la jaula de la reina',
      question: '¿Salió la reina de la jaula, y la aceptan?',
    },
    'telling-visit': {
      name: 'Primera revisión de cría',
      question: '¿Huevos? ¿Celdas reales? ¿Ninguno?',
    },
    'egg-frame': {
      name: 'Dar un cuadro con huevos',
      question: 'Dar un cuadro con huevos de una colonia donante.',
    },
    'cells-on-egg-frame': {
      name: 'Mirar el cuadro con huevos',
      question: '¿Hay celdas reales en el cuadro que se dio?',
    },
    'recheck-eggs': {
      name: 'Buscar huevos otra vez',
      question: '¿Hay huevos que no pueden ser de la donante?',
    },
    'new-queen-eggs': { name: 'Buscar los huevos de la reina nueva', question: '¿Ya hay huevos?' },
    'buy-queen': {
      name: 'Introducir una reina fecundada',
      question: '¿No hay virgen ni celdas? Entonces introducir una reina fecundada.',
    },
    'eggs-after-introduction': {
      name: 'Buscar los huevos de la reina introducida',
      question: '¿Está poniendo?',
    },
    'worker-brood': {
      name: 'Buscar cría operculada de obrera',
      question: '¿Opérculos planos de obrera, y no abultados de zángano?',
    },
    'cells-beside': { name: 'Mirar las celdas reales', question: '¿Qué pasó con las celdas reales?' },
    'look-again': { name: 'Revisar otra vez', question: '¿Cuál revisión era la correcta?' },
    'comb-ties': {
      name: 'Quitar las ligas de los panales',
      question: '¿Panales pegados? Quitar las ligas.',
    },
    'mite-wash': { name: 'Lavado para ácaros', question: '¿Cuántos ácaros en 100 abejas?' },
    welfare: { name: 'Mirada general', question: '¿Reservas, pillaje, escarabajos, polilla, fuerza?' },
    'unite-or-boost': { name: 'Unir o reforzar', question: 'Unir la colonia, o añadir cría operculada.' },
    'laying-workers': {
      name: 'Ocuparse de las obreras ponedoras',
      question: 'Unir con una colonia fuerte que tenga reina.',
    },
    'move-out': { name: 'Entregar', question: 'Última revisión de enfermedades, y se va.' },
  },
  sources,
  actions: {
    none: 'Nada que hacer',
    'leave-alone': 'Dejar la tapa puesta',
    'outside-look': 'Mirar por fuera, con la tapa puesta',
    'open-and-look': 'Abrir y revisar',
    'release-queen': 'Atender la jaula de la reina',
    'give-egg-frame': 'Dar un cuadro con huevos',
    'buy-queen': 'Introducir una reina fecundada',
    unite: 'Unir con otra colonia',
    'move-out': 'Entregar la colonia',
    'call-inspector': 'Cerrar y llamar al inspector apícola',
    boost: 'Añadir un cuadro de cría operculada',
    'order-queen': 'Pedir una reina fecundada',
    feed: 'Alimentar',
    wash: 'Lavar abejas para contar ácaros',
    'see-to-signs': 'Ocuparse de lo que se encontró',
    'take-out-queen': 'Buscar la reina y sacarla',
  },
  phases: {
    'awaiting-release': 'Reina todavía en su jaula',
    'awaiting-eggs': 'Reina adentro, se esperan sus huevos',
    'queen-unknown': 'No se sabe todavía si hay reina',
    rearing: 'Criando una reina',
    'awaiting-new-queen': 'Reina nueva madurando y fecundándose',
    laying: 'Huevos propios, sin prueba todavía de cría de obrera',
    queenright: 'Con reina',
    queenless: 'Sin reina',
    'laying-workers': 'Obreras ponedoras',
    closed: 'Dejó el apiario',
  },
  statuses: {
    waiting: 'puede esperar',
    open: 'se puede hacer',
    due: 'toca',
    overdue: 'atrasado',
    answered: 'respondido',
    void: 'ya no se pide',
  },
  signs: {
    robbing: 'Parar el pillaje',
    beetles: 'Ocuparse de los escarabajos',
    moths: 'Ocuparse de la polilla de la cera',
    'deformed-wings': 'Alas deformes: lavado para ácaros',
  },
  left: {
    'moved-out': 'Entregada',
    united: 'Unida con otra colonia',
    died: 'Murió',
    absconded: 'Se fue',
    other: 'Dejó el apiario',
    unknown: 'Ya no está, no se sabe cómo',
  },
  found: {
    'no-bees': 'Encontrada sin abejas',
    dead: 'Encontrada muerta',
    gone: 'Encontrada abandonada',
  },
  everyBroodFrame: 'Revisar cada cuadro de cría',
  foundOn: (how, day, by) => `${how} el ${day}, firmado por ${by}`,
  toConfirm: (how) => `${how}, por confirmar`,
  nothingPlanned: 'nada previsto',
  canWait: (day) => `puede esperar hasta el ${day}`,
  itCanWait: (day) => `puede esperar hasta el ${day}`,
  lidOnInQuiet: 'dejar la tapa puesta',
}
