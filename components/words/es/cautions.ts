/** Los avisos usuales del roscado, uno por cada sitio donde alguien se puede hacer daño. */

import { CAUTION_GROUPS as GROUPS, CAUTIONS as ENGLISH } from '../en/cautions';
import type * as english from '../en/cautions';
import type { Same } from './same';

type Words = { title: string; text: string };

const WORDS: Record<english.CautionId, Words> = {
  entanglement: {
    title: 'Lejos de lo que gira',
    text: 'Sin guantes, anillos, corbatas ni mangas sueltas cerca de una broca o un macho que gira, y el pelo largo recogido. Un guante no se rasga: se lleva la mano. Si el trabajo pide guantes de todos modos, la empresa debe haber valorado antes ese riesgo.',
  },
  'part-spins': {
    title: 'Sujete la pieza',
    text: 'El par que corta la rosca intenta girar la pieza. Sujétela, o apóyela contra un tope que no ceda. Una mano no aguanta lo que hace girar un macho.',
  },
  'key-left-in': {
    title: 'La llave fuera antes de dar corriente',
    text: 'Quite la llave del portabrocas y el giramachos antes de que el husillo pueda arrancar, y nunca use un husillo con corriente para sujetar un macho que gira a mano: aíslelo primero.',
  },
  'reaching-in': {
    title: 'Pare y bloquee antes de meter la mano',
    text: 'Un ciclo parado no es una máquina segura. Pare, aísle y bloquee antes de acercar las manos a un macho atascado, y no toque los enclavamientos. Una parada de emergencia no mantiene al paso husillo y avance: libere el macho como diga el manual de la máquina, no moviendo los ejes.',
  },
  'flying-chips': {
    title: 'Proteja los ojos',
    text: 'Gafas con protección lateral donde gire o se golpee una herramienta, para quien trabaja y para quien mira; pantalla facial donde un macho pueda estallar. Cuando se saca un macho roto, nadie se pone en línea con él.',
  },
  'chips-by-hand': {
    title: 'Ningún dedo en el agujero',
    text: 'La viruta corta como una navaja, y el filo de una rosca nueva también. Husillo parado, y luego una brocha o un gancho. Nunca busque con el dedo rebabas o virutas dentro de un agujero roscado.',
  },
  'compressed-air': {
    title: 'No sople un agujero ciego',
    text: 'El aire devuelve viruta y fluido a la cara. Lave el agujero, séquelo con una mecha o aspírelo. Donde se limpie con aire, las reglas de EE. UU. piden menos de 30 psi con la boquilla tapada, una protección contra la viruta y gafas. Nunca sobre personas ni ropa.',
  },
  'wound-in': {
    title: 'Nada blando donde asoma el macho',
    text: 'El macho atrapa un trapo, un cordel o un tapón blando y lo enrolla, y con él la mano que lo sujeta. Cierre una galería o un taladro transversal con un tapón fuera del alcance del macho, lamine la rosca o rosque desde el otro lado. Cuente lo que mete y vuelva a contarlo al sacarlo.',
  },
  fluid: {
    title: 'Fluido en la piel, niebla en los pulmones',
    text: 'El fluido de corte puede causar dermatitis y asma. Mantenga su concentración y aspire la niebla, lávese, y avise pronto de un sarpullido o de opresión en el pecho. Una crema protectora no suple nada de eso. Su ficha de datos de seguridad dice qué es.',
  },
  sheets: {
    title: 'Aceites, pastas, disolventes: lea la ficha',
    text: 'Tenga la ficha de datos de seguridad donde se usa el producto, y la etiqueta en el recipiente al que lo pase. Algunos trabajos prohíben azufre o cloro en el fluido: pregunte antes de coger el bote.',
  },
  dust: {
    title: 'Polvo de fundición, latón, cobre al berilio y plásticos con fibra',
    text: 'Aspírelo en el agujero; no lo disperse soplando ni lo lleve a casa en la ropa. El latón con plomo y el cobre al berilio tienen reglas propias: averigüe qué barra es antes de cortarla en seco. La fibra de vidrio o carbono irrita y daña los pulmones, y el polvo de carbono provoca cortocircuitos.',
  },
  'swarf-fire': {
    title: 'El titanio y el magnesio arden',
    text: 'Herramienta afilada, sin rozar, mucho fluido adecuado y viruta retirada a menudo. Sobre un fuego, extintor de clase D o lo que diga la ficha de datos de seguridad. El agua lo empeora mucho. El magnesio no admite ningún fluido mezclado con agua: su polvo saca hidrógeno de ella. Sepa dónde está el extintor antes del primer agujero.',
  },
  'hand-tapping': {
    title: 'Roscar a mano',
    text: 'Un giramachos del tamaño del macho, las dos manos tirando por igual, y una postura en la que los nudillos no acaben en la pieza cuando el macho ceda. Un giramachos más largo solo rompe machos.',
  },
  'sharp-tools': {
    title: 'El macho corta antes de girar',
    text: 'Lleve y guarde los machos en fundas. Busque el desgaste con luz y lupa: ni el dedo ni un trapo por el filo. Mate los cantos de la pieza antes de pasarla.',
  },
  'broken-tap-cut': {
    title: 'Amolar o fresar un macho roto',
    text: 'Saltan trozos duros a gran velocidad. Puertas cerradas, pantalla facial, polvo aspirado. En una máquina rígida, no con un taladro de mano.',
  },
  'broken-tap-struck': {
    title: 'Nunca golpee duro contra duro',
    text: 'Un martillo o punzón templado sobre un macho templado lanza esquirlas. Si hay que aflojarlo a golpes, use un punzón blando y protección de ojos y oídos.',
  },
  'broken-tap-spark': {
    title: 'Electroerosión',
    text: 'El aceite del tanque puede arder. La pieza queda siempre sumergida, el interruptor de nivel funciona y nadie la deja sola. Siga el manual de la máquina.',
  },
  welding: {
    title: 'Soldar en un resto de macho o en un agujero',
    text: 'Humo, fuego, luz que quema y corriente perdida. Solo personal cualificado y autorizado para soldar allí, con las reglas del taller para trabajos en caliente: metal sin aceite, disolvente ni recubrimiento, humo aspirado, pantallas, careta, un extintor a mano, y el sitio vigilado después. La pinza de masa va en la pieza y cerca, y la pieza fuera de la máquina, para que la corriente no pase por sus rodamientos. Nunca en magnesio ni cerca de su viruta, ni en nada cerrado o que haya contenido combustible.',
  },
  'broken-tap-dissolved': {
    title: 'Disolver un macho roto',
    text: 'Los ácidos queman y echan vapores, y un baño caliente de alumbre escalda y desprende hidrógeno. Solo personal formado, con la ficha, extracción y recipiente etiquetado; nunca con una pieza de acero, que seguiría el camino del macho.',
  },
};

