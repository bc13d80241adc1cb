/** Las palabras de lo que el taller ha leído por sí mismo. */

import type * as english from '../../../en/calculators/torque/shop';
import type { Same } from '../../same';

export const SHOP: Same<typeof english.SHOP> = {
  heading: 'Su taller',
  none: 'En esta respuesta no hay ningún par suyo. Escriba uno en «Un par leído en la máquina»; luego se puede guardar aquí, para esta rosca y este material en esa máquina.',
  form: 'Guardar esta lectura',
  machine: 'Máquina en que se leyó',
  machineHint: 'Como usted la llama, por ejemplo VMC-A. La lectura vale solo para esa máquina.',
  machineMissing: 'Escriba la máquina: en otra el mismo par se lee distinto.',
  keep: 'Guardarla en este dispositivo',
  kept: 'Guardada en este dispositivo.',
  fileName: 'lectura-de-par.json',
  remove: 'Quitar',
  learned: 'En {machine}: {factor} veces lo del manual',
  from: 'de {count} lecturas suyas, la última del {newest}',
  fromOne: 'de su lectura del {newest}',
  sharp: 'Par, afilado',
  worn: 'Par, gastado',
  share: 'De lo que rompe el macho, gastado',
  between: 'se espera entre {band}',
  disagree: 'Sus lecturas no concuerdan',
  disagreeText:
    'Distan más del doble entre sí. Algo fue distinto: el agujero, el aceite, el macho o el medidor. Quite la que menos confianza le dé.',
  entry: '{taken}: {torque}, {style}, {edge}',
};
