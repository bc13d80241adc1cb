/** Cómo se entendió un material escrito y qué escribir en su lugar. */

import type * as english from '../en/material';
import type { Same } from './same';

export const MATERIAL_READ: Same<typeof english.MATERIAL_READ> = {
  'material-read': 'Leído como {designation}: {row}.',
  'material-usual': 'Leído en su sentido habitual: {row}.',
  'material-state': 'Estado: {state}.',
  'material-hardness': 'Se planifica para {hb} HB, el extremo duro.',
  'material-hard-side':
    'Envejecido hasta su extremo duro, de 40 a 47 HRC: despacio, y el macho se gasta pronto. Pregunte la dureza.',
  'material-hardened':
    'Es su estado templado. Si la rosca se corta antes de templar, escriba el estado que tenga entonces.',
  bare: 'Leído como {row}.',
  chosen: 'La lista de abajo dice {row}, y eso se planifica.',
};

export const MATERIAL_ASKS: Same<typeof english.MATERIAL_ASKS> = {
  condition:
    '¿En qué estado? Añádalo, como recocido, HT, +QT, T6, H1150 o 30 HRC. Por ahora se planifica como {row}.',
  hardness: '¿Qué dureza tiene? Añádala, como 30 HRC o 280 HB. Por ahora se planifica como {row}.',
};

export const MATERIAL_PROBLEMS: Same<typeof english.MATERIAL_PROBLEMS> = {
  'material-empty': 'Escriba el material como figura en el plano.',
  'material-unreadable':
    '«{typed}» no se reconoce[: «{extra}» no se entiende]. Elija abajo su grupo; lo escrito queda en la hoja.',
  'material-ambiguous': '«{typed}» puede ser más de uno. Escriba {offers}, o elija de la lista.',
  'material-contradictory':
    '«{name}» y «{other}» no casan. Compruebe el plano, o elija de la lista.',
};

export const MATERIAL_OR = ' o ';

export const KIND_NAMES: Same<typeof english.KIND_NAMES> = {
  steel: 'acero',
  'plain-steel': 'acero',
  stainless: 'inoxidable',
  iron: 'fundición',
  aluminium: 'aluminio',
  'cast-aluminium': 'aluminio fundido',
  magnesium: 'magnesio',
  zinc: 'cinc',
  brass: 'latón',
  bronze: 'bronce',
  copper: 'cobre',
  titanium: 'titanio',
  nickel: 'níquel',
  plastic: 'plástico',
};
