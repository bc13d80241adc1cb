/** Las palabras en los dibujos y debajo de ellos. */

import type * as english from '../en/pictures';
import type { Same } from './same';

export const SECTION: Same<typeof english.SECTION> = {
  fromFace: '{unit} de la cara',
  fullThread: 'rosca completa',
  thickness: 'espesor',
  chamfer: 'entrada',
  centre: 'centro',
  clearance: 'margen',
  runPast: 'rebase',
  cone: 'cono de la broca',
  tapTo: 'macho hasta',
  shoulder: 'fondo cilíndrico',
  point: 'punta de broca',
  farFace: 'cara de abajo',
  clearBelow: 'libre debajo',
  limitAt: { shoulder: 'máx. fondo', point: 'máx. punta' },
  asked: 'pedido',
  drill: 'broca',
  bore: 'mandrinar a',
  leftHand: 'a izquierdas',
};

export const SECTION_NOTES: Same<typeof english.SECTION_NOTES> = {
  short: '× faltan {short} de {asked} de rosca',
  strikes: '× {strikes} de sitio faltan debajo',
};

export const SECTION_TEXT: Same<typeof english.SECTION_TEXT> = {
  title: 'Corte del agujero, a escala: {designation}, {kind}',
  blind: 'ciego',
  through: 'pasante',
  hole: 'Agujero: {drill}.',
  thread: 'Rosca completa hasta {fullThread} desde la cara.',
  short: 'Son {short} menos que los {asked} pedidos.',
  tap: 'El macho se muestra en lo más hondo, {tip}, con la entrada más larga de su clase, {threads} hilos o {chamfer}.',
  blindEnd: 'El fondo cilíndrico de la broca está a {shoulder} y su punta a {point}.',
  clearance: 'Entre la punta del macho y el fondo cilíndrico quedan libres {clearance}.',
  limit: 'El plano no permite {at} más hondo de {limit}.',
  limitWords: { shoulder: 'el fondo cilíndrico', point: 'la punta' },
  throughEnd: 'La pieza tiene {thickness} de espesor.',
  clear: 'Debajo hay {clear} libres.',
  strikes: 'El macho entraría {strikes} en lo que hay debajo.',
  left: 'La rosca es a izquierdas.',
  broken: 'Entre las líneas onduladas falta parte de la profundidad.',
};

export const SECTION_CAPTION: Same<typeof english.SECTION_CAPTION> = {
  scale: 'A escala.',
  tap: 'El macho en lo más hondo, {tip}, con la entrada más larga que permite su clase ({middle} a mitad de la clase).',
  broken: 'Entre las líneas onduladas falta parte de la profundidad.',
  table: 'Profundidades de este dibujo',
  part: 'Qué',
  depth: 'Desde la cara, {unit}',
  length: 'Largo, {unit}',
};

export const TIP: Same<typeof english.TIP> = {
  title: 'Puntas de machos de {style} a una misma escala, sobre un mismo suelo',
  description:
    'De izquierda a derecha: {list}. Por encima de cada entrada la rosca tiene toda su altura.',
  one: '{words}, dibujada con {threads} hilos de entrada',
  styles: {
    'spiral-point': 'punta helicoidal',
    'spiral-flute': 'ranura helicoidal',
    'straight-flute': 'ranura recta',
    form: 'conformar',
    'thread-mill': 'fresar roscas',
  },
};

export const CHIP: Same<typeof english.CHIP> = {
  title: '{course}: {cut}',
  description:
    'Un macho en un {hole}, visto de lado. Su cara de corte se inclina {lean}° {way}. La viruta sale en {chips}. {course}.',
  way: {
    none: 'hacia ningún lado del eje',
    right: 'como una hélice a derechas',
    left: 'como una hélice a izquierdas',
  },
  cut: { right: 'macho a derechas', left: 'macho a izquierdas' },
  leans: 'cara inclinada {lean}°',
  upright: 'cara recta',
  face: ['cara', 'de corte'],
  flute: ['ranura'],
  chips: { long: 'rizos largos', short: 'trozos cortos' },
  hole: { blind: 'agujero ciego', through: 'agujero pasante' },
  course: {
    ahead: 'Empujada por delante del macho',
    back: 'Subida por la ranura',
    stays: 'Se queda en la ranura',
  },
};
