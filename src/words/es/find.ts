/** Finding anything, in Spanish. */
import type { find as English } from '../en/find.ts'

export const find: typeof English = {
  title: 'Buscar',
  field: (customers) =>
    `Etiqueta, sitio, apiario, o palabras de una nota${customers ? ', un cliente o una calle' : ''}`,
  recent: 'Lo último que se anotó',
  nothing: (typed) => `Nada coincide con “${typed}”.`,
  near: 'Etiquetas que se le parecen',
  boxes: 'Colmenas',
  removals: 'Rescates',
  entries: 'Palabras de anotaciones',
  more: (n) => `${n} más. Escribir otra palabra para que queden menos.`,
  onPhone: (sheets) =>
    `Se buscó en lo que guarda este teléfono: las colmenas del apiario y sus diarios${sheets ? ', y las hojas de rescate de estos días' : ''}.`,
  countBoxes: (n) => `${n} ${n === 1 ? 'colmena' : 'colmenas'}`,
  countRemovals: (n) => `${n} ${n === 1 ? 'rescate' : 'rescates'}`,
  countEntries: (n) => `${n} ${n === 1 ? 'anotación' : 'anotaciones'}`,
  called: (day) => `llamó el ${day}`,
  nameless: 'Sin nombre',
  signed: (kind, by) => `${kind}, firmado por ${by}`,
}
