/** What keeps a colony here, in Spanish, as clauses. */
import type { UNMET as English } from '../../../recovery/index.ts'
import { d, deedWords } from './days.ts'

const KEEPS = { robbing: 'pillaje', moths: 'polilla de la cera', 'deformed-wings': 'alas deformes' } as const

export const UNMET: typeof English = {
  hold: ({ days }) => `tiempo de espera: ${days} días desde el ingreso`,
  'worker-brood': () =>
    'cría de obrera que prueba a la reina: opérculos planos de obrera que solo ella puede haber puesto',
  'strength-uncounted': () => 'fuerza: los cuadros con abejas no se han contado desde el ingreso',
  'strength-low': ({ minimum, last }) =>
    `fuerza de al menos ${minimum} cuadros con abejas (última cuenta: ${last})`,
  'mites-unwashed': () => 'ácaros: todavía no hay ningún lavado',
  'mites-old': ({ days }) => `ácaros: el último lavado tiene más de ${days} días`,
  'mites-over': ({ most, per100 }) =>
    `ácaros por debajo del límite de ${most} por cada 100 abejas (último lavado: ${per100.toFixed(1)}): tratar según la etiqueta, y hacer otro lavado`,
  'disease-look-none': () =>
    'revisión de enfermedades: todavía ninguna (abrir la colmena y anotar las señales que se buscaron)',
  'disease-suspected': () =>
    'revisión de enfermedades sin sospecha: se sospecha una enfermedad de la cría; decide el inspector',
  'disease-look-old': ({ days }) => `revisión de enfermedades de hace ${days} días como mucho`,
  'stores-unseen': () => 'reservas: todavía no se han mirado',
  'stores-low': () => 'reservas: pocas en la última revisión; alimentar',
  beetles: () =>
    'sin escarabajos que ensucien el panal: se vio el pequeño escarabajo de la colmena en la última revisión',
  'brood-unseen': ({ days }) => `huevos o cría abierta vistos hace ${days} días como mucho`,
  'brood-none': () => 'huevos o cría abierta en la última revisión: no se encontraron',
  paused: ({ since }) => `huevos otra vez: no se encontraron el ${d(since)}`,
  cells: () => 'sin celdas reales abiertas ni operculadas: había en la última revisión',
  sign: ({ sign }) => `sin ${KEEPS[sign]} en la última revisión`,
  temper: () => 'temperamento menor de 4, o una nota firmada que decide dejarla ir como está',
  withdrawal: ({ until }) => `tratamiento: su tiempo de retiro termina el ${d(until)}`,
  'treatment-unwashed': ({ on, days }) =>
    `tratamiento del ${d(on)} terminado, y un lavado ${days} días después o más`,
  sprayed: () => 'panal rociado fuera: lo dice una nota firmada',
  'looks-disagree': ({ since }) => `una revisión que lo aclare: las revisiones del ${d(since)} no concuerdan`,
  caged: () => 'ninguna reina en jaula',
  bound: ({ how }) => `libre de enfermedades de la cría: esta colonia ${deedWords(how)}`,
}
