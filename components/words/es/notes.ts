/** Lo que conviene decir junto a una respuesta. */

import type * as english from '../en/notes';
import type { Same } from './same';

export const NOTES: Same<typeof english.NOTES> = {
  'number-size-read': 'Leído como tamaño de número {size}.',
  'not-standard-pair':
    'No es una pareja de las listas normalizadas. Se trata como especial: sus límites se calculan, no son de tabla.',
  'class-assumed': 'Sin clase indicada: se toma {class}, la usual.',
  'coarse-assumed': 'Sin paso indicado: se toma el grueso, {pitch} mm.',
  'pitch-from-series': 'Paso tomado de {series}: {tpi} hilos por pulgada.',
  'dash-pitch': 'El número tras el guion se leyó como paso, {pitch} mm.',
  'decimal-read-as': '{typed} se leyó como {size}.',
  'old-series-name': '{typed} es el nombre antiguo de {series}.',
  'series-named': 'Esta pareja tiene nombre propio: {series}.',
  'external-root-name': '{typed} es una forma para tornillos; el agujero es {series}.',
  'did-you-mean-fraction':
    'Leído como {size} pulgadas. ¿Quería decir {fraction}? Escriba tamaño y paso, como {example}.',
  'six-h-not-tabulated': '6H no está en tabla para este paso; {class} es la clase usual.',
  'fit-internal-part': '{typed} es un ajuste; se leyó la parte del agujero, {class}.',
  'lower-case-class':
    '{typed} se leyó como {class}: mayúsculas para agujeros, minúsculas para tornillos.',
  'not-tabulated':
    'No está en la tabla de su norma: estos límites salen de las fórmulas de la norma.',
  'minor-max-unknown':
    'El mayor diámetro menor de este perfil no se conoce aquí con confianza: tómelo del plano.',
  'insert-minor-closer':
    'Para insertos de hilo el diámetro menor suele llevarse más ajustado[, hasta {minorMax:limit} como mucho].',
  'long-engagement':
    'Rosca larga: la tolerancia del diámetro de flancos es {factor:number} veces la usual.',
  'parallel-pipe-from-memory': 'La tolerancia de esta rosca de tubo es de memoria: compruébela.',
  'printed-cell':
    'La norma imprime uno de estos límites distinto de lo que da su fórmula; vale el impreso.',
  'pipe-name': '{typed} se leyó como {form}.',
  'gauging-dropped': 'La nota de calibrado {typed} no cambia el agujero y se dejó fuera.',

  // Una línea de un plano.
  'not-read': 'Sin leer: «{text}».',
  'through-assumed': 'Sin profundidad ni THRU: tomado como pasante.',
  'depth-unclear':
    'Aquí hay un número que no se entendió. Si es la profundidad, escriba ↧ o DEEP con él.',
  'depth-in-other-unit': '{typed} se leyó en la otra unidad: otra cosa no tiene sentido aquí.',
  'counterbore-not-planned':
    '«{text}» queda a su cargo: las profundidades de abajo cuentan desde su fondo.',
  'countersink-angle-assumed': 'El avellanado no trae ángulo: se tomó el usual.',
  'planned-at-least':
    'No caben los {drawn:length} enteros: la tolerancia admite {planned:length}, y eso se planifica.',
  'planned-at-deepest':
    'A {drawn:length} el agujero es poco hondo: la tolerancia admite {planned:length}, y eso se planifica.',
  'planned-deeper':
    'A {drawn:length}, que es lo mínimo, el agujero es poco hondo: se planifica más hondo.',
  'thread-depth-range':
    'Rosca completa[ al menos {least:length}][ a lo sumo {deepest:length}]; se planifica la cota dibujada.',
  'hole-depth-range':
    'Agujero[ al menos {least:length}][ a lo sumo {deepest:length}]; se planifica la cota dibujada.',
  typical: 'TYP: el plano habla de todos los agujeros iguales. Cuéntelos usted.',
};
