/** La nota para el proyectista cuyo agujero no se puede roscar como está dibujado. */

import type * as english from '../en/designer';
import type { Same } from './same';

export const DESIGNER: Same<typeof english.DESIGNER> = {
  asked:
    '{designation} en {material}: se piden {fullThread:length} de rosca completa en un agujero de no más de {limit:length} hasta {where}.',
  where: { shoulder: 'el fondo cilíndrico', point: 'la punta de la broca' },
  needs:
    'Para eso, un macho a máquina con entrada de {threads} hilos necesita {needed:length} hasta el fondo cilíndrico. Son {short:length} más de lo dibujado.',
  gives: 'El agujero como está dibujado da con seguridad: {list}.',
  givesNone: 'El agujero como está dibujado no deja rosca completa con ningún macho a máquina.',
  giveOne: '{obtainable:length} de rosca completa con entrada de {threads} hilos',
  options: 'Lo que ayudaría, de lo más barato a lo más caro:',
  ask: '¿Cuál de estas opciones podemos anotar en el plano? Confírmelo por escrito, con la clase del tornillo y la carga que debe aguantar.',
  clear: 'El agujero se puede roscar como está dibujado; nada que preguntar.',
};
