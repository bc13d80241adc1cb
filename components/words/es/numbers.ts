/** Los nombres de los números de un plan, y lo que va al lado. */

import type * as english from '../en/numbers';
import type { Same } from './same';

export const FACTS: Same<typeof english.FACTS> = {
  allows: 'la clase permite {min}–{max} {unit}',
  noTop: 'sin límite superior conocido',
  bases: '{shop} de rosca, base del taller; {iso}, base ISO',
  likely: 'es probable que deje {size}',
  drill: 'Broca',
  shoulder: 'Fondo cilíndrico a',
  fromFace: '{depth} desde la cara',
  pointAt: 'punta a {depth}',
  tapTo: 'Macho hasta',
  middle: 'a mitad de la clase: {depth}',
  centre: 'al extremo del punto de centrado, desde la cara',
  flat: 'punta plana, desde la cara',
  fullThread: 'Rosca completa',
  speed: 'Velocidad',
  sensible: 'lo sensato es {min}–{max}',
  feed: 'Avance',
  atThatSpeed: '{feed} a esa velocidad',
  inAndOut: '{time} de ida y vuelta',
  torque: 'Par, afilado',
  expected: 'se espera {band}',
  tooth: '{force} en el diente más cargado',
  ofBreaking: 'De lo que rompe el macho',
  worn: 'gastado, {share}',
  ofSpindle: 'Del husillo',
  sharpTap: 'macho afilado',
  chips: 'Viruta',
  room: 'pide {length} de agujero libre bajo el macho',
  mayPack: 'puede apretarse: mire el primer agujero',
};