export const CAUTIONS = Object.fromEntries(
  Object.entries(ENGLISH).map(([id, { sources }]) => [
    id,
    { ...WORDS[id as english.CautionId], sources },
  ]),
) as unknown as Same<typeof english.CAUTIONS>;

const GROUP_HEADINGS = [
  'En el husillo',
  'Viruta y aire comprimido',
  'Fluido, polvo y fuego',
  'A mano',
  'Un macho roto',
];

export const CAUTION_GROUPS: typeof english.CAUTION_GROUPS = GROUPS.map(({ cautions }, index) => ({
  heading: GROUP_HEADINGS[index] ?? '',
  cautions,
}));

export const NOT_A_RATING: Same<typeof english.NOT_A_RATING> = {
  short:
    'Nada de lo que hay aquí asigna una carga ni aprueba una rosca para presión, izaje, estructuras, vehículos o uso médico.',
  long: 'Una rosca que aguanta presión, iza o transporta personas, sostiene una estructura, o sirve en un vehículo o en medicina se rige por su código y por un ingeniero responsable u otra persona cualificada. Su reparación también: un inserto o una soldadura en una rosca así necesita su aprobación por escrito. Este sitio calcula la geometría y las fuerzas de hacer un agujero. No da cargas admisibles, no aprueba roscas de presión y no acepta reparaciones.',
  defer:
    'El manual de su máquina, las fichas de datos de seguridad, las reglas de su lugar de trabajo y las personas habilitadas para decidir van antes que todo lo dicho aquí.',
};
