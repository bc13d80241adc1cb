/** Las palabras de lo que un dispositivo guarda, dondequiera que se guarde algo. */

import type * as english from '../en/keeping';
import type { Same } from './same';

export const KEEPING: Same<typeof english.KEEPING> = {
  unsaved: 'Sin guardar en este dispositivo',
  full: 'A este navegador no le queda sitio. Guarde un archivo y quite lo que ya terminó.',
  blocked:
    'Este navegador no guarda nada de esta página, quizá por su configuración. Lo que haga aquí se pierde al cerrar la página: guarde un archivo.',
  newer:
    'Lo guardado aquí lo escribió una versión más nueva del manual. Se deja como está y no se guarda nada encima. Cargue otra vez la página, o guarde en un archivo lo que hizo aquí.',
  save: 'Guardar un archivo',
  aside: 'Algo de lo guardado aquí no se pudo leer',
  asideText:
    'Se apartó tal como estaba y no se pierde nada. Guárdelo en un archivo para corregirlo o enviarlo.',
  asideSave: 'Guardar lo que no se pudo leer',
  asideForget: 'Olvidarlo',
  unread: 'Algunas entradas no se pudieron leer. Quedan como están y van en cada archivo.',
  clearSure: 'Borrarlo',
  leave: 'Dejarlo',
};
