/** Around fields, and what is wrong in them, in Spanish. */
import type { forms as English } from '../en/forms.ts'
import { problem } from './problems.ts'

export const forms: typeof English = {
  nothingSaved: 'Todavía no se guardó nada',
  mend: 'Lo escrito sigue aquí. Corregirlo y guardar otra vez.',
  photos: 'Fotos',
  photosHint: (most) => `Hasta ${most}. Las ven todos en el apiario. El lugar donde se tomaron no se guarda.`,
  jpegOnly: 'Sin JavaScript: solo fotos JPEG (.jpg).',
  takePhotos: 'Tomar o elegir fotos',
  keep: 'guardar',
  now: 'ahora',
  of: (n, all) => `${n} de ${all}`,
  seenThen: (n, all) => `Visto entonces, ${n} de ${all}`,
  howItLooks: 'Cómo se ve',
  problem,
}
