/** Lo que un plano deja por resolver a su proyectista, agujero por agujero. */

import type * as english from '../en/drawing';
import type { Same } from './same';

export const QUESTIONS: Same<typeof english.QUESTIONS> = {
  'hole-too-shallow': {
    short: 'Ningún macho llega: al agujero le faltan {by:length}, {byPitches:pitches}.',
    text: '[Se piden {fullThread:length} de rosca completa ({fullThreadPitches:pitches}).] [El agujero acaba a {limit:length}, así que quedan {room:length} bajo la rosca: {roomPitches:pitches}.] Un macho a máquina necesita {needed:length} hasta el fondo cilíndrico, {by:length} más de lo dibujado.[ Como está dibujado, son seguros {obtainable:length} de rosca completa.]',
  },
  'thread-deeper-than-hole': {
    short: 'La rosca está dibujada más honda que su agujero.',
    text: 'Se piden {fullThread:length} de rosca completa en un agujero de {depth:length} de profundidad. ¿Cuál de las dos vale?',
  },
  'thread-longer-than-part': {
    short: 'La rosca está dibujada más larga que el espesor de la pieza.',
    text: 'Se piden {fullThread:length} de rosca completa donde la pieza es más delgada. ¿Cuál de las dos vale?',
  },
  'no-room-below': {
    short: 'El macho no tiene sitio debajo: faltan {by:length}.',
    text: 'El macho debe pasar {to:length} más allá de la cara de abajo, {by:length} más de lo que hay.',
  },
  'spindle-too-small': {
    short: 'Demasiado par para este husillo.',
    text: 'Cortar esta rosca necesita un husillo de al menos {torque:torque}, que esta máquina no da. ¿Serviría un paso más fino, un tamaño menor o una rosca fresada?',
  },
  'too-hard-to-tap': {
    short: 'Demasiado duro para un macho.',
    text: 'El material es demasiado duro para un macho. ¿Se puede hacer la rosca antes de templar, o fresarla?',
  },
  'strip-strength': {
    short: 'La rosca puede barrerse antes de romperse su tornillo.',
    text: 'El agujero tiene {have:length} de rosca completa, {ratio:number} veces el largo con el que tornillo y rosca son igual de fuertes. Para que ceda antes el tornillo harían falta {wanted:length}. ¿Es necesario aquí, y qué clase de tornillo entra?',
  },
  'drill-outside-class': {
    short: 'El agujero que nombra el plano está fuera de la clase.',
    text: 'El plano nombra un agujero de {drawn:limit}. La clase de la rosca permite de {min:limit} a {max:limit}. ¿Se puede corregir el plano?',
  },
  'depth-not-clear': {
    short: 'La profundidad no está clara.',
    text: 'En esta línea no se pudo leer ninguna profundidad. ¿Es pasante el agujero? Si no, ¿qué profundidad llevan la rosca completa y el agujero?',
  },
  'face-not-square': {
    short: 'La cara está inclinada: ningún macho empieza ahí sin un plano previo.',
    text: 'El agujero empieza en una cara inclinada, donde ni broca ni macho entran rectos. ¿Se puede hacer antes un plano a escuadra con el agujero, y desde dónde se cuentan entonces las profundidades?',
  },
  'insert-which': {
    short: 'Lleva un inserto roscado: hay que confirmar su tipo y su largo.',
    text: 'Este agujero lleva un inserto roscado. ¿De qué tipo, de qué largo, y según qué norma se hace su agujero?',
  },
  'tapped-or-clearance': {
    short: 'Nombra un tornillo, un perno o una tuerca: ¿se rosca este agujero?',
    text: 'La línea nombra lo que entra en el agujero o lo atraviesa. ¿Se rosca este agujero para ello, o es de paso?',
  },
  'note-touches-all': {
    short: 'La línea {line:whole} habla de un proceso o de un servicio: ¿afecta a este agujero?',
    text: 'La línea {line:whole} de lo pegado nombra un proceso o un servicio sin agujero. ¿Afecta a este agujero, y se rosca antes o después?',
  },
  'depth-on-next-line': {
    short: 'La línea {line:whole} da una profundidad que no es de ningún agujero.',
    text: 'La línea {line:whole} de lo pegado da una profundidad y ningún agujero. ¿Es de este?',
  },
};

export const NOTE: Same<typeof english.NOTE> = {
  opening:
    'Pieza {part}: {count} de sus agujeros roscados necesitan una palabra suya antes de hacerse.',
  openingUnnamed:
    '{count} de los agujeros roscados de este plano necesitan una palabra suya antes de hacerse.',
  openingOne: 'Un agujero roscado de la pieza {part} necesita una palabra suya antes de hacerse.',
  openingOneUnnamed: 'Un agujero roscado de este plano necesita una palabra suya antes de hacerse.',
  hole: '{number}. {callout}, en {material}',
  options: 'Lo que ayudaría, de lo más barato a lo más caro:',
  assumed: 'Calculado con la entrada más larga de su clase, machos de punta plana y {clearance}.',
  clearance: 'el margen al fondo usual de la máquina',
  closing:
    '¿Cuáles de estas podemos anotar? Confírmelo por escrito, con la clase del tornillo y la carga que debe aguantar, y envíe el plano cambiado.',
  none: 'Nada de este plano necesita preguntarse.',
  notRead: 'No pudimos leer «{words}» en esta línea. ¿Qué pide?',
};

export const VERDICTS: Same<typeof english.VERDICTS> = {
  ready: 'Listo',
  caution: 'Cuidado',
  impossible: 'Imposible como está dibujado',
  unread: 'Sin leer',
};

export const CALLOUT: Same<typeof english.CALLOUT> = {
  through: 'pasante',
  fullThread: '{length} de rosca completa',
  hole: 'agujero',
  holeSize: 'agujero de {size}',
  deepTo: { shoulder: '{depth} hasta el fondo cilíndrico', point: '{depth} hasta la punta' },
  countersink: 'avellanado {diameter} × {angle}°',
  thick: '{length} de espesor ahí',
  entry: 'en una cara a {angle}°',
  crossing: {
    bore: 'cruzado por un agujero de {width}',
    slot: 'cruzado por una ranura de {width}',
  },
  crossed: 'cruzado por otro agujero',
  counterbore: 'lamado {diameter} × {depth} de profundidad',
  cored: 'en un agujero fundido',
  later: {
    harden: 'templado después',
    plate: 'recubierto después',
    anodise: 'anodizado después',
    weld: 'soldado después',
  },
  duty: {
    lifting: 'para izar',
    pressure: 'debe aguantar presión',
    structure: 'lleva una estructura',
    vehicle: 'en un vehículo',
    medical: 'en un aparato médico',
  },
  left: 'a izquierdas',
  insert: 'para un inserto de alambre',
  coating: 'con {least}–{most} de recubrimiento por superficie',
};
