/** One's own tokens for programs, in Spanish. */
import type { tokens as English } from '../en/tokens.ts'

export const tokens: typeof English = {
  title: 'Claves para programas',
  about: [
    'Con una clave un programa suyo pregunta a este apiario por HTTP, en su nombre y sin poder más que usted. Lo que se puede preguntar está ',
    'descrito aquí (en inglés)',
    ', y para los programas con clave en /api/v1/openapi.json. Una clave sigue sirviendo al salir o cambiar la frase de acceso, hasta que vence o se anula.',
  ],
  takenBack: 'La clave está anulada. Ya no sirve.',
  make: 'Hacer una clave',
  notMade: 'Todavía no está hecha',
  whatFor: 'Para qué es',
  whatForHint: 'Para saber después cuál anular.',
  scopes: 'Permisos',
  scopesHint: 'Marcar solo lo que el programa necesita.',
  goodFor: 'Sirve durante',
  days: (n) => `${n} días`,
  save: 'Hacer la clave',
  scope: {
    read: 'leer: colonias, planes, diarios',
    write: 'escribir: enviar anotaciones',
    review: 'balance: supervivencia',
  },
  short: { read: 'leer', write: 'escribir', review: 'balance' },
  line: (scopes, made, used, until) =>
    `${scopes}. Hecha: ${made}. ${used === null ? 'Nunca usada.' : `Última vez usada: ${used}, más o menos.`} ${until === null ? 'Ya no sirve.' : `Sirve hasta: ${until}.`}`,
  takeBack: 'Anularla',
  made: {
    title: 'La clave',
    heading: (name) => `La clave para ${name}`,
    says: (until) =>
      `Copiarla ahora: no se muestra otra vez. Sirve hasta ${until}, o hasta que se anule, y puede lo mismo que usted, dentro de sus permisos. Guardarla como se guarda una frase de acceso.`,
    back: 'Volver a las claves',
  },
}
