/** The yard as a list, in Spanish. */
import type { yard as English } from '../en/yard.ts'

export const yard: typeof English = {
  title: 'Apiario',
  heading: 'El apiario',
  noColony: 'Todavía no hay colonias',
  eachColony: 'Cada colonia que se anota tiene aquí una línea, con sus días, su cría y su próxima revisión.',
  logFirst: 'Anotar el primer ingreso',
  noneFits: 'Ninguna colonia coincide. Ampliar la selección de arriba.',
  find: 'Etiqueta o palabra',
  choose: 'Elegir y ordenar',
  which: 'Cuáles',
  yard: 'Apiario',
  allYards: 'todos los apiarios',
  standing: 'Estado',
  any: 'cualquiera',
  order: 'Orden',
  sorts: { walk: 'como se camina', next: 'lo más urgente', day: 'días aquí', tag: 'etiqueta' },
  shows: { in: 'en el apiario', left: 'dejaron el apiario', all: 'todas' },
  day: (n) => `día ${n}`,
  more: 'Más colonias',
  before: 'Anteriores',
  further: 'Siguientes',
  page: (n, of) => `página ${n} de ${of}`,
}
