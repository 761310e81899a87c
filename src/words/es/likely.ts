/** What is likely of a colony, in Spanish. */
import type { likely as English } from '../en/likely.ts'

const n = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`

/** Before a clause; before an adjective it stands alone. */
const TWICE = 'el doble de'

export const likely: typeof English = {
  title: 'Lo que es probable',
  goWithPlan: 'Las probabilidades acompañan al plan de arriba; nunca deciden en su lugar.',
  restOn: 'En qué se basan las probabilidades (en inglés)',
  andTrust: ', y hasta dónde se puede confiar en ellas.',
  kinds: {
    laying: 'una reina en postura',
    present: 'una reina fecundada que todavía no pone',
    raising: 'una reina que están criando',
    virgin: 'una reina virgen',
    chance: 'sin reina, con cría para hacer una',
    queenless: 'sin reina, y sin cría para hacer una',
    'laying-workers': 'obreras ponedoras o una reina que solo pone zánganos',
  },
  short: {
    laying: 'en postura',
    present: 'fecundada, sin poner',
    raising: 'criando reina',
    virgin: 'virgen',
    chance: 'sin reina, puede criar',
    queenless: 'sin reina',
    'laying-workers': 'obreras ponedoras',
  },
  questions: {
    lays: { yes: 'una reina pone', no: 'ninguna reina pone' },
    here: { yes: 'hay reina', no: 'no hay reina' },
    raising: { yes: 'están criando una reina', no: 'no están criando ninguna' },
    emerged: { yes: 'hay una reina virgen suelta', no: 'no hay reina virgen' },
    workers: {
      yes: 'ponen las obreras, o una reina que solo pone zánganos',
      no: 'no ponen ni las obreras ni una reina que solo pone zánganos',
    },
    gone: { yes: 'ya no hay reina', no: 'hay reina o la están criando' },
  },
  seen: {
    eggs: { none: 'ningún huevo', single: 'huevos de uno en uno', multiple: 'varios huevos por celda' },
    open: { none: 'nada de cría abierta', some: 'cría abierta', plenty: 'mucha cría abierta' },
    capped: {
      none: 'nada de cría operculada',
      worker: 'cría operculada de obrera',
      'drone-in-worker': 'opérculos abultados de zángano en celdas de obrera',
    },
    queen: { seen: 'reina vista', unseen: 'reina no vista' },
    cells: {
      none: 'ninguna celda real',
      cups: 'solo copas',
      open: 'celdas reales abiertas',
      capped: 'celdas reales operculadas',
      emerged: 'una celda real nacida',
      'torn-down': 'celdas reales destruidas',
    },
    roar: { heard: 'el zumbido de colonia sin reina', 'not heard': 'ningún zumbido de colonia sin reina' },
  },
  day: 'Día',
  today: 'hoy',
  chance: {
    under: '< 1 %',
    over: '> 99 %',
    almostCertain: 'casi seguro',
    nextToNone: 'casi nada',
    of: (some, all) => `${some} de ${all}`,
  },
  times: (count, rough) =>
    rough === null
      ? count === 2
        ? TWICE
        : `${count < 2 ? count.toFixed(1) : count} veces`
      : rough === 'over'
        ? `más de ${count} veces`
        : `unas ${count} veces`,
  odds: {
    is: (kind, share) => `${kind}: ${share}.`,
    otherwise: (others) => `Si no, ${others.join(' o ')}.`,
    nothingSeen: 'Todavía no se vio nada por dentro: estas probabilidades se basan solo en el ingreso.',
    speaks: 'Lo que habla a favor',
    all: 'Todo lo que se vio, con su peso',
    onDay: (what, day) => `${what} el día ${day}`,
    nextToNothing: (what) => `${what}: no dice casi nada`,
    likelier: (what, times, holds) =>
      `${what}: ${times === TWICE ? 'el doble de probable' : `${times} más probable`} si ${holds}`,
    chart: (sentence) =>
      `Probabilidades por día, desde el rescate. ${sentence} La tabla de abajo tiene los días.`,
    caption:
      'Junto a cada una, su parte hoy. Los días pasados son como se ven ahora, con todo lo que se vio desde entonces; los que vienen son un pronóstico, si no se hace nada.',
    numbers: 'Las probabilidades en números',
    byDay: 'Probabilidades por día',
    ratesBefore:
      'Todas las historias de la reina que concuerdan con lo que se vio, pesadas con exactitud. Las tasas, sus fuentes y hasta dónde se puede confiar en ellas: ',
    rates: 'en qué se basan las probabilidades (en inglés)',
  },
  telling: {
    title: 'Cuándo dice más una revisión',
    costs:
      'Revisar esta semana puede costar una reina virgen, y eso es más de lo que diría: dejar la tapa puesta.',
    little: 'Revisar esta semana diría poco que no se sepa.',
    most: (day) => `Una revisión el ${day} es la que más dice.`,
    otherLittle: (day, other) => `Una revisión el ${day} es la que más dice; el ${other} diría poco.`,
    hardlyMore: (day, other) =>
      `Una revisión el ${day} es la que más dice, aunque apenas más que el ${other}.`,
    mostBy: (day, times, other) =>
      `Una revisión el ${day} es la que más dice: ${times} lo que diría el ${other}.`,
    acts: (action) => `El plan dice qué hacer: ${action}. Ninguna revisión dice tanto como para esperarla.`,
    quiet: (day) =>
      `Tiempo de calma: la tapa se queda puesta hasta el ${day}, diga lo que diga una revisión.`,
    asksNothing: 'El plan no pregunta nada sobre la reina en los próximos días.',
    lookNow: (look) => `El plan dice que se revise ahora (${look}): no vale la pena esperar a otro día.`,
    cageFirst: (look, days) => `El plan pide ${look} ${days}: eso va primero.`,
    next: (look, days) => `La próxima revisión por la reina está prevista ${days}: ${look}.`,
    leaves: (look, days) => `El plan deja elegir el día: ${days} (${look}).`,
    noBetter: 'Por la reina, ningún día de esos es mejor que otro.',
    chart: (sentence) => `Lo que se espera que diga una revisión en cada día que viene. ${sentence}`,
    numbers: 'Cada día en números',
    table: 'Lo que dice cada día',
    tells: 'Dice',
    risks: 'Arriesga',
    worth: 'Vale',
    bits: 'En bits: un bit reduce a la mitad la duda entre dos cosas igual de probables (Shannon 1948; Lindley 1956); aquí, la duda sobre qué hacer después. Arriesga: lo que puede costar abrir mientras una reina virgen está por volar, un bit si es seguro que lo está (a nuestro juicio). La línea de rayas es lo que dice una revisión; el área, lo que vale.',
  },
  strength: {
    title: 'La fuerza que viene',
    now: (count, low, high) => `Unos ${count} cuadros con abejas hoy (de ${low} a ${high}).`,
    under: (minimum, day) => `Probabilidad de bajar de ${n(minimum, 'cuadro', 'cuadros')} antes del ${day}:`,
    assumed:
      'Nadie anotó cuántas abejas llegaron: se suponen cinco cuadros, más o menos la mitad. Contar los cuadros con abejas en la próxima revisión.',
    dwindles: (day) => `Si todo sigue así, se queda en nada hacia el ${day}.`,
    lowestOn: (day, count) => `Lo más bajo será el ${day}: unos ${count}.`,
    lowestNow: 'Está ahora en lo más bajo.',
    lowestPast: (day, count) => `Lo más bajo ya pasó (${day}, unos ${count}).`,
    chart: (sentence) =>
      `Cuadros con abejas por día: la mediana y la franja en la que caen ocho de cada diez veces. ${sentence}`,
    minimum: (count) => `mínimo ${count}`,
    lowest: (count) => `lo más bajo: ${count}`,
    caption: (counted, given) =>
      `Cuadros con abejas: la línea puede quedar alta tanto como baja; en la franja caen ocho de cada diez veces${counted ? '; los puntos son cuentas de las visitas' : ''}. De rayas: con un cuadro de cría operculada dado el ${given}.`,
    noLift: (day, lowest) =>
      `Dado ${day === null ? 'hoy' : `el ${day}`}, un cuadro de cría operculada no subiría el punto más bajo, de ${lowest} cuadros con abejas.`,
    lifts: (day, p) =>
      `Dado ${day === null ? 'hoy' : `el ${day}`}, un cuadro de cría operculada sube el punto más bajo de ${p.from} a ${p.to} cuadros con abejas; la probabilidad de bajar de ${p.minimum} pasa de ${p.chance} a ${p.chanceThen}.`,
    givenWhen: 'Un cuadro de cría operculada dado',
    inDays: (count) => (count === 0 ? 'hoy' : `en ${count} días`),
    numbers: 'La fuerza en números',
    byDay: 'Cuadros con abejas por día',
    bees: 'Cuadros con abejas',
    eightInTen: 'Ocho de cada diez veces',
    brood: 'Cría puesta aquí, cuadros',
    underN: (count) => `Menos de ${count}`,
    withFrame: 'Con el cuadro',
    range: (low, high) => `${low} a ${high}`,
    sources:
      'Las abejas se cuentan por el día en que nacen y mueren según la estación; la reina pone como dicen las probabilidades; cada abeja puede cuidar unas dos celdas de cría abierta. Supervivencia de la cría: 94, 92 y 98 % por etapa (Fukuda y Sakagami 1968); unas 2,300 abejas por cuadro. Las cuentas de las visitas atraen el pronóstico hacia ellas.',
  },
  moveOut: {
    title: 'La salida',
    wereItKept: 'El plan dice que se una. Si se quedara: ',
    blocked: (why) => `No se puede decir un día de salida: ${why}.`,
    never: 'Si todo sigue así, no llegará a estar lista para salir.',
    on: (day) => `el ${day}`,
    about: (day, from, to) => `hacia el ${day} (ocho de cada diez veces entre el ${from} y el ${to})`,
    ready: (when) => `Puede estar lista para salir ${when}.`,
    readyIf: (when, count) =>
      `Puede estar lista para salir ${when}, si llega a estarlo: ${count} de cada 100.`,
    byDate: 'La probabilidad por fecha',
    readyBy: 'Lista para el',
    chance: 'Probabilidad',
    from: 'De la probabilidad de postura, de la cría operculada de obrera diez días después del primer huevo, de la fuerza que viene y de lo demás que pide el protocolo. Las normas para mover abejas son locales.',
  },
}
