/**
 * What is wrong with what was typed, in Spanish. Problems are sentences of a public format (the journal says them to
 * programs, and phones keep those they were told), so they are recognised here instead of being made twice.
 */
import { problemQuotes } from '../problem.ts'
import { entries } from './entries.ts'

const WEEKDAYS: Record<string, string> = {
  Mon: 'lun',
  Tue: 'mar',
  Wed: 'mié',
  Thu: 'jue',
  Fri: 'vie',
  Sat: 'sáb',
  Sun: 'dom',
}
const MONTHS: Record<string, string> = {
  Jan: 'ene',
  Feb: 'feb',
  Mar: 'mar',
  Apr: 'abr',
  May: 'may',
  Jun: 'jun',
  Jul: 'jul',
  Aug: 'ago',
  Sep: 'sept',
  Oct: 'oct',
  Nov: 'nov',
  Dec: 'dic',
}
const ENGLISH_DAY =
  /\b(Mon|Tue|Wed|Thu|Fri|Sat|Sun) (\d{1,2}) (Jan|Feb|Mar|Apr|May|Jun|Jul|Aug|Sep|Oct|Nov|Dec)/g

const days = (text: string): string =>
  text.replace(ENGLISH_DAY, (_, w: string, n: string, m: string) => `${WEEKDAYS[w]} ${n} ${MONTHS[m]}`)

const LEFT: Record<string, string> = {
  'moved-out': 'entregada',
  united: 'unida',
  died: 'murió',
  absconded: 'se fue',
  other: 'otra cosa',
  unknown: 'no se sabe cómo',
}

/** 'the visit' as it is called here. */
const KINDS: Record<string, string> = {
  'the intake': entries.kinds.intake,
  'the move': entries.kinds.move,
  'the look at the queen’s cage': entries.kinds['queen-cage'],
  'the visit': entries.kinds.inspection,
  'the clearance of disease': entries.kinds['disease-cleared'],
  'the mite wash': entries.kinds['mite-wash'],
  'the comb ties taken off': entries.kinds['ties-removed'],
  'what was given': entries.kinds.given,
  'the note': entries.kinds.note,
  'the missed visit': entries.kinds['missed-visit'],
  'the leaving': entries.kinds.outcome,
  'the withdrawal': entries.kinds.withdrawal,
  'an earlier entry': 'una anotación anterior',
}

/** Units and things counted, in limits. */
const THINGS: Record<string, string> = {
  characters: 'caracteres',
  frames: 'cuadros',
  hours: 'horas',
  photos: 'fotos',
  bee: 'abeja',
  kg: 'kg',
  litres: 'litros',
  miles: 'millas',
  'US quarts': 'cuartos de galón',
}
const things = (text: string): string =>
  text.replace(/\b(characters|frames|hours|photos|bee|litres|miles|US quarts)\b/g, (t) => THINGS[t] ?? t)

type Known = readonly [RegExp, (...found: string[]) => string]

