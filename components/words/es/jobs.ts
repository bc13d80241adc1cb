/** Las palabras de los trabajos guardados y del cajón. */

import type * as english from '../en/jobs';
import type { Same } from './same';

export const TEXT: Same<typeof english.TEXT> = {
  title: 'Trabajos en este dispositivo',
  intro:
    'Guardados en este navegador y en ningún otro sitio: sin cuenta, sin servidor. Si borra el navegador se borran, así que guarde en un archivo lo que importe.',
  none: 'Todavía no hay trabajos guardados. Planee un agujero o un plano entero y guárdelo, o abra un archivo.',
  planHole: 'Planear un agujero',
  planDrawing: 'Planear un plano entero',
  drawer: 'Machos, brocas y máquinas de este taller',
  add: 'Guardar este agujero',
  addTo: '¿En qué trabajo?',
  newJob: 'Un trabajo nuevo',
  keep: 'Guardarlo',
  newEmpty: 'Empezar un trabajo vacío',
  save: 'Guardar todo en un archivo',
  saveCsv: 'Guardar como tabla (CSV)',
  open: 'Abrir un archivo',
  printAll: 'Imprimir todos los trabajos',
  print: 'Imprimir este trabajo',
  copy: 'Copiar',
  remove: 'Quitar',
  removeSure: 'Quitarlo para siempre',
  removeAsk: '¿Quitar este trabajo? Se pierde si no lo guardó en un archivo.',
  cancel: 'Dejarlo',
  removeHole: 'Sacar',
  openHole: 'Abrir en el planificador',
  card: 'Hoja',
  sheet: 'Hoja de preparación',
  holes: 'Agujeros',
  unnamed: 'Trabajo sin nombre',
  changed: 'Esta versión contesta distinto que cuando se guardó. Entonces decía:',
  noAnswer:
    'Lo escrito para este agujero no da respuesta. Ábralo en el planificador para corregirlo.',
  clear: 'Borrar los trabajos y el cajón',
  clearAsk:
    'Se van para siempre todos los trabajos, machos, brocas y máquinas guardados en este navegador. Guarde antes un archivo.',
  twice:
    'Mientras tanto otra pestaña había cambiado este trabajo. El suyo se guardó como copia al lado.',
  kept: 'Guardado.',
  removed: 'Quitado.',
  opened: 'Abierto. Lo del archivo está junto a lo que había aquí.',
  notOurs: 'No es un archivo de trabajos. No se cambió nada.',
  newerFile: 'Este archivo es de una versión más nueva del manual. No se cambió nada.',
  notOpened: 'No se pudo leer el archivo del disco.',
  notLoaded: 'La página no se cargó entera',
  notLoadedText: 'Mire la conexión y cargue otra vez la página. Lo guardado aquí está a salvo.',
  keepWithJobs: 'Guardarlo con los trabajos (en inglés)',
  noScript:
    'Los trabajos los guarda JavaScript, que está desactivado en este navegador. Abajo se ve cómo es un trabajo.',
  example: 'Ejemplo',
  exampleText: 'Un trabajo guardado de Copperfell Works. No es para usar.',
  drawerTitle: 'Machos, brocas y máquinas de este taller',
  drawerIntro:
    'Uno por línea, escrito o de una hoja de cálculo. El planificador dice entonces qué hacen sus propios machos en un agujero, y qué ganaría con uno mejor.',
  drawerField: 'Lo que hay',
  drawerHint:
    'en inglés: tap; M8; spiral flute; 2-3 · drill; 6.8 · machine; VMC-B; synchronous; 30; 4000',
  drawerOpen: 'Abrir un archivo CSV',
  drawerJoined:
    'Guardado. Mientras tanto otra pestaña había puesto algo en el cajón: queda junto a lo suyo.',
  drawerKeep: 'Guardar lo que se pudo leer',
  drawerSave: 'Guardar como tabla (CSV)',
  drawerRows: 'Como se leyó, fila a fila',
  drawerRead: 'Leído como',
  drawerLine: 'Línea',
  drawerNone: 'Nada todavía.',
  backToJobs: 'Trabajos en este dispositivo',
};

export const MACHINES: Same<typeof english.MACHINES> = {
  label: 'Máquina de este taller',
  choose: 'Elija una, o rellene abajo',
};

export const FIELDS_OF_JOB: Same<typeof english.FIELDS_OF_JOB> = {
  job: 'Trabajo',
  part: 'Pieza',
  operation: 'Operación',
  machine: 'Máquina',
};

export const OWNED: Same<typeof english.OWNED> = {
  heading: 'De su cajón',
  has: 'El macho que mejor va está en el cajón.',
  works: 'El cajón tiene otro que también sirve: {tap}.',
  gain: 'Con este, {best}, el macho sufriría {after} de lo que lo rompe en vez de {before}',
  gainDepth: ', y el agujero podría ser {shoulder} menos hondo',
  gainDeeper: ', aunque el agujero tendría que ser {shoulder} más hondo',
  drill: 'La broca {drill} también está.',
  drillInstead: 'La broca {drill} no está; está {instead}, y queda dentro de la clase.',
  drillNone: 'Ninguna broca del cajón queda con seguridad dentro de la clase: consiga {drill}.',
  none: 'No hay macho de esta rosca en el cajón.',
  rejected: 'Los machos de esta rosca que hay en el cajón no sirven aquí: {taps}.',
};
