/** What forms ask of an entry, in Spanish. */
import type { fields as English, FieldText } from '../en/fields.ts'

const note: FieldText = { label: 'Nota' }
const orType = 'otro'

const taken: (typeof English)['taken'] = {
  outdoorC: { label: 'Temperatura afuera' },
  method: { label: 'Cómo se sacaron las abejas' },
  queen: { label: 'La reina' },
}

const along: (typeof English)['along'] = {
  'brood.eggs': { label: 'Cuadros con huevos', asks: 'Con huevos', other: orType },
  'brood.open': { label: 'Cuadros con cría abierta', asks: 'Con cría abierta', other: orType },
  'brood.capped': { label: 'Cuadros con cría operculada', asks: 'Con cría operculada', other: orType },
  broodCare: { label: 'Cómo viajó la cría' },
  queenCells: { label: 'Celdas reales en el rescate' },
  'bees.frames': { label: 'Cuadros cubiertos de abejas', other: orType },
  'bees.kg': { label: 'Peso de las abejas', asks: 'o su peso' },
  deadBeesKg: { label: 'Abejas muertas en la colmena' },
  tiedComb: { label: 'Panal sujeto con ligas' },
  temper: { label: 'Temperamento' },
}

export const fields: typeof English = {
  common: { on: { label: 'Día' }, at: { label: 'Hora' } },
  taken,
  along,
  days: {
    intake: 'Día en que llegó',
    move: 'Día del traslado',
    'queen-cage': 'Día',
    inspection: 'Día de la visita',
    'disease-cleared': 'Día en que se descartó',
    'mite-wash': 'Día',
    'ties-removed': 'Día',
    given: 'Día',
    note: 'Día',
    'missed-visit': 'Día en que no se llegó',
    outcome: 'Día en que se fue',
    withdrawal: 'Día',
  },
  intake: {
    'removal.type': { label: 'Tipo de rescate', other: orType },
    'removal.removedOn': {
      label: 'Día del rescate',
      asks: 'Día del rescate, si fue antes',
      hint: 'El último día de la reina en este panal. Todo se cuenta desde él.',
    },
    'removal.hoursOpenToBoxed': {
      label: 'Horas desde abrir hasta tenerlas en la colmena',
      asks: 'Desde abrir hasta tenerlas en la colmena',
      unit: 'horas',
    },
    'removal.sprayed': {
      label: 'Rociada',
      asks: '¿Se roció la colonia con veneno?',
      hint: 'Rociada: no guardar panal ni miel, ni dárselos a las abejas.',
    },
    'removal.site': {
      label: 'De dónde',
      asks: 'Dirección o cliente',
      hint: 'Privado: no sale en listas ni exportaciones.',
    },
    queenVirgin: { label: 'Si ya ponía', asks: 'Si se vio: ¿ya ponía?' },
    queenMarked: { label: 'Marcada', asks: '¿Marcada con color?' },
    queenClipped: { label: 'Ala cortada', asks: '¿Sus alas?' },
    broodState: { label: 'La cría que vino' },
    note: { ...note, hint: 'La leen todos en el apiario: nada sobre el cliente.' },
  },
  inspection: {
    opened: { label: 'Tapa', asks: 'La tapa' },
    eggs: { label: 'Huevos' },
    open: { label: 'Cría abierta' },
    capped: { label: 'Cría operculada' },
    onFreshComb: { label: 'Dónde está la cría', asks: '¿Dónde está esa cría?' },
    queen: taken.queen,
    cells: { label: 'Celdas reales' },
    cellCount: { label: 'Cuántas celdas' },
    searched: { label: 'Qué tan a fondo', asks: '¿Qué tan a fondo se miró?' },
    framesOfBees: along['bees.frames'],
    framesOfBrood: { label: 'Cuadros con cría', other: orType },
    lost: { label: 'No vive nada en ella' },
    beesInIt: 'Hay abejas',
    stores: { label: 'Reservas' },
    signs: { label: 'Señales de problemas', hint: 'Tocar todo lo que se vio.' },
  },
  given: {
    what: { label: 'Qué se dio' },
    donor: { label: 'De la colonia' },
    frames: { label: 'Cuántos cuadros' },
    caged: {
      label: 'Si es una reina: ¿en jaula?',
      hint: 'Nunca introducir una reina comprada mientras haya una virgen o una celda real en la colmena: mirar primero.',
    },
    noQueen: 'No es reina',
    isCaged: 'Enjaulada',
    notCaged: 'Sin jaula',
    litres: { label: 'Jarabe' },
    syrup: { label: 'Azúcar y agua, por peso' },
    kg: { label: 'Alimento por peso', hint: 'Azúcar, fondant, torta.' },
    product: {
      label: 'Producto',
      hint: 'Tratamiento para ácaros: respirador y guantes; la etiqueta es la ley. Otro lavado de 10 a 14 días después.',
    },
    batch: { label: 'Lote', asks: 'Lote, en el envase' },
    withdrawalDays: {
      label: 'Retiro, días',
      asks: 'Retiro',
      hint: 'Días en los que no se cosecha nada para comer, según la etiqueta.',
      unit: 'días',
    },
    cost: { label: 'Costo' },
  },
  cage: { label: 'La jaula de la reina' },
  wash: { bees: { label: 'Abejas en la muestra' }, mites: { label: 'Ácaros contados' } },
  cleared: {
    clearedBy: { label: 'Quién descartó la enfermedad' },
    reference: { label: 'Número de informe o de muestra', hint: 'Para poder mostrarlo después.' },
    note: { ...note, hint: 'Qué se miró, y cómo.' },
  },
  distanceKm: { label: 'Qué tan lejos, en línea recta' },
  outcome: {
    what: { label: 'Qué fue de ella' },
    into: { label: 'Unida a', hint: 'Etiqueta de la colonia que la recibió.' },
    cause: { label: 'Causa', asks: 'Si se perdió: ¿de qué, según se cree?', other: orType },
    destination: { label: 'A dónde', hint: 'Apiario, o quién se la llevó.' },
  },
  text: note,
  asks: { label: 'Para quién', asks: '¿Quién debe verla?' },
  settles: { label: 'Decide', asks: 'Lo que decide' },
  missed: {
    reason: { label: 'Por qué no' },
    again: { label: 'Intentar otra vez el', hint: 'Vacío: el día siguiente.' },
  },
  withdrawal: {
    label: 'Motivo',
    hint: 'La anotación queda en el diario, tachada, con su nombre y este motivo.',
    other: 'o escribir por qué',
  },
  note,
  photos: { label: 'Fotos' },
  yard: { label: 'Apiario' },
  stand: { label: 'Sitio' },
}
