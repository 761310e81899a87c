/** Checks and windows in people's own calendars, and the page of their addresses, in Spanish. */
import type { calendar as English } from '../en/calendar.ts'

export const calendar: typeof English = {
  title: 'Calendario',
  heading: 'En su calendario',
  about:
    'El calendario de su teléfono puede mostrar las próximas revisiones, los tiempos de calma y los plazos, y los mantiene al día solo: lo respondido desaparece, lo que cambia de día se mueve. Para eso hace falta una dirección que solo tiene usted; sirve hasta que se anule, con la sesión abierta o no.',
  takenBack: 'Anulada: esa dirección ya no abre nada.',
  make: 'Hacer una dirección',
  whichYard: 'Cuál apiario',
  whatStands: 'Qué lleva',
  shows: {
    'yard-day': ['Una entrada por apiario y día', 'en su texto, las colmenas y lo que piden'],
    'best-day': ['Cada colmena, desde el mejor día', 'hasta el último en que todavía sirve'],
    window: ['Cada colmena, todo su plazo', 'del primer día al último'],
  },
  sayWhat: 'Decir qué lleva el calendario.',
  noYard: 'No hay un apiario así con colonias.',
  tooMany: (n) => `Ya hay ${n} direcciones: anular primero una.`,
  made: {
    title: 'Su dirección nueva',
    label: 'Dirección del calendario',
    open: 'Abrir en el calendario de este teléfono',
    copy: 'Copiar la dirección',
    how: 'O copiarla en el calendario, donde dice suscribirse a un calendario por su dirección. Se muestra solo esta vez. Quien la tiene puede leer las etiquetas, los apiarios y lo que toca: no pasarla a nadie, y anularla aquí si llegó a otras manos.',
    notHttps:
      'Esta dirección no es https: muchos calendarios no la aceptan, y otros en la misma red podrían leerla.',
  },
  yours: 'Sus direcciones',
  line: (made, asked) =>
    `hecha: ${made}; ${asked === null ? 'ningún calendario la ha pedido todavía' : `un calendario la pidió por última vez: ${asked}`}`,
  takeBack: 'Anular',
  takeBackOf: (yard) => ` la dirección de ${yard}`,
  late: (what) => `atrasado: ${what}`,
  expected: (what) => `previsto: ${what}`,
  window: (days, best) => `Plazo: ${days}, mejor ${best}.`,
  expectedOn: (days, best) => `Previsto: ${days}, mejor ${best}.`,
  theBox: (waits) => `La colmena ${waits}.`,
  quiet: {
    title: 'dejar la tapa puesta',
    text: 'Una reina joven puede estar saliendo de su celda, madurando o volando para fecundarse. Mirar solo por fuera.',
  },
  cells: {
    title: 'último día en que su cría joven puede volverse reina',
    text: 'Si para entonces no tiene huevos ni celdas reales, solo queda un cuadro con huevos o una reina comprada.',
  },
  layingWorkers: {
    title: 'riesgo de obreras ponedoras',
    text: 'No está probado que haya reina, y la última cría joven tiene tres o cuatro semanas.',
  },
  broodless: {
    title: 'sin cría operculada (para tratar los ácaros)',
    text: 'Un tratamiento alcanza entonces a los ácaros, que no pueden esconderse en las celdas. Respirador, guantes y la etiqueta del producto registrado en el lugar: la etiqueta es la ley.',
  },
  yardDay: (yard, boxes, late) =>
    `${yard}: ${boxes}${late === 0 ? '' : `, ${late} ${late === 1 ? 'atrasada' : 'atrasadas'}`}`,
  until: (what, day) => `${what}, hasta el ${day}`,
  waits: 'puede esperar hasta este día',
}
