/** Palabras que los campos, los avisos y el cambio de unidades llevan a cada página. */

import type * as english from '../en/fields';
import type { Same } from './same';

export const FIELDS: Same<typeof english.FIELDS> = {
  optional: '(opcional)',
  error: 'Error:',
};

export const LEVELS: Same<typeof english.LEVELS> = {
  note: 'Nota',
  amber: 'Cuidado',
  stop: 'Alto',
};

export const UNITS: Same<typeof english.UNITS> = {
  lengthsIn: 'Longitudes en',
  mm: 'mm',
  in: 'pulgadas',
  readIn: {
    mm: 'Aquí las profundidades van en mm.',
    in: 'Aquí las profundidades van en pulgadas.',
  },
  notSaved: 'Sin guardar para su próxima visita.',
  turnTo: { mm: 'Usar mm', in: 'Usar pulgadas' },
};
