/** Qué se podría cambiar cuando un agujero no se puede roscar como está dibujado. */

import type * as english from '../en/remedies';
import type { Same } from './same';

export const REMEDIES: Same<typeof english.REMEDIES> = {
  'deeper-hole': {
    title: 'Taladrar más hondo',
    text: 'Pida {to:length} hasta el fondo cilíndrico, {by:length} más de lo dibujado[; la punta de la broca acaba entonces a {toPoint:length}].',
  },
  'shorter-thread': {
    title: 'Acortar la rosca completa',
    text: 'Pregunte si bastan {to:length} de rosca completa, cortada con entrada de {threadsMin:number}–{threadsMax:number} hilos.[ Es {strength:number} veces el largo en que tornillo y rosca son igual de fuertes.]',
  },
  'finish-by-hand': {
    title: 'Acabar a mano',
    text: 'Siga con un macho de fondo de 1–1.5 hilos, a mano: {to:length} de rosca completa seguros, {toNominal:length} en el mejor caso. Saque antes la viruta y pare al primer tope firme.',
  },
  'thread-mill': {
    title: 'Fresar la rosca',
    text: 'Una fresa de roscar no necesita entrada y pide poco par[: {to:length} de rosca completa o algo más]. Tarda más, y la fresa tiene que caber en el agujero.',
  },
  'relief-groove': {
    title: 'Pedir una ranura de salida',
    text: 'Una ranura bajo la rosca recibe la entrada. Hay que hacerla antes de roscar, y debilita un fondo delgado.',
  },
  'through-hole': {
    title: 'Hacerlo pasante',
    text: 'Si nada hay detrás, un agujero pasante cuesta menos que uno ciego hondo y deja salir la viruta.',
  },
  'bigger-spindle': {
    title: 'Pasar a un husillo mayor',
    text: 'Busque una máquina que dé al menos {torque:torque} a la velocidad de roscado[, {most:torque} para cualquier tipo de macho].',
  },
  'form-tap-instead': {
    title: 'Conformar en su lugar',
    text: 'Un macho de conformar no tiene ranuras y es mucho más fuerte: gastado, llega al {share:percent} del par que lo rompe. Necesita su propia broca.',
  },
  'larger-hole': {
    title: 'Taladrar mayor dentro de la clase',
    text: 'Una broca de {diameter:limit} es la mayor que aún deja el agujero dentro de la clase; deja menos metal que cortar.',
  },
  'change-tap-early': {
    title: 'Cambiar el macho pronto',
    text: 'Un macho gastado llega al {worn:percent} del par que lo rompe. Cuente agujeros, halle los menos que gastaron uno y cambie a los tres cuartos de eso.',
  },
  'bore-or-ream': {
    title: 'Mandrinar o escariar el agujero',
    text: 'Ninguna broca en existencia lo deja dentro de la clase. Acábelo entre {min:limit} y {max:limit}.',
  },
  'more-room-below': {
    title: 'Hacer sitio debajo',
    text: 'El macho debe pasar {to:length} más allá de la cara de abajo: suba la pieza {by:length}, o quite lo que hay bajo el agujero.',
  },
  'tap-before-hardening': {
    title: 'Roscar antes de templar',
    text: 'Corte la rosca en blando, con la demasía que diga quien temple, y tápela. Por encima de 45 HRC no la repase: frésela con metal duro o rectifíquela.',
  },
  'flat-first': {
    title: 'Hacer antes un plano',
    text: 'Refréntelo o fréselo a {diameter:length}, a escuadra con el agujero, con una fresa que corte hasta el centro. Sin él, {loss:length} de la rosca tienen metal por un solo lado. Acaba {sink:length} por debajo de la cara en el eje, y las profundidades cuentan desde ahí.',
  },
  'tap-before-crossing': {
    title: 'Roscar antes, cruzar después',
    text: 'Pregunte si lo que cruza, de {width:length} de ancho, puede hacerse después de la rosca: así el macho encuentra metal entero. Después quite la rebaba y vuelva a calibrar.',
  },
  'longer-tap': {
    title: 'Conseguir un macho más largo',
    text: 'Debe alcanzar {needed:length} por delante de lo que estorba. Un macho largo o prolongado se tuerce y cede más: gírelo más despacio.',
  },
  'plug-or-vacuum-chips': {
    title: 'Recoger la viruta',
    text: 'Tape el otro lado o aspire la viruta, y revise la galería antes de cerrarla.',
  },
  'longer-engagement': {
    title: 'Más rosca completa',
    text: 'Para que el tornillo rompa antes de que se arranque la rosca, pida {to:length} de rosca completa[; con {matching:length} los dos son igual de fuertes].',
  },
  'softer-screw-or-insert': {
    title: 'Tornillo más débil, o un inserto',
    text: 'Si no caben {to:length} de rosca, pregunte si vale un tornillo de menor clase, o un inserto.',
  },
  'less-thread': {
    title: 'Pedir menos rosca',
    text: 'Unos {to:length} de rosca completa bastan para que el tornillo rompa antes, con la mitad más de reserva[; se piden {from:length}]. Pregunte al proyectista: menos rosca es menos riesgo para el macho.',
  },
  'next-size-or-finer': {
    title: 'Otra rosca',
    text: 'Este macho es débil para lo que corta.[ Un paso de {finer:length} en la misma medida quita menos metal.][ La medida siguiente es {next:length}.] Decide el proyectista.',
  },
  'ream-to-size': {
    title: 'Taladrar menor y escariar',
    text: 'Ninguna broca en existencia se queda con seguridad dentro de la clase. Taladre algo menor y escarie o mandrine entre {min:limit} y {max:limit}, o calibre cada agujero.',
  },
  'by-machine': {
    title: 'Roscarlo a máquina',
    text: 'Una máquina que dé al menos {torque:torque} a la velocidad de roscado lo gira derecho.',
  },
  'extruded-or-insert': {
    title: 'Conseguir más rosca',
    text: 'Para que rompa antes el tornillo, la rosca debería medir {to:length}. Un borde embutido, una tuerca soldada o remachada, o un inserto dan más rosca que el espesor de la chapa. El proyectista tiene que estar de acuerdo.',
  },
};
