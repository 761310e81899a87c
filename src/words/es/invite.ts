/** Coming in by an invitation, in Spanish. */
import type { Words } from '../catalogue.ts'

export const invite: Words['invite'] = {
  hello: (name) => `Hola, ${name}`,
  can: {
    helper: 'Como ayudante se ve qué colmenas hay que abrir hoy y por qué, y se anota lo que se encuentra.',
    beekeeper:
      'Como apicultor o apicultora se anotan ingresos, visitas y salidas, y se corrige lo que está mal en el diario.',
    operator:
      'Como responsable se puede hacer todo aquí, también lo de las personas, las reglas y las copias de seguridad.',
  },
  choose: 'Elegir una frase de acceso',
  again: 'La misma, otra vez',
  notChosen: 'Todavía no está elegida',
  comeIn: 'Elegirla y entrar',
  after: (name) =>
    `Se entra con el nombre ${name}. En este teléfono la sesión queda abierta un mes después de cada visita. Una vez elegida la frase, el enlace de la invitación ya no sirve.`,
}
