/** How each act is done, in Spanish. */
import type { steps as English } from '../en/steps.ts'

export const steps: typeof English = {
  'first-brood-check': {
    title: 'Abrir una colmena para la primera revisión de cría',
    bring: 'ahumador, cuña, un lugar donde apoyar un cuadro, una luz para panal oscuro',
    steps: [
      'Escoger una hora templada y sin viento. Ponerse con el sol a la espalda, para que caiga en las celdas. Dos bocanadas de humo en la piquera, y esperar medio minuto.',
      'Sacar primero un cuadro de la orilla y apoyarlo aparte: así los demás salen sin aplastar abejas ni a la reina.',
      'Ir cuadro por cuadro hasta la cría. Levantar derecho y despacio, y sostener cada cuadro sobre la colmena: si la reina cae, cae en su casa.',
      'Buscar cuatro cosas y decir algo de cada una: huevos, larvas, opérculos, celdas reales en las orillas y en la cara. “No hay” es una respuesta, “no se miró” es otra. Media revisión no decide nada.',
      'Regresar los cuadros en su orden y hacia el mismo lado, cerrar, y tocar lo que se vio antes de seguir caminando.',
    ],
  },
  'outside-look': {
    title: 'Mirar por fuera, con la tapa puesta',
    bring: 'nada; alimento, si el plan lo dice',
    steps: [
      'Pararse al lado de la piquera, fuera del paso de las abejas, por unos minutos.',
      'Mirar: ¿vuelan, y algunas traen polen? El polen muchas veces quiere decir cría, pero no prueba nada.',
      'Mirar el suelo y la tabla: muchas muertas, abejas que se arrastran con malas alas, peleas en la piquera, o nadie.',
      'Pegar la oreja a la pared y golpear una vez: un zumbido corto que se apaga está bien. Levantar un poco la colmena por atrás: liviana quiere decir hambre.',
      'Tocar “Se miró, todo bien”, o anotar lo que no lo estaba.',
    ],
  },
  'caged-queen': {
    title: 'Atender a una reina en su jaula',
    bring: 'ahumador, cuña, algo para abrir la jaula',
    steps: [
      'Un poco de humo, quitar la tapa con cuidado, y mirar la jaula antes de tocarla: ¿las abejas están sueltas encima y la alimentan, o se aferran y muerden?',
      'Buscar celdas reales cerca de la jaula. Cortarlas todas antes de que ella salga, o una de ellas la mata.',
      'Jaula vacía: sacarla, no buscar a la reina hoy, y cerrar. Sus huevos se buscan después.',
      'Sigue dentro, y las abejas están tranquilas: abrir la jaula abajo, entre dos cuadros, y dejar que baje caminando. Se aferran: dejarla en la jaula, y volver cuando dice el plan.',
      'Muerta, o la mataron: es probable que haya otra reina. Sacar la jaula y anotar solo lo que se encontró.',
    ],
  },
  'test-frame': {
    title: 'Dar un cuadro con huevos',
    bring: 'una colmena donante revisada por enfermedades, una toalla húmeda, un cepillo, un plumón',
    steps: [
      'Escoger una donante sana: reina en postura, sin señal de enfermedad, pocos ácaros, no retenida.',
      'Tomar un cuadro con huevos y las larvas más pequeñas. Ver que la reina de la donante no esté en él, y quitar las abejas con el cepillo: los golpes dañan huevos y larvas.',
      'Cubrirlo con la toalla húmeda y llevarlo de inmediato. Los huevos se secan en minutos de sol (con menos de la mitad de humedad no nació ninguno: Doull 1976).',
      'Temprano o tarde en el día, con cuidado, ponerlo en medio de las abejas. Escribir la fecha y “huevos” en el cabezal, para encontrarlo otra vez.',
      'Anotarlo con la etiqueta de la donante. El día que dice el plan, buscar celdas reales en este mismo cuadro.',
    ],
  },
  introduce: {
    title: 'Introducir una reina fecundada',
    bring: 'la reina en su jaula, una gota de agua para ella, alimento',
    steps: [
      'Buscar en todos los cuadros una reina, una reina joven o celdas reales. ¿Se encontró algo? No introducirla: anotarlo y ver qué dice el plan.',
      'Mientras tanto tener su jaula a la sombra, tibia y seca, con una gota de agua en la malla dos veces al día.',
      'Acuñar la jaula entre dos cuadros donde hay cría, o la habría: la malla hacia las abejas, el extremo del candi un poco hacia arriba, ya sin su tapón.',
      'Cerrar. Dar jarabe ligero adentro donde entra poco: las abejas alimentadas aceptan mejor a una reina.',
      'Dejar la colmena en paz hasta el día en que el plan pregunta por la jaula. Anotar que se dio.',
    ],
  },
  unite: {
    title: 'Unir con otra colonia',
    bring: 'una hoja de periódico, ahumador, cuña, una correa',
    steps: [
      'Revisar la cría de ambas por enfermedades. Con duda, parar: nada enfermo ni retenido se une.',
      'Solo puede quedar una reina: buscar la peor reina, o todas las celdas reales, y sacarlas.',
      'Al anochecer quitar la tapa de la colmena fuerte, la que tiene la reina. Poner una hoja de periódico sobre sus cuadros y rasgarla dos veces con la cuña.',
      'Poner la caja de la colonia débil sobre el papel, con tapa y correa. Dejar una sola piquera, abajo, y reducirla.',
      'Más o menos en una semana el papel está roído: juntar los cuadros en las cajas que llenen, no más. Anotar que la colonia débil se fue, unida, y a cuál colmena.',
    ],
  },
  boost: {
    title: 'Añadir un cuadro de cría operculada',
    bring: 'una colmena donante revisada por enfermedades, cuña, un plumón',
    steps: [
      'Escoger una donante fuerte y sana, y buscar primero a su reina: ella se queda donde está.',
      'Tomar un cuadro casi todo de opérculos planos, mejor con abejas que están naciendo. Las larvas necesitan muchas nodrizas, así que pocas larvas en él.',
      'No más cría de la que la colonia pequeña puede cubrir: un cuadro a la vez. Las abejas que están encima van con él.',
      'Ponerlo junto a su propia cría, y sacar a cambio un cuadro vacío de la orilla.',
      'Reducir la piquera, alimentar, y anotar el cuadro y la etiqueta de la donante.',
    ],
  },
  feed: {
    title: 'Alimentar una colonia',
    bring: 'azúcar blanca en agua, un alimentador de interior, algo que flote en él',
    steps: [
      '¿Hay pilladoras en la piquera? Parar eso primero. Alimentar solo cuando haya terminado.',
      'Mezclar por peso: una parte de azúcar y una de agua para crecer, dos de azúcar y una de agua para guardar. Solo azúcar blanca: la miel de abejas desconocidas trae enfermedad.',
      'Al anochecer poner el alimentador adentro, encima de las abejas, con paja o un flotador para que no se ahoguen. Demasiado frío para volar: fondant sobre los cuadros.',
      'No derramar nada. Cerrar toda rendija, y reducir la piquera de una colonia pequeña al ancho de un dedo.',
      'Anotar cuánto. La próxima vez retirar lo que se agrió.',
    ],
  },
  'mite-wash': {
    title: 'Lavar abejas para contar ácaros',
    bring: 'frasco con tapa de malla, medida de media taza, alcohol o agua jabonosa, una bandeja blanca',
    steps: [
      'Buscar a la reina y apoyar su cuadro aparte. Si no se encuentra: tomar abejas de un cuadro que se buscó por los dos lados.',
      'Sacudir las abejas de un cuadro de cría en una bandeja y tomar media taza, unas 300. Devolver las demás.',
      'Al frasco, líquido encima, tapa puesta, y agitar en círculos un minuto. Estas abejas mueren; una colonia que no se lava puede morir entera.',
      'Colar por la malla en la bandeja blanca y contar los ácaros. Enjuagar una vez más y contar otra vez.',
      'Anotar abejas y ácaros: 9 en 300 son 3 en 100. Después ver qué dice el plan; la etiqueta es la ley.',
    ],
  },
  'close-down': {
    title: 'Parar el pillaje',
    bring: 'un pedazo de espuma o pasto, cinta, una sábana mojada',
    steps: [
      'Abejas que pelean en la piquera y tantean toda rendija son pilladoras. No abrir esta colmena, ni ninguna de al lado.',
      'Cerrar la piquera al ancho de una abeja, con espuma, pasto o un taco.',
      'Tapar con cinta toda otra rendija. Llevarse toda miel, jarabe y panal mojado que esté a la vista.',
      'Sigue la nube: colgar una sábana mojada sobre la colmena hasta la noche. Las abejas que viven ahí encuentran el camino.',
      'Mirar al anochecer y los dos días siguientes. Alimentar solo cuando haya terminado, al anochecer, adentro. Anotar que se vio.',
    ],
  },
  'close-up': {
    title: 'Cerrar y llamar al inspector',
    bring: 'nada más de lo que se tiene; ninguna herramienta pasa de aquí a otra colmena',
    steps: [
      'Opérculos hundidos, oscuros o con agujeros irregulares, larvas muertas que hacen hilo, mal olor: tomar una foto, regresar el cuadro, y parar.',
      'Cerrar la colmena y reducir su piquera: las pilladoras llevan la enfermedad a la siguiente.',
      'Marcar la colmena. Desde ahora nada entra ni sale: ni abejas, ni panal, ni miel, ni cuadros.',
      'Raspar la cuña y pasarla por la llama, lavarse las manos, cambiar los guantes. Terminar aquí la ronda, o seguir con herramientas limpias.',
      'Anotarlo con “Sospecha de enfermedad de la cría”, y llamar al inspector apícola. Si se toma muestra, se quema o se trata lo decide el inspector.',
    ],
  },
  'take-out-queen': {
    title: 'Buscar una reina y sacarla',
    bring: 'ahumador, cuña, una caja vacía para poner cuadros, una jaula',
    steps: [
      'Venir cuando muchas abejas andan volando. Casi nada de humo: la hace correr.',
      'Empezar donde están los huevos o la cría. Al subir un cuadro, mirar primero el lado del siguiente que estaba oscuro.',
      'Luego bajar por un lado del cuadro y subir por el otro, las orillas primero. Buscar patas largas y un camino de abejas que se vuelven hacia ella.',
      'No está en los cuadros: mirar las paredes y el fondo. No se encuentra en diez minutos: cerrar, y probar otro día.',
      'Tomarla por las alas, o enjaularla. Anotar que se sacó, y qué ponía.',
    ],
  },
  'move-out': {
    title: 'Entregar una colmena',
    bring: 'correa, malla o espuma para la piquera, los papeles, otras dos manos',
    steps: [
      'Una última revisión de cada cuadro de cría por enfermedades, con luz de día. Con cualquier duda: se queda.',
      'Ver que la lista de lo que falta esté vacía, y que los papeles para el lugar a donde va estén hechos.',
      'Cuando todas las abejas han regresado, al anochecer o antes del amanecer, cerrar la piquera de modo que entre aire. Fondo, caja y tapa bajo una correa.',
      'Levantar entre dos. En el camión los cuadros van en el sentido de la marcha, con aire, y sin sol encima.',
      'En el sitio nuevo abrir la piquera de inmediato y poner una rama delante, para que aprendan el lugar. Anotar a dónde fue.',
    ],
  },
}
