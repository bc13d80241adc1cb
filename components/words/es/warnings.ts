/** Avisos junto a una respuesta: título y qué hacer. La lección es la del inglés. */

import { WARNINGS as ENGLISH } from '../en/warnings';
import type * as english from '../en/warnings';

export type { WarningWords } from '../en/warnings';

type Code = keyof typeof english.WARNINGS;

const WORDS: Record<Code, { title: string; text: string }> = {
  'tap-share-high': {
    title: 'Duro para el macho',
    text: 'Afilado, llega al {sharp:percent} del par que lo rompe; gastado, al {worn:percent}. Use un macho nuevo y buen aceite, cuente los agujeros y cámbielo pronto.',
  },
  'tap-will-break': {
    title: 'Un macho gastado se romperá',
    text: 'Afilado, llega al {sharp:percent} del par que lo rompe; gastado, al {worn:percent}. Lea qué más se puede hacer antes de empezar.',
  },
  'spindle-over': {
    title: 'Demasiado para el husillo',
    text: 'Un macho gastado pide {worn:torque}[; el husillo da {spindle:torque}]. El límite es el par, no la potencia, y girar más despacio o más deprisa no lo baja.',
  },
  'chips-ahead-no-room': {
    title: 'Aquí no va un macho de punta helicoidal',
    text: 'Empuja la viruta hacia delante, y apretada contra el fondo pide unos {needed:roughly} de agujero libre debajo; este agujero deja {have:length}. Sin ese sitio el macho se atasca y se rompe.',
  },
  'chips-must-not-fall': {
    title: 'Ninguna viruta por debajo',
    text: 'Haga subir la viruta o conforme la rosca. Tape o proteja el otro lado de todos modos, y mire antes de entregar la pieza.',
  },
  'thin-work': {
    title: 'Pieza delgada',
    text: 'El metal tiene {thickness:length} de espesor, {pitches:pitches}. Apóyelo por detrás y sujételo plano para que no se levante ni gire, y pregunte si tan pocos hilos bastan.',
  },
  'deep-thread': {
    title: 'Rosca honda',
    text: 'La rosca tiene {diameters:number} diámetros de profundidad. La viruta viaja más y el fluido entra peor, así que la velocidad se baja. Más allá de lo que necesita el tornillo, la profundidad solo añade riesgo.',
  },
  'work-hardens': {
    title: 'Se endurece al trabajarlo',
    text: 'Broca afilada, avance firme, sin detenerse, y nunca por debajo de {slowest:speed}. Aceite de roscar rico, o emulsión al 10 % o más. Una broca roma deja una pared dura que luego paga el macho.',
  },
  'springs-back': {
    title: 'Recupera',
    text: 'El metal se cierra sobre el macho tras el corte. Taladre hacia lo mayor que permita la clase, use un macho afilado con mucho destalonado, y calibre la rosca ya fría.',
  },
  dust: {
    title: 'Polvo',
    text: 'Este material deja polvo, no viruta. Aspírelo o mójelo; no lo respire ni lo sople. Guarde este macho para este material.',
  },
  'swarf-fire': {
    title: 'La viruta puede arder',
    text: 'Herramienta afilada, mucho fluido adecuado y viruta retirada a menudo. Sobre un fuego: extintor de clase D, nunca agua. Siga la ficha de datos de seguridad.',
  },
  'water-fire': {
    title: 'Nada de agua cerca del polvo',
    text: 'El polvo de magnesio saca hidrógeno del agua y sigue ardiendo en ella. Ningún fluido mezclado con agua, ni restos de emulsión en el depósito o la manguera: aceite mineral fluido, o en seco. No lo aspire con un aparato que no esté hecho para ello, guarde la viruta seca en un cubo de acero cerrado y tenga a mano polvo de clase D o arena seca. Siga la ficha de datos de seguridad y las normas de incendio de su taller.',
  },
  'left-hand': {
    title: 'Rosca a izquierdas',
    text: 'Macho a izquierdas, calibre a izquierdas, y un ciclo a izquierdas con el husillo al revés. La palabra cambia de un control a otro: mire su manual. Un macho a derechas girado al revés no corta nada.',
  },
  interrupted: {
    title: 'Lo cruza otro agujero',
    text: 'El corte para y arranca. Use un macho que mantenga varios dientes en el metal todo alrededor, baje la velocidad y quite la rebaba del agujero cruzado.',
  },
  plated: {
    title: 'Roscar más grande para el recubrimiento',
    text: 'El recubrimiento cierra el diámetro de flancos cuatro veces su espesor: aquí {pitchMin:limit} a {pitchMax:limit}. Rosque tanto más grande o tape el agujero, y calibre antes y después.',
  },
  'drill-at-risk': {
    title: 'La broca puede abrir de más',
    text: 'Las brocas abren un poco de más. Esta deja probablemente {likely:limit}[; la clase permite hasta {max:limit}]. Mida el primer agujero con un tapón liso, o tome la broca siguiente hacia abajo.',
  },
  'below-clearance': {
    title: 'Poco sitio debajo',
    text: 'El macho debe pasar {needed:length} más allá de la cara de abajo para acabar la rosca[, y hay {have:length}]. Calce la pieza o pase a una entrada más corta.',
  },
  'weak-when-stripped': {
    title: 'La rosca puede arrancarse antes de que rompa el tornillo',
    text: 'Para que ceda antes el tornillo, pida {wanted:length} de rosca completa; este agujero tiene {have:length}, {ratio:number} veces el largo en que los dos son igual de fuertes. Compara resistencias de metales y no asigna ninguna carga: pregunte al proyectista.',
  },
  'harden-after': {
    title: 'Demasiado duro para roscar',
    text: 'Rosque antes de templar y cuente con el crecimiento, o frese la rosca con una fresa de metal duro.',
  },
  'taper-pipe': {
    title: 'Rosca de tubo cónica',
    text: 'Se calibra por cuánto entra el calibre, no por dos límites. La broca y la profundidad salen de su propia norma, y esta página no aprueba una unión que aguante presión.',
  },
  'minor-limit-unknown': {
    title: 'Mayor diámetro menor desconocido',
    text: 'Para este perfil el límite mayor del diámetro menor no se conoce con confianza. Tómelo del plano o de la norma antes de elegir broca.',
  },
  'limits-computed': {
    title: 'Límites calculados',
    text: 'Este tamaño no está en la tabla de su norma. Los límites salen de las fórmulas de la norma: compruébelos antes de pedir un calibre.',
  },
  'mill-feed-setting': {
    title: '¿Qué avance cuenta el control?',
    text: 'Unos controles toman F en el centro de la fresa, otros en el filo. Con el equivocado, esta fresa va {factor:number} veces demasiado rápida o lenta: búsquelo en el manual y pruebe antes por encima de la pieza.',
  },
};

export const WARNINGS = Object.fromEntries(
  Object.entries(ENGLISH).map(([code, words]) => [code, { ...words, ...WORDS[code as Code] }]),
) as typeof english.WARNINGS;

/** Cuando incluso un macho gastado queda por debajo de lo que da el husillo. */
export const NEAR_SPINDLE: typeof english.NEAR_SPINDLE = {
  title: 'Cerca del límite del husillo',
  text: 'Un macho gastado pide {worn:torque} de los {spindle:torque} que da el husillo. Va con un macho nuevo y buen aceite; cambie el macho pronto y vigile la carga.',
};
