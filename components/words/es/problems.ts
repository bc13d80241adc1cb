/** Qué falla en un dato y qué escribir en su lugar. */

import type * as english from '../en/problems';
import type { Same } from './same';

export const OR = ' o ';

export const FAMILIES: Same<typeof english.FAMILIES> = {
  'multi-start': 'las roscas de varias entradas',
  trapezoidal: 'las roscas trapezoidales',
  acme: 'las roscas ACME',
  whitworth: 'las roscas Whitworth',
  ba: 'las roscas BA',
  buttress: 'las roscas en diente de sierra',
  round: 'las roscas redondas',
  conduit: 'las roscas de conducto y de lámpara',
  'other-pipe': 'esta clase de rosca de tubo',
  miniature: 'las roscas miniatura',
};

export const PROBLEMS: Same<typeof english.PROBLEMS> = {
  empty: 'Escriba la rosca como la da el plano, como M8x1.25-6H o 1/4-20 UNC-2B.',
  unreadable:
    '«{typed}» no se lee como una rosca. Escríbala como M8x1.25-6H, 1/4-20 UNC-2B o #10-32.',
  'extra-words': '«{extra}» no es parte de una rosca. [Pruebe {suggestion}.]',
  'metric-letter-missing': 'Ponga M delante de una rosca métrica: {suggestion}.',
  'external-class':
    '{class} es una clase de tornillos. Los agujeros llevan 6H, 2B y parecidas[: {suggestion}].',
  'internal-grade':
    'No hay clase {class} para un agujero. Los métricos llevan grados 4 a 8, como 6H; los unificados llevan 1B, 2B o 3B.',
  'class-of-other-system':
    '{class} es del otro sistema: 6H es métrica, 2B es unificada. Pruebe {suggestion}.',
  'class-letter-missing': 'A la clase le falta su letra: {suggestion}.',
  'class-as-pitch': '{class} es una clase de tolerancia. Ponga un guion delante: {suggestion}.',
  'length-not-needed':
    '{length} parece el largo de un tornillo. Para un agujero basta la rosca: {suggestion}.',
  'series-pitch-mismatch':
    '{size} {series} no tiene ese paso[: tiene {seriesTpi} hilos por pulgada]. [Ese paso es {pairSeries}.] Escriba {offers}.',
  'pitch-missing': '¿Qué paso? [Escriba {offers}.]',
  'which-pitch': '«{typed}» no está en ninguna lista de roscas. Escriba {offers}.',
  'which-pipe': '¿Qué rosca de tubo? Escriba {offers}.',
  'pitch-too-large':
    'Un paso de [{pitch} mm][{tpi} hilos por pulgada] es demasiado grueso para {size}. ¿Es un largo[, o son {pitch} hilos por pulgada]?',
  'pitch-too-fine':
    'Un paso de [{pitch} mm][{tpi} hilos por pulgada] es demasiado fino para {size}. Escríbalo como M8x1 o 1/4-20.',
  'no-such-number-size': 'No hay tamaño de número {number}. Son #0 a #6, #8, #10 y #12.',
  'no-such-inch-size':
    'No hay tamaño en pulgadas {size}. Van por dieciseisavos, como 5/16, o en decimal, como .3125.',
  'improper-fraction': '{fraction} es una fracción impropia. Escriba {offers}.',
  'no-such-pipe-size':
    '{form} no existe en {size}. Los tamaños de tubo son 1/16, 1/8, 1/4, 3/8, 1/2, 3/4, 1 y mayores.',
  'external-pipe': 'R es la rosca cónica del tubo. Para el agujero escriba {offers}.',
  'not-covered':
    'Reconocida, pero aquí no se tratan {family}. Sí las métricas M y MJ, las unificadas y las de tubo.',
  'size-out-of-range':
    '{size} queda fuera de los tamaños tratados aquí, M1 a M300 y #0 a 6 pulgadas.',

  'taper-pipe':
    '{designation} se calibra por cuánto entra el calibre, así que no tiene límites de diámetro.',
  'no-limits-held':
    'Los límites de {designation} no se conocen aquí con confianza. Tómelos de la norma.',
  'outside-tolerances':
    '{designation} queda fuera de los tamaños y pasos del sistema de tolerancias. Tome sus límites del plano.',
  'class-unknown':
    'El sistema de tolerancias no tiene clase {class} para {designation}. Deje la clase vacía para la usual.',

  'full-thread-not-positive':
    'La rosca completa debe ser más de 0, como 16. Déjela vacía para 1.5 diámetros.',
  'thickness-not-positive': 'El espesor debe ser más de 0, como 12.',
  'limit-not-positive':
    'Escriba hasta dónde puede llegar el agujero, más de 0, como 22. Déjelo vacío si nada estorba.',
  'own-name-missing': 'Escriba cómo llama al material.',
  'own-name-too-long': 'Deje el nombre en 40 letras.',
  'own-group-unknown': 'Elija el material al que más se parece el suyo.',
  'own-hardness-out-of-range': 'La dureza debe ser de un metal, como 30 HRC, 180 HB o 190 HV.',
  'own-kc-out-of-range': 'La fuerza específica kc1.1 debe estar entre 50 y 8000 N/mm², como 1800.',
  'own-mc-out-of-range': 'El exponente mc debe estar entre 0 y 0.5, como 0.25.',
  'own-mc-alone':
    'El exponente mc no dice nada sin kc1.1. Escríbalo también, o deje los dos vacíos.',
  'own-like-other-group': 'Elija un material del mismo grupo que el suyo.',
  'number-not-finite': 'Escriba un número, como 16 o 12.5.',
  'depth-absurd':
    'Es más hondo de lo que llega ningún macho. Escriba la profundidad en mm, o mire si quería pulgadas.',

  'thread-deeper-than-hole':
    'La rosca completa es más honda de lo que puede ser el agujero. Escriba menos rosca o un agujero más hondo.',
  'full-thread-over-thickness':
    'La rosca completa es más larga que el espesor de la pieza. Escriba el espesor o menos.',
  'clear-below-negative':
    'El sitio debajo debe ser 0 o más, como 30. Déjelo vacío si nada estorba.',
  'hole-unknown':
    'Elija pasante o ciego, y para un ciego si su límite va al fondo cilíndrico o a la punta.',
  'material-unknown': 'Elija un material de la lista.',
  'drill-point-out-of-range':
    'La punta de la broca debe estar entre 60° y 180°, como 118. 180 es fondo plano.',
  'web-out-of-range':
    'El núcleo del macho debe estar entre nada y el diámetro de la rosca, medido en el fondo de las ranuras.',
  'external-centre-out-of-range':
    'Escriba cuánto sobresale el punto de centrado de la punta del macho, 0 o más, como 2.',
  'tool-unknown': 'Elija en la lista de qué es el macho.',
  'coating-out-of-range':
    'Escriba lo menos y lo más que crece una superficie, primero lo menos, como 0.005 y 0.010.',
  'measured-out-of-range': 'El par medido debe ser más de 0 N·m, como 4.5.',
  'learned-out-of-range':
    'El par guardado de su taller es más de diez veces, o menos de un décimo, de lo previsto aquí. Quítelo y mida otra vez.',
  'drive-unknown': 'Elija un husillo de la lista.',
  'drill-series-unknown': 'Elija brocas de la lista: en mm, fracción, número o letra.',
  'spindle-out-of-range':
    'El par y la velocidad del husillo deben ser más de 0, como 30 N·m y 3000 rev/min.',

  'entry-out-of-range': 'La cara puede inclinarse de 0° a 60°, por ejemplo 10.',
  'flat-through-part':
    'Un plano en una cara tan inclinada atravesaría la pieza. Compruebe el ángulo y el espesor.',
  'crossing-kind-unknown': 'Elija si cruza el agujero otro agujero o una ranura.',
  'crossing-width-out-of-range': 'Escriba el ancho del cruce, más de 0, por ejemplo 8.',
  'crossing-from-out-of-range':
    'Escriba a qué profundidad empieza el cruce, 0 o más, por ejemplo 10. Déjelo vacío si nadie lo sabe.',
  'crossing-cut-unknown': 'Elija si se hace antes o después de roscar.',
  'counterbore-out-of-range': 'Escriba el ancho de la caja, más de 0, por ejemplo 14.',
  'counterbore-depth-out-of-range': 'Escriba la profundidad de la caja, más de 0, por ejemplo 8.',
  'counterbore-narrow':
    'La caja debe ser tan ancha como la rosca o más, o no entra ningún macho. ¿Es la broca de roscar?',
  'cored-unknown': 'Diga sí o no: ¿el agujero sale de fundición?',
  'later-unknown':
    'Elija de la lista lo que se hace después: templar, dar un baño, anodizar o soldar.',
  'duty-unknown': 'Elija el servicio de la lista: izado, presión, estructura, vehículo o médico.',

  'empty-line': 'Esta línea está vacía.',
  'no-thread':
    'No se encontró ninguna rosca en esta línea. Póngala, como M8x1.25-6H ↧16, o quite la línea.',
  'count-absurd': '{typed} agujeros son más de los que tiene una pieza. Mire el número antes de ×.',
  'no-tapped-hole':
    'Apartada: nombra {words}, y nada dice que se rosque. Escriba TAP, una clase o una profundidad de rosca si es así.',
  'insert-hole-unknown':
    'El agujero de este inserto es el suyo, no el de {thread}: tome rosca y agujero de la hoja de datos del inserto.',
  'two-threads':
    'Hay dos roscas en esta línea, {first} y {second}. Ponga cada una en su línea, con su profundidad.',
};
