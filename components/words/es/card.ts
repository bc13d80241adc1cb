/** Las palabras de la hoja de trabajo. */

import type * as english from '../en/card';
import type { Same } from './same';

export const CARD: Same<typeof english.CARD> = {
  title: 'Hoja de trabajo: agujero roscado',
  example: 'Ejemplo. No es para usar.',
  print: 'Imprimir esta hoja',
  back: 'Volver al plan',
  blanks: 'Lo que va en la cabecera de la hoja',
  blanksHint: 'Todo opcional: lo que quede vacío sale como una línea para escribir.',
  noHole: 'Todavía no hay ningún agujero en esta hoja.',
  planOne: 'Planee uno',
  notReady: 'Algo en la dirección de esta hoja no se puede leer o falta.',
  mend: 'Corríjalo en el planificador',
  stop: 'No lo haga: ningún macho sirve para este agujero como está dibujado',
  run: 'Qué montar',
  watch: 'Atención',
  record: 'Primera pieza y registro',
  assumed: 'Supuestos',
  address: 'Este plan, en vivo:',
  qr: 'Código de la dirección del plan',
  made: 'Hecha el',
  version: 'con el Manual del agujero roscado',
};

export const RECORD: Same<typeof english.RECORD> = [
  'N.º del macho',
  'Medida taladrada',
  'PASA entra',
  'NO PASA se para',
  'Tapón liso',
  'Profundidad',
  'Agujeros hechos',
  'Par visto',
  'Iniciales',
  'Fecha, turno',
];
