/** Nombres de las cosas: materiales, tipos de macho, entradas, husillos. */

import type * as english from '../en/names';
import type { Same } from './same';
import { MATERIAL_GROUPS as GROUPS } from '../en/names';

export const MATERIALS: Same<typeof english.MATERIALS> = {
  'steel-free': 'Acero de fácil mecanizado (12L14, 11SMn30)',
  'steel-low': 'Acero bajo en carbono (1018, S235)',
  'steel-medium': 'Acero medio en carbono (1045, C45)',
  'steel-alloy': 'Acero aleado, recocido (4140, 42CrMo4)',
  'steel-alloy-30hrc': 'Acero aleado, 28–32 HRC',
  'steel-40hrc': 'Acero, unos 40 HRC',
  'steel-hard': 'Acero templado, 45 HRC o más',
  'stainless-ferritic': 'Inoxidable ferrítico o martensítico (430, 420)',
  'stainless-free': 'Inoxidable de fácil mecanizado (303)',
  'stainless-austenitic': 'Inoxidable austenítico (304, 316)',
  'stainless-duplex': 'Inoxidable dúplex (2205)',
  'stainless-ph': 'Inoxidable endurecible por precipitación (17-4)',
  'iron-grey': 'Fundición gris',
  'iron-ductile': 'Fundición dúctil',
  'al-wrought': 'Aluminio forjado o laminado (6061, 6082)',
  'al-high-strength': 'Aluminio de alta resistencia (7075, 2024)',
  'al-cast': 'Aluminio fundido, hasta 10 % de silicio',
  'al-cast-high-si': 'Aluminio fundido, más de 10 % de silicio',
  'brass-free': 'Latón de fácil mecanizado',
  magnesium: 'Magnesio (AZ91, AZ31)',
  zinc: 'Cinc fundido a presión',
  bronze: 'Bronce',
  copper: 'Cobre y latón blando',
  plastic: 'Plástico (acetal, nailon)',
  'plastic-filled': 'Plástico con fibra de vidrio o carbono',
  titanium: 'Titanio (Ti-6Al-4V)',
  nickel: 'Aleaciones de níquel (718, 625)',
};

export const MATERIALS_SHORT: Same<typeof english.MATERIALS_SHORT> = {
  'steel-free': 'acero de fácil mecanizado',
  'steel-low': 'acero bajo en carbono',
  'steel-medium': 'acero medio en carbono',
  'steel-alloy': 'acero aleado recocido',
  'steel-alloy-30hrc': 'acero aleado de 28–32 HRC',
  'steel-40hrc': 'acero de unos 40 HRC',
  'steel-hard': 'acero templado',
  'stainless-ferritic': 'inoxidable ferrítico o martensítico',
  'stainless-free': 'inoxidable de fácil mecanizado',
  'stainless-austenitic': 'inoxidable austenítico',
  'stainless-duplex': 'inoxidable dúplex',
  'stainless-ph': 'inoxidable endurecible por precipitación',
  'iron-grey': 'fundición gris',
  'iron-ductile': 'fundición dúctil',
  'al-wrought': 'aluminio forjado o laminado',
  'al-high-strength': 'aluminio de alta resistencia',
  'al-cast': 'aluminio fundido',
  'al-cast-high-si': 'aluminio fundido con mucho silicio',
  'brass-free': 'latón de fácil mecanizado',
  magnesium: 'magnesio',
  zinc: 'cinc fundido a presión',
  bronze: 'bronce',
  copper: 'cobre',
  plastic: 'plástico',
  'plastic-filled': 'plástico con fibra',
  titanium: 'titanio',
  nickel: 'aleación de níquel',
};

const GROUP_LABELS = [
  'Acero',
  'Acero inoxidable',
  'Fundición',
  'Aluminio',
  'Magnesio y cinc',
  'Latón, bronce y cobre',
  'Titanio y níquel',
  'Plástico',
];

/** The same materials in the same order under Spanish headings. */
export const MATERIAL_GROUPS: typeof english.MATERIAL_GROUPS = GROUPS.map(({ ids }, index) => ({
  label: GROUP_LABELS[index] ?? '',
  ids,
}));

export const TAP_STEELS: Same<typeof english.TAP_STEELS> = {
  hss: 'Acero rápido',
  'hss-e': 'Acero rápido con cobalto',
  pm: 'Acero pulvimetalúrgico',
  carbide: 'Metal duro',
};

export const COATED = '{steel}, recubierto';

export const STYLES: Same<typeof english.STYLES> = {
  'spiral-point': { name: 'Punta helicoidal', before: 'Macho de punta helicoidal' },
  'spiral-flute': { name: 'Ranura helicoidal', before: 'Macho de ranura helicoidal' },
  'straight-flute': { name: 'Ranura recta', before: 'Macho de ranura recta' },
  form: { name: 'Macho de conformar', before: 'Macho de conformar' },
  'thread-mill': { name: 'Fresa de roscar', before: 'Fresa de roscar' },
};

export const CHAMFERS: Same<typeof english.CHAMFERS> = {
  taper: 'cónica',
  plug: 'intermedia',
  'semi-bottoming': 'corta',
  bottoming: 'de fondo',
};

export const DRIVES: Same<typeof english.DRIVES> = {
  synchronous: {
    name: 'Síncrono',
    hint: 'roscado rígido: el control lleva giro y avance al paso',
  },
  floating: {
    name: 'Portamachos flotante',
    hint: 'el portamachos cede un poco, hacia dentro y hacia fuera',
  },
  'reversing-head': {
    name: 'Cabezal inversor',
    hint: 'el cabezal hace volver al macho por sí solo',
  },
  hand: { name: 'A mano', hint: 'giramachos, con una guía que lo mantenga a escuadra' },
};

export const CHIP_FORMS: Same<typeof english.CHIP_FORMS> = {
  long: 'da viruta larga y enredada',
  medium: 'da viruta tenaz de largo medio',
  short: 'da viruta corta',
  needles: 'se rompe en agujas',
  powder: 'se deshace en polvo',
};

export const HANDS: Same<typeof english.HANDS> = { right: 'a derechas', left: 'a izquierdas' };

export const CHAMFER_SAID: Same<typeof english.CHAMFER_SAID> = {
  all: '{threads} hilos, {name}{form}',
  form: ' (forma {letter})',
};

export const LEFT_HAND = 'A izquierdas: {style}';
