/** Las palabras del formulario del cálculo de par. */

import type * as english from '../../../en/calculators/torque/messages';
import type { Same } from '../../same';

export const WORDS: typeof english.WORDS = {
  labels: {
    thread: 'Rosca, como en el plano',
    tap: 'El macho',
    hole: 'El agujero',
    depth: 'Rosca completa, o espesor',
    material: 'Material',
    spindle: 'Par del husillo',
    chamfer: 'Entrada',
    web: 'Núcleo del macho, medido',
    nose: 'Diámetro de su punta',
    fluid: 'Fluido',
    cross: 'Agujero que cruza',
    crossAt: 'Su centro bajo la cara',
    crossSides: 'Atraviesa',
    measured: 'Lo que leyó',
    edge: 'El macho estaba entonces',
    own: 'Cómo llama al material',
    kc: 'Fuerza específica kc1.1',
    mc: 'Su exponente mc',
    hardness: 'Dureza',
  },
  form: 'El macho y su trabajo',
  submit: '¿Con qué par?',
  example:
    '9/16-18 UNF, .80 in de rosca completa en 4140 de 30 HRC, macho de ranura helicoidal, un husillo que da 30 N·m.',
  missing: {
    thread: {
      ask: 'Escriba la rosca como la da el plano, como M12x1.75-6H o 1/2-13 UNC-2B.',
      need: 'la rosca',
    },
    tap: { ask: 'Elija el macho.', need: 'el macho' },
    depth: {
      ask: 'Escriba cuánta rosca completa se quiere, o el espesor de la pieza, como 18.',
      need: 'la rosca completa',
    },
    material: { ask: 'Elija el material.', need: 'el material' },
    crossAt: {
      ask: 'Escriba a qué profundidad está el centro del agujero que cruza, como 10.',
      need: 'a qué profundidad está el agujero que cruza',
    },
    own: {
      ask: 'Dé un nombre al material, para que no se tomen sus números por los del manual.',
      need: 'un nombre para el material',
    },
  },
  problems: {
    'nose-not-in-hole':
      'La punta debe ser menor que el agujero sin roscar, o el macho no entra. Mídala en los primeros dientes.',
    'cross-outside':
      'El agujero que cruza debe cortar la rosca: su centro dentro de la profundidad que dio.',
    'not-a-reading':
      '«{label}» debe ser un par, como 4.5, o una carga en tanto por ciento, como 15 %.',
    'percent-needs-spindle':
      'Una carga en tanto por ciento necesita el par del husillo a esa velocidad. Escríbalo arriba.',
    'meter-out-of-range':
      'La carga debe estar entre 0 y 250 %, restando lo que el medidor marca en vacío.',
    'reading-not-believable':
      'Es menos de un quinto o más de cinco veces lo previsto aquí. Mire la unidad, el macho y el agujero.',
    'reading-tap-unknown':
      'Para este macho no se prevé ningún par, así que no hay con qué comparar.',
    'web-out-of-range':
      'Un núcleo es más delgado que el macho y más grueso que un quinto de él. Mida en el fondo de las ranuras.',
    'own-name-too-long': 'Deje el nombre en 40 letras.',
    'own-hardness-out-of-range':
      'La dureza debe ser 20–700 HB, 20–60 HRC o 20–750 HV, como 30 HRC o 180 HB.',
    'not-a-hardness': '«{label}» debe ser una dureza, como 30 HRC, 180 HB o 190 HV.',
    'own-kc-out-of-range':
      'La fuerza específica kc1.1 debe estar entre 50 y 8000 N/mm², como 1800.',
    'not-a-force': '«{label}» debe ser un número de N/mm², como 1800.',
    'own-mc-out-of-range': 'El exponente mc debe estar entre 0 y 0.5, como 0.25.',
    'not-an-exponent': '«{label}» debe ser un número, como 0.25.',
    'own-mc-alone':
      'El exponente mc no dice nada sin kc1.1. Escríbalo también, o deje los dos vacíos.',
  },
  refusals: {
    'too-hard': {
      title: 'Demasiado duro para un macho',
      text: 'El acero de 45 HRC o más rompe los machos de acero rápido con cualquier par, así que no se calcula ninguno. Rosque antes de templar, o frese la rosca.',
    },
    'form-brittle': {
      title: 'Este material no se conforma',
      text: 'Se agrieta en vez de fluir, así que no hay par que calcular. Elija un macho de corte.',
    },
    'form-taper': {
      title: 'Los machos de conformar no tienen una entrada tan larga',
      text: 'Elija una entrada más corta, o deje la usual.',
    },
  },
};

export const HINTS: Same<typeof english.HINTS> = {
  blind: 'Ciego',
  through: 'Pasante',
  spindle: 'A la velocidad de roscar, de la curva de la propia máquina. N·m o lbf·ft.',
  tap: 'Entrada, núcleo, punta del macho',
  chamfer: 'La usual para el agujero',
  web: 'En el fondo de las ranuras. Vacío: el usual de su tipo.',
  nose: 'En los primeros dientes. Vacío: la entrada empieza en la pared del agujero.',
  job: 'Fluido, un agujero que cruza',
  fluids: { oil: 'Aceite', dry: 'En seco' },
  cross: 'Su diámetro. Vacío: ninguno.',
  sides: { one: 'un lado', both: 'los dos lados' },
  shop: 'Un par leído en la máquina',
  measured:
    'Lo más de la carrera, con este macho: N·m, o el tanto por ciento del medidor de carga menos lo que marca en vacío.',
  edges: { sharp: 'afilado', worn: 'gastado' },
  own: 'Sus propios números para el material',
  ownText: 'La viruta, la velocidad y lo demás se toman del material elegido arriba.',
  kc: 'Con 1 mm de viruta. Vacío: la del manual.',
  mc: 'Vacío: el del manual.',
  hardness: 'Solo se escribe junto al nombre; lo que cuenta es la fuerza.',
};
