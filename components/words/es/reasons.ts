/** Por qué un macho va primero, sirve o no sirve. */

import type * as english from '../en/reasons';
import type { Same } from './same';

export const REASONS: Same<typeof english.REASONS> = {
  'chips-go-ahead': 'Empuja la viruta hacia delante.',
  'chips-come-back': 'Hace subir la viruta por el agujero y la saca por la boca.',
  'chips-stay': 'Deja la viruta en sus ranuras.',
  'no-chips': 'No hace viruta: aparta el metal, no lo corta.',
  'suits-short-chips':
    'Este metal da viruta corta, y la viruta corta puede quedarse en ranuras rectas.',
  'chips-wrong-way': 'No es hacia donde este agujero las quiere.',
  'chips-ahead-no-room':
    'Apretaría la viruta contra el fondo: pide unos {needed:roughly} de agujero libre bajo el macho[, y hay {have:length}].',
  'chips-ahead-fit':
    'Empuja la viruta hacia delante, y hay sitio: pide unos {needed:roughly} de agujero libre bajo el macho[; hay {have:length}].',
  'chips-must-not-fall': 'Echaría la viruta por debajo, donde no debe caer.',

  reaches: 'Llega[, y deja {room:pitches} bajo la rosca completa].',
  'does-not-reach':
    'No llega: con su entrada más larga necesita {needed:length} hasta el fondo cilíndrico[; el plano permite {have:length}].',
  'below-clearance':
    'No puede pasar: pide {needed:length} libres bajo la pieza[; hay {have:length}].',
  'chamfer-usual-blind':
    'Una entrada de {min:number}–{max:number} hilos es la usual en un agujero ciego: larga para durar, corta para caber.',
  'chamfer-usual-through':
    'Una entrada de {min:number}–{max:number} hilos es la usual en un agujero pasante: arranca bien y dura.',
  'chamfer-shorter-than-wanted':
    'Solo {min:number}–{max:number} hilos de entrada reparten el corte: cada diente carga más y se gasta antes de lo necesario aquí.',
  'chamfer-longer-than-wanted':
    'Su entrada de {min:number}–{max:number} hilos es más larga que la usual aquí: más que taladrar y que roscar.',
  'thin-work-never-fully-engaged':
    'La pieza tiene solo {pitches:pitches} de espesor, menos que el largo de la entrada: los dientes nunca cortan todos a la vez y el par no llega a su valor pleno.',

  'not-formable': 'Este metal no se deja conformar: se agrieta o se desmenuza.',
  'form-marginal':
    'Este metal está cerca del límite de lo que puede conformar un macho; pruebe antes en chatarra.',
  'form-hole':
    'Quiere su propio agujero, {diameter:length}[, para {percent:threadPercent} en la escala de conformado], bien ajustado.',
  'form-first-no-chips': 'Aquí no puede caer viruta, y un macho de conformar no la hace.',

  'low-helix':
    'Elija poca hélice, unos 10–15°: en este metal una fuerte es demasiado débil en el filo.',
  'weaker-core': 'Su núcleo es más débil que el de los otros machos de corte.',
  'tap-will-break': 'Gastado, llegaría al {worn:percent} del par que lo rompe.',
  'spindle-over': 'Gastado pide {worn:torque}[, y el husillo da {spindle:torque}].',
  'too-hard': 'El metal es demasiado duro para un macho de acero rápido.',
  'hand-mismatch': 'Corta hacia la otra mano.',
  'not-stocked-usually': 'Pocos talleres lo tienen en el cajón.',
  'mill-limits':
    'Una fresa de roscar llega casi al fondo[: {fullThread:length} de rosca completa]. Pide poco par, tarda más, y se planea con la tabla de su fabricante.',
  'mill-needs-cnc': 'Necesita una máquina que se mueva en hélice bajo control.',
  'mill-growth-inside':
    'Sus dientes no tienen paso, así que ensanchan el diámetro medio hasta {growth:limit}; la clase admite {tolerance:limit} en total.',
  'mill-growth-half':
    'Sus dientes no tienen paso, así que ensanchan el diámetro medio hasta {growth:limit}, el {share:percent} de los {tolerance:limit} que admite la clase. Elija una fresa más pequeña o calibre con cuidado la primera rosca.',
  'mill-growth-over':
    'Es demasiado grande para esta rosca: sus dientes ensanchan el diámetro medio hasta {growth:limit}, y la clase admite {tolerance:limit} en total. Elija una fresa más pequeña, o una con el perfil corregido por su fabricante para esta rosca.',
  'mill-reach-short':
    'Su cuello la deja entrar {have:length}, y esta rosca necesita {needed:length}.',
  'mill-slender':
    'Alcanza {reach:length}, {diameters:times} su propio diámetro, y flexa. Dé una primera pasada más ligera y añada una pasada de repaso.',
  'mill-too-slender':
    'Alcanza {reach:length}, {diameters:times} su propio diámetro: demasiado esbelta para este metal. Elija una fresa más grande o una rosca más corta.',
  'mill-near-floor':
    'Solo quedan {pitches:pitches} bajo la rosca completa. Compruebe cuánto sobresale la punta de la fresa por debajo de su diente más bajo.',
  'mill-no-room':
    'Solo quedan {room:length} bajo la rosca completa. El diente más bajo necesita más para entrar[; se pueden obtener {obtainable:length} de rosca completa].',
  'mill-hole-outside':
    'Un agujero de {hole:limit} queda fuera de la clase, que admite de {min:limit} a {max:limit}.',
  'mill-feed-at-centre':
    'El filo avanza a {teeth:feed} y el centro de la fresa a {centre:feed}. Dé al control el que él cuenta: el otro se equivoca en un factor de {factor:number}.',
  'mill-passes':
    'Pasadas en profundidad: {passes:whole}, cada una con más o menos la misma área de la ranura.',
  'mill-speed-limited': 'El husillo gira como mucho a {rpm:rpm}; la fresa admitiría {wanted:rpm}.',
  rubs: 'Cada diente toma solo {chip:limit}: tan poco que roza y endurece la pared en vez de cortar.',
  'breaks-sharp': 'Ya afilado llegaría al {sharp:percent} del par que lo rompe: no saldría entero.',
  'form-too-large':
    'Apenas se hacen machos de conformar de más de {most:length}: pide demasiado par mover tanto metal.',
  'form-special-size':
    'Por encima de {usual:length} un macho de conformar es un pedido especial en este metal, y exige un husillo muy fuerte.',
  'taper-pipe-tap':
    'Los machos de rosca cónica de tubo vienen con una sola entrada, de unos {min:number} a {max:number} hilos, con ranuras rectas o con un diente sí y otro no. El calibre decide la profundidad.',
  'turns-lightest':
    'De los machos que sirven es el que gira más ligero: el que mejor conviene al agujero pide gastado {worn:torque}, y el husillo no los da.',
  'not-by-hand': 'Es un macho de máquina: a mano no se gira con bastante regularidad.',
  'by-hand-set':
    'Un juego de mano tiene ranuras rectas: gire hacia delante, gire hacia atrás, y la viruta se rompe.',
  'by-hand-single':
    'Se puede girar a mano si entra derecho, pero está hecho para máquina y no es un juego de mano.',
  'too-heavy-by-hand':
    'Ya afilado pide {sharp:torque}; por encima de {most:torque} ningún giramachos se gira derecho a mano.',

  'no-drill-inside': 'Ninguna broca en existencia deja el agujero que quiere.',
  'needs-flat':
    'La cara se inclina {angle:number}°: pide un plano de {diameter:length} antes de taladrar nada.',
  'needs-synchronous': 'Al cruzar un hueco solo un husillo síncrono mantiene el paso del macho.',
  'no-thread-left': 'Lo que cruza quita {lost:length}: toda la rosca completa.',
  'no-stock-tap':
    'Ningún macho corriente llega: debe entrar {needed:length}, y lo más es {most:length}.',
  'bridges-crossing':
    'El hueco tiene {gap:pitches} y su entrada {min:number}–{max:number} hilos: si es más larga que el hueco, siempre tiene dientes en el metal. Mídala.',
  'drops-into-crossing':
    'El hueco tiene {gap:pitches}, más que su entrada de {min:number}–{max:number} hilos: todos sus dientes de corte salen a la vez del metal y vuelven a él de golpe.',
  'catches-in-crossing':
    'El filo de una hélice fuerte se engancha donde vuelve a empezar la pared.',
  'fits-if-deeper': 'Sirve si el agujero puede ser {by:length} más hondo.',
  'fits-if-shorter-thread': 'Sirve si bastan {to:length} de rosca completa.',
  'fits-if-room-below': 'Sirve con {by:length} más de sitio bajo la pieza.',
  'fits-if-spindle': 'Sirve en un husillo que dé {torque:torque}.',
  'fits-if-chips-may-fall': 'Sirve si la viruta puede caer por debajo.',
};

export const ROUGH_REASONS: typeof english.ROUGH_REASONS = {
  'fits-if-deeper': 'Sirve si el agujero puede ser unos {by:roughly} más hondo.',
};