/** Each recognised whole; groups in order. */
const KNOWN: readonly Known[] = [
  // Sentences in which others stand come before those.
  [
    new RegExp(
      `^does not go with (${Object.keys(KINDS).join('|')}|.+?)(?: of (.+?))?, which (?:says: )?(.+)$`,
    ),
    (kind = '', on = '', why = '') =>
      `no concuerda con ${KINDS[kind] ?? kind}${on === '' ? '' : ` del ${on}`}: ${said(why)}`,
  ],
  [/^At (.+?): (.+)$/, (tag = '', why = '') => `En ${tag}: ${said(why)}`],
  [
    /^no such colony on (.+?): (.+)\. Name one that was in the yard$/,
    (on = '', why = '') =>
      `esa colonia no estaba el ${on}: ${said(why)}. Nombrar una que estuviera en el apiario`,
  ],
  [
    /^is a second outcome; the colony already left the yard on (.+)$/,
    (on = '') => `es una segunda salida: la colonia ya dejó el apiario el ${on}`,
  ],
  [/^is missing: tap one of the answers$/, () => 'falta: tocar una de las respuestas'],
  [/^is missing: type the tag of the right box$/, () => 'falta: escribir la etiqueta de la colmena correcta'],
  [/^is missing: tap what goes there$/, () => 'falta: tocar lo que va allá'],
  [/^is missing(; it must be one of: .*)?$/, () => 'falta'],
  [/^must not be empty(, not .*)?$/, () => 'no puede quedar vacío'],
  [
    /^must be at least (.+), not (.+)$/,
    (least = '', got = '') => `debe ser al menos ${things(least)}, no ${got}`,
  ],
  [
    /^must be at most (.+), not (.+)$/,
    (most = '', got = '') => `debe ser como mucho ${things(most)}, no ${got}`,
  ],
  [/^must be at least (.+)$/, (least = '') => `debe ser al menos ${things(least)}`],
  [/^must be at most (.+)$/, (most = '') => `debe tener como mucho ${things(most)}`],
  [/^must be a number, not (.+)$/, (got = '') => `debe ser un número, no ${got}`],
  [/^must be a whole number, not (.+)$/, (got = '') => `debe ser un número entero, no ${got}`],
  [/^must not be negative(, not .*)?$/, () => 'no puede ser negativo'],
  [/^must be 1 \(calm\) to 5 \(fierce\).*$/, () => 'debe ir de 1 (mansa) a 5 (brava)'],
  [/^must be in quarter frames.*$/, () => 'debe ir en cuartos de cuadro (0.25, 0.5, …)'],
  [/^must be a real date.*$/, () => 'debe ser una fecha que exista'],
  [/^must be a time.*$/, () => 'debe ser una hora, HH:MM'],
  [
    /^must be letters, digits, dashes and single spaces.*$/,
    () => 'solo letras, cifras, guiones y espacios sueltos',
  ],
  [/^must be one of: .*$/, () => 'debe ser una de las respuestas'],
  [/^needs frames or kg.*$/, () => 'faltan los cuadros o los kg'],
  [
    /^has two answers, (.+) tapped and (.+) typed: keep one of them$/,
    (a = '', b = '') => `tiene dos respuestas, ${a} tocada y ${b} escrita: dejar una`,
  ],
  [
    /^(.+) is in the future \(today is (.+)\)$/,
    (day = '', today = '') => `${day} está en el futuro (hoy es ${today})`,
  ],
  [/^(.+) is after the intake on (.+)$/, (day = '', on = '') => `${day} es después del ingreso, del ${on}`],
  [/^(.+) is before the intake on (.+)$/, (day = '', on = '') => `${day} es antes del ingreso, del ${on}`],
  [
    /^(.+) is after the colony left the yard \((.+)\) on (.+)$/,
    (day = '', how = '', on = '') =>
      `${day} es después de que la colonia dejó el apiario (${LEFT[how] ?? how}), el ${on}`,
  ],
  [
    /^cannot be seen with the lid on: .*$/,
    () => 'no se puede ver con la tapa puesta: decir que se abrió la colmena, o quitar esto',
  ],
  [
    /^(.+) is not after (.+): say a later day, or leave it out$/,
    (day = '', on = '') => `${day} no es después del ${on}: decir un día posterior, o dejarlo vacío`,
  ],
  [
    /^(.+) mites on (.+) bees: are the two numbers swapped\?$/,
    (mites = '', bees = '') => `${mites} ácaros en ${bees} abejas: ¿están los dos números al revés?`,
  ],
  [
    /^(?:This )?comes without an intake: log the intake first$/,
    () => 'viene sin ingreso: anotar primero el ingreso',
  ],
  [
    /^This form was saved before and has changed since: .*$/,
    () =>
      'Este formulario ya se guardó antes y cambió desde entonces. Corregir la anotación guardada en el diario de la colonia',
  ],
  [
    /^(.+) is no colony of this yard: .*$/,
    (tag = '') =>
      `${tag} no es una colonia de este apiario: anotar primero su ingreso, o revisar la etiqueta`,
  ],
  [/^(.+) is no box of this yard$/, (tag = '') => `${tag} no es una colmena de este apiario`],
  [/^is (.+) itself$/, (tag = '') => `es la misma ${tag}`],
  [
    /^There is no yard called (.+) yet\. Did you mean (.+)\? Tick .*$/,
    (yard = '', near = '') =>
      `Todavía no hay un apiario llamado ${yard}. ¿Se quiso decir ${near}? Marcar “Un apiario nuevo” para empezar uno`,
  ],
  [
    /^There is no yard called (.+) yet\. Tick .*$/,
    (yard = '') => `Todavía no hay un apiario llamado ${yard}. Marcar “Un apiario nuevo” para empezar uno`,
  ],
  [
    /^one entry takes at most (\d+); the others were left out$/,
    (n = '') => `una anotación lleva como mucho ${n}; las demás se dejaron fuera`,
  ],
  [
    /^(“.*”) is larger than (.+) MB: make it smaller$/,
    (file = '', mb = '') => `${file} pesa más de ${mb} MB: hacerla más pequeña`,
  ],
  [
    /^(“.*”) is (\d+) by (\d+) pixels: make it smaller$/,
    (file = '', w = '', h = '') => `${file} mide ${w} por ${h} píxeles: hacerla más pequeña`,
  ],
  [/^(“.*”) is no JPEG picture$/, (file = '') => `${file} no es una foto JPEG`],
  [
    /^(“.*”) (is cut off|is made of too many pieces|holds two pictures in one): take it again$/,
    (file = '') => `${file} está dañada: tomarla otra vez`,
  ],
  [
    /^brood disease was suspected in (.+) on (.+?) and is not cleared: .*$/,
    (tag = '', on = '') =>
      `el ${on} se sospechó una enfermedad de la cría en ${tag} y no está descartada: no se puede mover ni unir, ni dar cría, abejas o panal a otras. Cerrarla, llamar al inspector apícola y anotar quién lo descartó; deciden las normas locales`,
  ],
  [
    /^(\S+) .+ on (.+?), and brood disease is suspected in (\S+): it may not be moved.* between (.+) and (.+), and the signs noted$/,
    (tag = '', on = '', from = '', opens = '', closes = '') =>
      `${tag} está ligada desde el ${on} a ${from}, en la que se sospecha una enfermedad de la cría: no se puede mover ni unir, ni dar cría, abejas o panal a otras hasta revisar cada cuadro de cría, sin abejas encima, entre el ${opens} y el ${closes}, y anotar las señales`,
  ],
  [/^(.+) left the yard on (.+)$/, (tag = '', on = '') => `${tag} dejó el apiario el ${on}`],
  [/^(.+) came to the yard on (.+)$/, (tag = '', on = '') => `${tag} llegó al apiario el ${on}`],
  [
    /^(correcting|logging|recording) .* is for (.+)$/,
    () => 'esto no lo puede hacer quien tiene esta cuenta: pedirlo a un apicultor',
  ],
  [
    /^(.+) is already in the yard(.*): give this one another tag, or first record how that one left$/,
    (tag = '', since = '') =>
      `${tag} ya está en el apiario${since.replace(', since ', ', desde el ')}: darle otra etiqueta a esta, o anotar primero cómo salió aquella`,
  ],
  [
    /^the tag (.+) is by now on another colony in the yard(.*)$/,
    (tag = '', since = '') =>
      `la etiqueta ${tag} ya la tiene otra colonia del apiario${since.replace(', since ', ', desde el ')}`,
  ],
  [/^a colony cannot be united into itself$/, () => 'una colonia no se puede unir a sí misma'],
  [
    /^is already that of another entry: (.+)$/,
    (kind = '') => `ya es el de otra anotación: ${KINDS[kind] ?? kind}`,
  ],
  [
    /^is a second intake of the same colony; .*$/,
    () => 'es un segundo ingreso de la misma colonia: corregir el primero',
  ],
  [/^names no entry of this (?:colony|yard): .*$/, () => 'corrige una anotación que no está en el diario'],
  [/^a correction must be of the same kind: .*$/, () => 'una corrección tiene que ser de la misma clase'],
  [/^a withdrawal cannot be corrected; .*$/, () => 'una anulación no se puede corregir: hacerla otra vez'],
  [/^an entry cannot replace itself$/, () => 'una anotación no puede reemplazarse a sí misma'],
  [
    /^no brood disease is suspected in this colony on that day, so there is nothing to clear$/,
    () => 'ese día no se sospecha ninguna enfermedad de la cría en esta colonia: no hay nada que descartar',
  ],
  [
    /^is before the look that suspected it, on (.+)$/,
    (on = '') => `es antes de la revisión en la que se sospechó, del ${on}`,
  ],
  [
    /^needs a later look with the lid off, .*$/,
    () =>
      'hace falta una revisión posterior con la tapa quitada, anotada como visita sin señales de problemas, antes de descartarla por cuenta propia',
  ],
  [
    /^is larger than the server takes: .*$/,
    () => 'pesa más de lo que acepta el servidor: acortar la nota, o quitar fotos',
  ],
  [/^is not a known value: (.+)$/, (got = '') => `no es un valor conocido: ${got}`],
  [/^has no field (.+)$/, (name = '') => `no lleva el campo ${name}`],
  [/^must be the tag painted on the box, not an id$/, () => 'debe ser la etiqueta pintada en la colmena'],
  [/^must be (?:an? .+|the SHA-256 .+|.+, not .+)$/, () => 'no tiene la forma que debe'],
  // Where a form has no place for it, the name of the field leads.
  [/^This (.+)$/, (what = '') => `Esto ${said(what)}`],
  [/^([a-z]\w*(?:\.\w+)*): (.+)$/i, (field = '', what = '') => `${field}: ${said(what)}`],
  [/^has a name that is empty or too long$/, () => 'lleva un nombre vacío o demasiado largo'],
  // Accounts.
  [/^is not the same as above$/, () => 'no es igual a la de arriba'],
  [/^is not your passphrase$/, () => 'no es su frase de acceso'],
  [
    /^was tried too often: wait (\d+) minutes$/,
    (n = '') => `se probó demasiadas veces: esperar ${n} minutos`,
  ],
  [
    /^must be at least (\d+) characters: three or four words do$/,
    (n = '') => `debe tener al menos ${n} caracteres: bastan tres o cuatro palabras`,
  ],
  [
    /^must not be the same few characters over and over$/,
    () => 'no puede ser los mismos pocos caracteres repetidos',
  ],
  [
    /^is too easily guessed: .*$/,
    () =>
      'es demasiado fácil de adivinar: elegir tres o cuatro palabras que no tengan nada que ver entre sí, ni con usted ni con este apiario',
  ],
  [
    /^Too many people are at the door just now: try again in a moment\.?$/,
    () => 'Hay demasiada gente entrando ahora mismo: probar otra vez en un momento',
  ],
  [/^this link no longer works$/, () => 'este enlace ya no sirve'],
  [/^must be an e-mail address$/, () => 'debe ser una dirección de correo'],
  [/^must be an address like (.+)$/, (like = '') => `debe ser una dirección como ${like}`],
  [/^must not hold a name or a password$/, () => 'no puede llevar un nombre ni una contraseña'],
  [/^is one this server may not call$/, () => 'este servidor no puede llamarla'],
  [/^must be a full hour from 0 to 23$/, () => 'debe ser una hora en punto, de 0 a 23'],
  [/^must be saved first$/, () => 'primero hay que guardarlo'],
  [/^must be ticked: one at least$/, () => 'hay que marcar al menos uno'],
  [/^are more than your role allows$/, () => 'son más de lo que puede esta cuenta'],
  [/^must be chosen$/, () => 'hay que elegir uno'],
  [
    /^is one too many: take back one of your (\d+) tokens first$/,
    (n = '') => `es una de más: anular primero una de las ${n} claves`,
  ],
]

function said(message: string): string {
  for (const [pattern, say] of KNOWN) {
    const found = pattern.exec(message)
    if (found !== null) return days(say(...found.slice(1)))
  }
  return days(message)
}

/** The sentence in Spanish; one that is not known stays as it is. Quoted words stay as typed. */
export const problem = (message: string): string => said(problemQuotes(message))
