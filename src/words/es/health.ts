/** One colony’s health, in Spanish. */
import type { health as English } from '../en/health.ts'

const treat = 'tratar (la etiqueta es la ley), y luego hacer otro lavado'
const washOrTreat = 'hacer otro lavado, o tratar (la etiqueta es la ley)'

export const health: typeof English = {
  title: (tag) => `Sanidad de ${tag}`,
  boundToIt: 'Ligadas a ella:',
  recordCleared: 'Anotar quién descartó la enfermedad',
  recordLook: 'Anotar una revisión',
  mites: {
    title: 'Ácaros',
    noWash:
      'Todavía no hay ningún lavado. Media taza de abejas de un cuadro de cría, unas 300, sin la reina.',
    stale: (days) => ` Tiene más de ${days} días y ya no cuenta.`,
    every: 'Cada lavado',
    day: 'Día',
    onBees: 'Ácaros en abejas',
    per100: 'Por cada 100',
    threshold: 'Límite',
    of: (mites, bees) => `${mites} en ${bees}`,
    record: 'Anotar un lavado',
    rate: (rate, lower, upper) => `${rate} por cada 100 abejas (de ${lower} a ${upper})`,
    few: (bees) => ` ${bees} abejas son pocas: media taza, unas 300, dice más.`,
    over: (threshold) =>
      `Por encima del límite de ${threshold} por cada 100, aun en el valor más bajo posible: ${treat}.`,
    under: (threshold) =>
      `Por debajo del límite de ${threshold} por cada 100, aun en el valor más alto posible.`,
    countOver: (threshold, at) =>
      `${at ? 'En e' : 'Por encima de'}l límite de ${threshold} por cada 100 según la cuenta: ${washOrTreat}. Con esta muestra puede ser casualidad.`,
    countUnder: (threshold) =>
      `Por debajo del límite de ${threshold} por cada 100 según la cuenta, pero la muestra es demasiado pequeña para estar seguro: hacer otro lavado.`,
    short: {
      over: `por encima del límite: ${treat}`,
      under: 'por debajo del límite',
      countOver: `por encima del límite según la cuenta: ${washOrTreat}`,
      countUnder: 'por debajo del límite según la cuenta, no es seguro: hacer otro lavado',
    },
    since: (day, days) => `desde el ${day}, ${days} ${days === 1 ? 'día' : 'días'} antes`,
    change: (change, lower, upper) => `${change} por cada 100 (de ${lower} a ${upper})`,
    rising: (since, change) => `Más ácaros ${since}: ${change}.`,
    doubles: (days) => ` A este paso se duplican más o menos cada ${days} días.`,
    falling: (since, change) => `Menos ácaros ${since}: ${change}.`,
    unclear: (since, change) => `Sin cambio claro ${since}: ${change} puede ser casualidad.`,
    chart: (washes) => `Ácaros por cada 100 abejas. ${washes}.`,
    thresholdWord: 'límite',
    caption:
      'Ácaros por cada 100 abejas; la barra es lo que una muestra de ese tamaño no puede distinguir (límites del 95 % de Wilson). Los ácaros no se reparten parejo entre las abejas, así que en verdad la barra es más larga que corta.',
  },
  window: {
    title: 'Días para tratar contra ácaros',
    none: 'No se ve ningún tiempo sin cría operculada: los ácaros en las celdas quedan fuera del alcance de lo que solo actúa en las abejas.',
    allOnBees: ': no hay cría operculada, así que cada ácaro está en una abeja.',
    over: ' Ya pasó.',
    reckoned: ' Calculado por la cría vista y esperada: una revisión puede cambiarlo.',
    quietToo: (day) =>
      `La tapa se queda puesta hasta el ${day} por la reina joven: usar los días que siguen, o una manera que no abra nada.`,
    treated: (what) => `Tratada: ${what}.`,
    record: 'Anotar un tratamiento',
    note: 'La etiqueta del producto registrado en el lugar es la ley: dice cuánto, a qué temperatura, qué puede quedar puesto en la colmena, y si se puede cosechar miel. Respirador hecho para ese vapor, guantes resistentes a ácidos, gafas, manga larga; nadie donde el viento lleva el vapor. Otro lavado de 10 a 14 días después.',
  },
  disease: {
    title: 'Enfermedades de la cría',
    nobodyLooked: 'Todavía nadie miró la cría y anotó las señales.',
    lastLooked: (when) => `Última revisión con la tapa quitada: ${when}.`,
    guide: 'Enfermedades de la cría: cuándo parar y llamar al inspector',
    stopAt: 'Parar ante la primera de estas señales',
    andClose: ' y cerrar la colmena:',
    signs: [
      'opérculos hundidos, oscuros, grasosos o con agujeros irregulares;',
      'una larva muerta que hace un hilo café al sacarla con un cerillo;',
      'una costra oscura pegada al fondo de una celda;',
      'larvas torcidas, amarillas o cafés, “derretidas”, antes de opercularse;',
      'mal olor o olor agrio de la cría.',
    ],
    after: 'Después',
    steps: [
      'Cerrarla, con la piquera estrecha: las pilladoras llevan la enfermedad a la siguiente colmena.',
      'No mover nada, no unir nada, no dar nada de ella, ni siquiera panal vacío. Este libro bloquea las tres cosas.',
      'Raspar y flamear la cuña, lavarse las manos, cambiar de guantes. Terminar aquí la ronda, o seguir con herramientas limpias.',
    ],
    call: 'Llamar al inspector apícola',
    mustCall: '. En casi todas partes es obligatorio, y en pocos días.',
    record: 'Anotar la visita con “Sospecha de enfermedad de la cría”.',
    leaveToThem: 'Dejarles a ellos',
    whatToLeave:
      ' si se toma una muestra, se quema o se trata. Los antibióticos para esto son ilegales en muchas partes, y donde no lo son la esconden.',
    notCleared: 'Lo que no la descarta',
    whatNot:
      ': que no haga hilo en el cerillo (las celdas recientes y las secas no lo hacen), o una revisión limpia posterior. Más o menos una de cada cinco colonias que llevan loque americana la muestra en un mes, la mitad en dos (afb.org.nz). Donde se sospechó, seguir revisando medio año.',
    somethingElse: 'Probablemente otra cosa',
    whatElse:
      ': momias duras, blancas o grises (cría de cal), opérculos abultados sobre zánganos, unas pocas larvas enfriadas en la orilla después de una noche fría. Anotarlo de todos modos.',
  },
  pests: {
    title: 'Escarabajos, polilla, pillaje',
    names: {
      beetles: 'Pequeño escarabajo de la colmena',
      moths: 'Polilla de la cera',
      robbing: 'Pillaje',
    },
    longAgo: ' Hace tiempo de eso: mirar otra vez.',
    notLooked: 'Todavía nadie anotó las señales de problemas.',
    clear: (day) => `Se buscó y nunca se vio; la última vez el ${day}.`,
    gone: (times, seen, looked) =>
      `Se vio ${times === 1 ? 'una vez' : `${times} veces`}, la última el ${seen}; en la última revisión, del ${looked}, no.`,
    seen: (day, late, by) =>
      `Se vio el ${day}. Mirar otra vez ${late ? 'ahora: tocaba' : 'a más tardar'} ${by}.`,
  },
  feed: {
    title: 'Alimento',
    stores: 'Reservas:',
    levels: { low: 'pocas', enough: 'bastan', heavy: 'muchas' },
    uncounted:
      'Nadie contó las abejas, así que no se puede calcular cuánto necesitan. Contar los cuadros con abejas en la próxima visita.',
    needBefore: 'Si no entra nada, necesitan ',
    need: (sugar, one, two) =>
      `cerca de ${sugar} de azúcar por semana: ${one} de jarabe 1:1, o ${two} de 2:1`,
    comb: (sugar) =>
      `Cada cuadro hondo de panal que todavía tienen que construir cuesta cerca de ${sugar} más.`,
    noBrood: 'sin cría (nadie la contó)',
    ofBrood: (frames) => `${frames} de cría`,
    basis: (frames, brood, day, stale) =>
      `Calculado con ${frames} con abejas, ${brood}, contados el ${day}${stale ? ', hace mucho: contar otra vez' : ''}.`,
    estimate:
      'Una estimación: 7 mg de alimento al día por abeja adulta, 18 mg por celda de cría abierta (Khoury, Barron y Myerscough 2013); la mitad o el doble no sería sorpresa.',
    lately: (days, sugar, unmeasured) =>
      `Dado en los últimos ${days} días: ${sugar === null ? 'nada de azúcar' : `${sugar} de azúcar`}${unmeasured === 0 ? '' : `, y ${unmeasured} sin cantidad anotada`}.`,
    noAmount: 'sin cantidad anotada',
    and: ' y ',
    pollen: 'polen',
    syrup: 'jarabe',
    how: 'Dentro de la colmena, sin derramar, con la piquera pequeña, hacia el anochecer. Nunca miel de origen desconocido: lleva loque.',
    sprayed: ' Esta colonia fue rociada: no darle de su propia miel.',
    record: 'Anotar alimento',
    what: 'Qué',
    syrupOrSugar: 'Jarabe o azúcar',
    pollenOrPatty: 'Polen o torta',
    gallonUs: 'Un galón son 4 cuartos.',
    gallonLitres: 'Un cuarto de galón son 0.95, un galón 3.8.',
    product: 'Producto (puede quedar vacío)',
  },
  yard: {
    title: 'Sanidad',
    noColony: 'No hay ninguna colonia en el apiario.',
    nothing: 'Nada urgente en ninguna colmena',
    call: ': cerrar, y llamar al inspector',
    held: (n) => `${n} ${n === 1 ? 'retenida' : 'retenidas'} por sospecha de enfermedad de la cría`,
    seen: (n) => `${n} con escarabajos, polilla, pillaje o pocas reservas`,
    over: (n) => `${n} con ácaros por encima del límite, o cerca`,
    unwashed: (n) => `${n} sin lavado que cuente`,
    withSigns: (n) => `${n} con señales o pocas reservas`,
    withMites: (n) => `${n} con ácaros`,
    toWash: 'Falta el lavado',
    toWashNote: 'Todavía sin lavado, o con uno demasiado viejo para contar.',
    well: 'Nada urgente',
    bound: 'Ligadas a una colonia sospechosa',
    isHeld: 'Retenida',
    lookAt: (days) => `Revisar cada cuadro de cría ${days}.`,
    gone: 'Salieron después, y están ligadas a una colonia sospechosa',
    tell: 'Avisar a quien la tiene ahora, y al inspector.',
    windows: 'Días para tratar contra ácaros',
    openOf: (n, open) => (open === 0 ? String(n) : `${n}, ${open} ahora`),
    allOnBees: 'Sin cría operculada, cada ácaro está en una abeja. La etiqueta es la ley.',
    openNow: ', ahora',
    suspected: (day) => `: sospecha de enfermedad de la cría el ${day}, no descartada`,
    storesLow: 'Pocas reservas',
    mites: (rate) => `Ácaros: ${rate}, `,
    washedLongAgo: (day) => `; lavado el ${day}, hace demasiado`,
    seenOn: (day) => `, se vio el ${day}`,
    lookNow: ', mirar otra vez ahora',
    lookBy: (day) => `, mirar otra vez a más tardar el ${day}`,
  },
  forms: {
    washTitle: (tag) => `Lavado para ácaros de ${tag}`,
    saveWash: 'Guardar el lavado',
    feedTitle: (tag) => `Alimento para ${tag}`,
    saveFeed: 'Guardar el alimento',
    treatTitle: (tag) => `Tratamiento contra ácaros de ${tag}`,
    saveTreatment: 'Guardar el tratamiento',
    productHint: 'Como lo llama su etiqueta, con el número de registro donde la ley lo pide.',
    noteHint: 'Cuánto, como dice la etiqueta; el tiempo; con o sin miel puesta.',
  },
}
