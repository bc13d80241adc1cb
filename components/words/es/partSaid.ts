/** Lo que se dijo de la pieza alrededor del agujero, en pocas palabras, para la hoja. */

import type * as english from '../en/partSaid';
import type { Same } from './same';

export const PART_SAID: Same<typeof english.PART_SAID> = {
  slant: 'Cara a {angle}° de la escuadra',
  slantFlat: 'Cara a {angle}° de la escuadra, antes un plano',
  counterbore: 'Caja de {diameter}, {depth} de hondo',
  bore: {
    before: 'Lo atraviesa un agujero de {width}, hecho antes',
    after: 'Lo atraviesa un agujero de {width}, hecho después',
  },
  boreFrom: ', desde {from}',
  slot: {
    before: 'Ranura de {width} a lo largo, hecha antes',
    after: 'Ranura de {width} a lo largo, hecha después',
  },
  interrupted: 'Cruzado, sin saber el ancho',
  lost: 'rosca perdida {length}',
  cored: 'Agujero de fundición',
  later: 'Después: {processes}',
  processes: { harden: 'templado', plate: 'baño', anodise: 'anodizado', weld: 'soldadura' },
  duty: {
    lifting: 'Izado: no se juzga',
    pressure: 'Presión: no se juzga',
    structure: 'Estructura: no se juzga',
    vehicle: 'Vehículo: no se juzga',
    medical: 'Uso médico: no se juzga',
  },
};
