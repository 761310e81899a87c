/** The round on paper, typed in afterwards, and the labels, in Spanish. */
import type { paper as English } from '../en/paper.ts'

export const paper: typeof English = {
  onPaper: 'En papel',
  ways: {
    '/paper': 'Imprimir una hoja de ronda',
    '/sheet-entry': 'Pasar una hoja al libro',
    '/labels': 'Etiquetas',
  },
  size: 'Papel',
  sizes: { a4: 'A4', letter: 'Carta' },
  show: 'Mostrar',
  print: 'Imprimir',
  boxes: 'Colmenas',
  onTheRound: 'de la ronda',
  all: 'todas',
  asPrinted: 'Como se imprime',
  labels: {
    tag: 'Etiqueta',
    at: 'Hora',
    opened: 'Tapa',
    eggs: 'Huevos',
    open: 'Cría abierta',
    capped: 'Cría operc.',
    onFreshComb: 'Esa cría',
    cells: 'Celdas reales',
    cellCount: 'Cuántas',
    queen: 'Reina',
    searched: 'Se miró',
    framesOfBees: 'Cuadros con abejas',
    framesOfBrood: 'Cuadros con cría',
    lost: 'Hallada',
    stores: 'Reservas',
    signs: 'Señales',
    temper: 'Temperamento',
    'cage.found': 'Jaula de la reina',
    'given1.what': 'Se dio',
    'given1.frames': 'Cuadros',
    'given1.donor': 'De',
    'given1.caged': 'Una reina',
    'given1.litres': 'Jarabe',
    'ties.done': 'Ligas',
    'wash.bees': 'Lavado: abejas',
    'wash.mites': 'Ácaros',
    'missed.reason': 'No se llegó',
    note: 'Nota',
  },
  caged: 'En jaula',
  notCaged: 'Sin jaula',
  short: {
    'signs none': 'se miró: ninguna',
    'torn-down': 'rotas',
    'cells capped': 'operc.',
    single: '1 por celda',
    'capped worker': 'obrera',
    'capped drone-in-worker': 'zángano',
    other: 'otra',
    'brood-disease-suspected': '¿enfermedad de la cría?',
    'queenless-roar': 'zumbido sin reina',
    'in-haste': 'un vistazo',
    thoroughly: 'cada cuadro',
    released: 'salió',
    'still-caged': 'sigue dentro',
    cold: 'frío',
    wind: 'viento',
    heat: 'calor',
    'not-found': 'no se halló',
  },
  sheet: {
    title: 'Hoja de ronda',
    heading: 'Hoja de ronda en papel',
    day: 'Día',
    empty: (yard, more) =>
      `Ninguna colmena pide nada${more ? ' más' : ''} ese día${yard === null ? '' : ` en ${yard}`}: la hoja quedaría vacía.`,
    pages: (n, size) =>
      `${n === 1 ? '1 página' : `${n} páginas`}, tamaño ${size}. Se imprime desde el navegador. Después toda la hoja se pasa al libro en una sola página: `,
    typeIn: 'pasar esta hoja al libro',
    walkedBy: 'la hizo',
    page: (n, of) => `página ${n} de ${of}`,
    ofStay: (n) => `día ${n}`,
    seenToday: 'vista hoy',
    time: 'hora',
    lidOn: ', tapa puesta',
    late: (window) => `atrasado ${window}`,
    also: (names) => ` También: ${names}.`,
    mind: (caution) => ` Cuidado: ${caution}`,
    why: 'Por qué',
  },
  entry: {
    title: 'Pasar una hoja al libro',
    heading: 'Pasar una hoja de ronda al libro',
    day: 'Día de la ronda',
    walkedBy: 'Quién la hizo',
    save: 'Guardar la hoja',
    leftEmpty: 'Las colmenas que quedan vacías no se tocan.',
    saved: (saved, refused) => {
      const done =
        saved === 0
          ? 'No hay nada nuevo en el libro'
          : saved === 1
            ? '1 colmena está en el libro'
            : `${saved} colmenas están en el libro`
      if (refused === 0) return `${done}.`
      const left = `${refused} todavía no`
      return `${done}; ${left}: mirar qué está mal ahí, corregirlo y guardar otra vez. Lo que está en el libro no se envía dos veces.`
    },
    anotherBox: 'Otra colmena',
    known: (day) => `En el libro para ${day}:`,
    signedBy: (what, by) => `${what}, firmado por ${by}`,
    empty: 'no puede quedar vacía',
    noColony: (tag) => `no es de ninguna colonia de este apiario: “${tag}”`,
    both: (label) => `está marcado, pero también está lleno: ${label}. Dejar uno de los dos`,
    noLid: 'falta: ¿se abrió, o con la tapa puesta?',
  },
  stands: {
    title: 'Etiquetas para las colmenas',
    about:
      'Una para cada colmena: la etiqueta, para leerla de lejos, y un código. Al apuntarle con la cámara de un teléfono se abre la página de la colonia que lleva entonces esa etiqueta.',
    none: 'Ahí no hay colonias.',
    address: 'Dirección de este libro, como la abren los teléfonos',
    badAddress: 'debe ser una dirección como https://yard.example',
    here: (origin) =>
      `${origin} es solo esta máquina: ningún teléfono del apiario puede abrirla. Poner la dirección que usan los teléfonos.`,
    notHttps: (origin) =>
      `Los teléfonos abren ${origin}, pero no guardan la ronda sin señal: para eso hace falta https.`,
  },
}
