/** Lo que se ha dado por supuesto, en frases cortas que caben en la hoja. */

import type * as english from '../en/assumptions';
import type { Same } from './same';

export const ASSUMPTIONS: Same<typeof english.ASSUMPTIONS> = {
  'full-thread-default': 'Rosca completa {depth:length}, lo usual: no se indicó',
  'drive-default': 'Husillo síncrono',
  'drill-point-default': 'Punta de la broca {angle:degrees}',
  'stop-clearance': 'Margen al fondo {pitches:pitches}',
  'tap-sharp-flat-nosed': 'Macho afilado de punta plana, longitud tomada en la punta',
  'tap-hss': 'Macho de acero rápido, sin recubrir',
  'web-typical': 'Núcleo del macho típico de su tipo[, {web:length}]',
  'drill-oversize': 'La broca abre unos {amount:length} de más',
  'drills-all-series': 'Brocas en mm, fracciones, números y letras en existencia',
  'spindle-torque-not-given': 'Par del husillo no indicado: no se juzga',
  'clear-below-unlimited': 'Nada estorba debajo del agujero',
  'chips-may-fall': 'La viruta puede caer por debajo',
  'blind-limit-none': 'El agujero puede ser tan hondo como pida la rosca',
  'class-assumed': 'Clase de tolerancia la usual: no se indicó',
  'screw-grade': 'Tornillo de {tensile:strength} de resistencia a tracción',
  'torque-band': 'Par cierto dentro de un factor {factor:number}, hacia arriba o hacia abajo',
  'worn-factor': 'Un macho gastado pide {factor:number} veces el par de uno afilado',
  'scaled-to-shop':
    'Par multiplicado por {factor:number} según lo que usted midió, cierto dentro de un factor {band:number}',
  'minor-limit-borrowed': 'Límite mayor del diámetro menor tomado del perfil corriente',
  'pipe-hole-straight':
    'Agujero taladrado recto, sin escariar cónico[; antes del escariador cónico sería {reamed:limit}]',
  'entry-square': 'Cara a escuadra con el agujero',
  'crossing-none': 'Nada lo cruza',
  'crossing-whole': 'Los {width:length} del cruce caen dentro de la rosca',
  'counterbore-none': 'Sin caja',
  'counterbore-datum':
    'Profundidades, límite y espesor cuentan desde el fondo de la caja, {depth:length} por debajo de la cara',
  'flat-datum':
    'Las profundidades cuentan desde el plano, {sink:length} por debajo de la cara en el eje',
  'drilled-solid': 'Taladrado en macizo',
  'later-none': 'Nada se le hace a la rosca después',
  'duty-none': 'No iza, no aguanta presión, no es de estructura, vehículo ni uso médico',
  'tap-length-stock': 'Macho corriente de {overall:length} de largo que alcanza {reach:length}',
  'tap-length-unknown': 'Largo del macho no conocido aquí: mire que llegue',
  'fluid-oil': 'Buen aceite de roscar; en seco cuesta más',
  'offset-on-point':
    'Punto de centrado de {centre:length}, longitud de herramienta tomada en su extremo',
};
