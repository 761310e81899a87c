/** The morning digest and the page on which one asks for it, in Spanish. */
import type { messages as English } from '../en/messages.ts'

/** Kept in English, for a log and a page alike; recognised here. */
const TROUBLES: readonly (readonly [RegExp, (...found: string[]) => string])[] = [
  [/^this server sends no e-mail$/, () => 'este servidor no envía correo'],
  [/^there is no webhook$/, () => 'no hay ningún webhook'],
  [/^the server’s log says what happened$/, () => 'el registro del servidor dice qué pasó'],
  [
    /^the mail server answered (\d+)(?: to (.+))?$/,
    (code = '', to = '') => `el servidor de correo respondió ${code}${to === '' ? '' : ` a ${to}`}`,
  ],
  [
    /^the mail server went silent after taking the message; it may have gone out$/,
    () => 'el servidor de correo dejó de responder después de recibir el mensaje; puede que haya salido',
  ],
  [
    /^the mail server could not be reached \((.+)\)$/,
    (code = '') => `no se pudo llegar al servidor de correo (${known(code)})`,
  ],
  [/^the webhook answered (\d+)$/, (code = '') => `el webhook respondió ${code}`],
  [
    /^the webhook’s address is one this server may not call$/,
    () => 'este servidor no puede llamar a la dirección del webhook',
  ],
  [/^the webhook did not answer in time$/, () => 'el webhook no respondió a tiempo'],
  [
    /^the webhook could not be reached \((.+)\)$/,
    (code = '') => `no se pudo llegar al webhook (${known(code)})`,
  ],
]
const known = (code: string): string => (code === 'no reason given' ? 'sin motivo conocido' : code)

function trouble(why: string): string {
  for (const [pattern, say] of TROUBLES) {
    const found = pattern.exec(why)
    if (found !== null) return say(...found.slice(1))
  }
  return why
}

export const messages: typeof English = {
  title: 'Mensajes de la mañana',
  about:
    'Una vez al día: qué colmenas piden algo, qué, y hasta cuándo. Solo etiquetas, tareas y fechas; ningún apiario, ninguna persona, ningún cliente.',
  notSaved: 'Todavía no está guardado',
  labels: { mail: 'Correo electrónico', hook: 'Webhook', hour: 'Hora' },
  mailHint: 'Vacío: ningún correo.',
  noMail:
    'Este servidor no envía correo. Quien lo maneja puede nombrar un servidor de correo: RESETTLE_SMTP_URL.',
  hookHint:
    'Para un programa suyo: una dirección https que recibe lo mismo como JSON, firmado. Vacío: ninguna.',
  fromHour: 'Desde qué hora',
  hourHint: (zone) => `Del día del apiario (${zone}).`,
  save: 'Guardar',
  saved: 'Guardado.',
  tryMail: 'Enviar un correo ahora',
  tryHook: 'Llamar al webhook ahora',
  wentOut: 'Salió.',
  didNot: (why) => `No salió: ${why}.`,
  enough: 'Ya se probó bastante por ahora: esperar una hora.',
  secret: {
    title: 'El secreto del webhook',
    show: 'Mostrarlo',
    about:
      'Firma cada llamada como describe la especificación Standard Webhooks (webhook-id, webhook-timestamp, webhook-signature), para que su programa la distinga de la de cualquier otro. Una llamada repetida conserva su webhook-id.',
    renew: 'Hacer un secreto nuevo',
    renewed: 'El webhook tiene un secreto nuevo.',
  },
  lately: 'Últimamente',
  ways: { mail: 'correo', hook: 'webhook' },
  sent: (when) => `enviado: ${when}`,
  sending: 'en camino, o interrumpido: no se envía otra vez, para que nunca llegue dos veces',
  again: (why, when) => `${why}; se intenta otra vez: ${when}`,
  notSent: (why) => `no se envió: ${why}`,
  trouble,
  digest: {
    count: (n) =>
      n === 0 ? 'ninguna colmena pide nada' : n === 1 ? '1 colmena pide algo' : `${n} colmenas piden algo`,
    late: (n) => `${n} ${n === 1 ? 'atrasada' : 'atrasadas'}`,
    nothing: 'Hoy ninguna colmena pide nada, y no hay nada previsto.',
    next: (what, day) => `Hoy ninguna colmena pide nada. La próxima: ${what}, ${day}.`,
    blocks: { late: 'Atrasado', today: 'Hoy' },
    lidOn: '(tapa puesta)',
    shouldHave: (day) => `había que hacerlo hasta el ${day}`,
    lastDay: (day) => `último día ${day}`,
    round: (address) => `La ronda: ${address}`,
    change: (address) => `Cambiar o parar estos mensajes: ${address}`,
    changeSomewhere: 'Estos mensajes se cambian o se paran en la página de su cuenta.',
  },
}
