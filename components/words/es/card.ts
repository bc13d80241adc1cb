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
  cautions: 'Seguridad',
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

export const ROWS: Same<typeof english.ROWS> = {
  tap: 'Macho',
  chamfer: 'entrada de {chamfer}',
  drill: 'Broca',
  shopBase: '{percent} de rosca, base del taller',
  drillTo: 'Taladrar hasta',
  shoulder: 'fondo cilíndrico, desde la cara',
  shoulderBelow: 'fondo cilíndrico, desde la caja o el plano; {face} desde la cara',
  pointBelow: 'punta de la broca, desde la caja o el plano; {face} desde la cara',
  throughBelow: 'de lado a lado, desde la caja o el plano; {face} desde la cara',
  tapBelow: '{nose}, desde la caja o el plano; {face} desde la cara',
  sureBelow:
    'desde la caja o el plano, acaba a {face} de la cara; segura con cualquier macho de la clase',
  pointAt: 'La punta queda a',
  point: 'punta de la broca, desde la cara',
  through: 'de lado a lado',
  tapTo: 'Macho hasta (Z)',
  fullThread: 'Rosca completa',
  sure: 'desde la cara, segura con cualquier macho de la clase',
  speed: 'Velocidad',
  feed: 'Avance',
  exactly: '{feed} a esa velocidad, exactos',
  torque: 'Par, afilado',
  ofBreaking: '{band}; {sharp} de lo que rompe el macho, gastado {worn}',
  letGo: 'Soltar a',
  noSetting: 'Ningún ajuste seguro',
  clutch: 'embrague o límite de carga; mejor con un par medido aquí',
  tooNear: 'el macho trabaja demasiado cerca de su resistencia',
  chips: 'Viruta',
  fluid: 'Fluido',
  dataSheet: 'manda la ficha de datos de seguridad',
  gauge: 'Calibre',
};
