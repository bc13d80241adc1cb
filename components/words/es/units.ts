/** Palabras entre números: lo que se cuenta, y nombres de medidas. */

import type * as english from '../en/units';
import type { Same } from './same';

export const COUNTED: Same<typeof english.COUNTED> = {
  threads: ['hilo', 'hilos'],
  pitches: ['paso', 'pasos'],
};

export const MEASURED: Same<typeof english.MEASURED> = {
  diameters: '{count} × diámetro',
  times: '{count} veces',
  letter: 'letra {name}',
  unknown: '(no se sabe)',
};
