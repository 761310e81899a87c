/** The page Today, in Spanish. */
import type { today as English } from '../en/today.ts'

export const today: typeof English = {
  title: 'Hoy',
  first: 'Primero, antes de la ronda',
  letters: (n) => `${n} ${n === 1 ? 'carta' : 'cartas'} del día 30`,
  withoutGo: (n) => `${n} ${n === 1 ? 'retirada empezó' : 'retiradas empezaron'} sin un «adelante»`,
  setBack: (day, at) =>
    `El libro volvió a una copia anterior, ${day} ${at}. Lo que se apuntó después de esa copia se ha perdido: vuelva a apuntarlo. Todo «adelante» de una retirada hay que decidirlo de nuevo.`,
  nothing: 'Hoy no hay nada que hacer.',
  toSeeTo: (n, late) =>
    `${n} ${n === 1 ? 'colonia' : 'colonias'} por atender${late === 0 ? ', ninguna atrasada.' : `, ${late} ${late === 1 ? 'atrasada' : 'atrasadas'}.`}`,
  walk: 'Hacer la ronda',
  canWait: 'Pueden esperar',
  nothingPlanned: 'nada previsto',
  until: 'hasta',
  lidOnThoughLate: 'tapa puesta, aunque hay algo atrasado',
  firstRun: {
    title: 'Anotar el primer ingreso',
    what: 'Anotar la colmena en el camión: de dónde vinieron las abejas, si la reina está enjaulada, suelta o no se vio, y qué cría vino. Toma un minuto.',
    why: 'Con esas fechas este libro calcula cuándo mirar, qué buscar y cuándo dejar la tapa puesta, hasta que la colonia tenga una reina en postura o se pierda. Cada mañana esta página dice qué colmenas abrir, y por qué.',
    log: 'Anotar un ingreso',
  },
  allAbout: (tag) => `Todo sobre ${tag}`,
  late: 'atrasado ',
  lateOnes: (n) => (n === 1 ? '1 atrasada' : `${n} atrasadas`),
  movedOut: 'Se entregó',
  united: 'Se unió',
  writeMore: 'Anotar más',
  nothingInOrOut: 'Nada entra ni sale de esta colmena',
  layingWorkersThreaten: 'Riesgo de obreras ponedoras',
  canRaiseToday: 'Solo hoy puede criar una reina',
  canRaiseUntil: (day) => `Solo puede criar una reina hasta el ${day}`,
  notInBook: (n) => `${n === 1 ? '1 anotación no está' : `${n} anotaciones no están`} en el libro`,
  whatWasSeen: ': qué se vio, y a quién preguntar.',
  pleaseLook: 'Favor de mirar esto',
  offTheList:
    'Sale de esta lista cuando alguien distinto de quien lo pidió haya estado ahí, o haya respondido con una nota.',
  foundLost: 'Colonias perdidas, por confirmar',
  confirm: 'Confirmar cómo se perdió',
  beekeeperConfirms: 'Un apicultor confirma cómo se perdió.',
  doNotFit: 'Anotaciones que no concuerdan',
  tellsMost: (day) => `Una revisión el ${day} es la que más dice; hoy dice poco.`,
  tellsMore: (day, times) =>
    `Una revisión el ${day} dice ${times === 2 ? 'el doble' : `${times} veces`} que hoy.`,
  ready: (n) => `${n === 1 ? '1 colmena' : `${n} colmenas`} en este teléfono, listas sin señal.`,
}
