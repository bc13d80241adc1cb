/** La respuesta en una frase y la razón debajo. */

import type * as english from '../en/answer';
import type { Same } from './same';

export const ANSWER: Same<typeof english.ANSWER> = {
  tapTail: ', ',
  chamfer: 'entrada de {threads} hilos',
  chamferTail: '. ',
  drill: 'Broca de ',
  bore: 'Mandrine o escarie a ',
  noDrill: 'Mandrine o escarie el agujero dentro de su clase: ninguna broca en existencia sirve',
  shoulder: ', fondo cilíndrico a ',
  deep: '',
  fromFace: ' ({depth} desde la cara)',
  open: 'Abra el agujero fundido a ',
  through: ' de lado a lado; baje el macho hasta ',
  leftHand: 'A izquierdas: ',
  taper: {
    right: 'Macho de rosca cónica de tubo',
    left: 'Macho a izquierda de rosca cónica de tubo',
    tail: ', el calibre decide la profundidad. ',
  },
  none: {
    breaks: 'Aquí se rompería el macho',
    breaksTail: ': ya afilado llega al ',
    breaksEnd: ' del par que lo rompe.',
    heavy: 'Demasiado pesado a mano',
    heavyTail: ': ya afilado el macho pide ',
    depth: 'Ningún macho a máquina da ',
    depthTail: ' de rosca completa aquí.',
    depthMost: ' Lo más es ',
    depthWith: ', con una entrada de ',
    depthWithTail: ' hilos.',
    spindle: 'Demasiado para este husillo',
    spindleTail: ': un macho gastado pediría ',
    spindleHave: ', y da ',
    hard: 'Demasiado duro para un macho',
    hardTail: ': rosque antes de templar, o frese la rosca.',
    below: 'Falta sitio debajo',
    belowTail: ': el macho debe pasar ',
    belowEnd: ' más allá de la cara de abajo.',
    flat: 'Haga antes un plano',
    flatTail: ': en una cara tan inclinada la broca se va. Hágalo de ',
    flatEnd: ', a escuadra con el agujero.',
    synchronous: 'Solo en un husillo síncrono',
    synchronousTail:
      ': el macho cruza un hueco y debe mantener su paso. O rosque antes de hacer el hueco.',
    gone: 'No quedaría rosca',
    goneTail: ': lo que cruza el agujero la quita toda.',
    reach: 'Ningún macho corriente llega tan hondo',
    reachTail: ': debe entrar ',
    reachMost: ', y lo más es ',
    other: 'Ningún macho sirve para este agujero tal como está dibujado',
    otherTail: '.',
  },
};

export const BECAUSE: Same<typeof english.BECAUSE> = {
  blind: {
    back: 'Ciego, y este material ({material}) {chips}: la viruta tiene que subir.',
    stays: 'Ciego, y este material ({material}) {chips}: lo que cae cabe en ranuras rectas.',
    ahead: 'Ciego, y bajo la rosca hay sitio para la viruta que empuja hacia delante.',
    none: 'Ciego, y este material ({material}) se deja conformar: no hay viruta que sacar.',
  },
  through: {
    ahead: 'Pasante: la viruta puede salir por delante del macho.',
    stays: 'Pasante, y este material ({material}) {chips}: bastan ranuras rectas.',
    back: 'Pasante, pero la viruta tiene que subir.',
    none: 'Pasante, y una rosca conformada no suelta viruta.',
  },
  crossing:
    'Manda lo que ya cruza el agujero: el macho debe tener dientes en el metal durante todo el cruce.',
  taper:
    'Un macho cónico sigue cortando con todos sus hilos: pare cuando lo diga el calibre, no a una profundidad.',
  hand: 'A mano, un juego de ranuras rectas: gire hacia delante, gire hacia atrás, y la viruta se rompe.',
  longerWouldNeed:
    'Una entrada de {threads} hilos duraría más pero necesita {needed:length}[, {short:length} más de lo que permite el plano].',
  noneFits: {
    depth:
      'Incluso esa entrada necesitaría {needed:length} hasta el fondo cilíndrico para lo que pide, {short:length} más de lo que permite el plano.',
    spindle: 'El límite es el par, no la potencia: girar más despacio o más deprisa no lo baja.',
  },
};

export const READING: Same<typeof english.READING> = {
  metric: '{name} {series}, paso {pitch} mm',
  unified: '{name} de pulgada {series}, {tpi} hilos por pulgada',
  number: '{name} {series}, {tpi} hilos por pulgada',
  pipe: 'rosca de tubo {name}',
  class: 'clase {class}',
  classAssumed: 'clase {class} (la usual)',
  insert: 'agujero para inserto de hilo',
  special: 'especial',
  series: { coarse: 'de paso grueso', fine: 'de paso fino' },
};

export const GAUGE: Same<typeof english.GAUGE> = {
  plug: 'Calibre tapón de rosca {designation}, PASA y NO PASA[, {hand}]; tapón liso para el diámetro menor',
  left: 'a izquierdas',
  taper: 'Calibre tapón cónico {designation}: decide cuánto entra',
};
