/** What each drawing shows, in Spanish. */
import type { drawings as English } from '../en/drawings.ts'

export const drawings: typeof English = {
  egg: 'Un huevo por celda, parado en el fondo como un grano de arroz',
  larva: 'Una larva blanca enroscada en el fondo de su celda',
  'flat-caps': 'Opérculos planos o apenas redondeados, como pan seco: cría de obrera',
  'raised-caps': 'Opérculos abultados como balas: cría de zángano',
  cup: 'Una copa: pequeña como la de una bellota, vacía. Las abejas las hacen en cualquier momento',
  'open-cell': 'Una celda real abierta: más larga, con una larva en jalea blanca, boca abajo',
  'capped-cell': 'Una celda real operculada: larga como un cacahuate, cerrada en la punta',
  'emerged-cell': 'Una celda nacida: la punta cortada en redondo como una tapa. Salió una reina joven',
  'torn-cell': 'Una celda destruida: abierta por un lado por una reina o por las abejas',
  drone: 'Un zángano: grueso y romo, ojos que se juntan arriba',
  virgin: 'Una reina joven: delgada, rápida, apenas más larga que una obrera',
  queen: 'Una reina en postura: cuerpo largo, alas que cubren la mitad',
  'many-eggs': 'Varios huevos por celda, algunos en las paredes: están poniendo las obreras',
  'comb-ties': 'Panal sujeto en su cuadro con ligas',
  chalkbrood: 'Momias duras, blancas o grises, en las celdas, sueltas al sacudir el cuadro',
  'sunken-caps': 'Opérculos hundidos, oscuros, con agujeros irregulares: cerrar y preguntar',
}
