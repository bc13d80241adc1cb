/** Las palabras del planificador: rótulos, ayudas y lo que falta. */

import type * as english from '../en/planner';
import type { Same } from './same';

export const LABELS: Same<typeof english.LABELS> = {
  thread: 'Rosca, como en el plano',
  hole: 'El agujero',
  depth: 'Rosca completa',
  limit: 'No más hondo de',
  at: 'Medido, en la broca, hasta',
  thickness: 'Espesor',
  below: 'Sitio libre debajo',
  fall: '¿Puede caer viruta por debajo?',
  partial: 'Rosca completa, si es menos que el espesor',
  designation: 'Su calidad, como la escribe el plano',
  material: 'Material',
  drive: 'Husillo',
  torque: 'Su par',
  rpm: 'Su mayor velocidad al roscar',
  acceleration: 'Su aceleración',
  point: 'Ángulo de la punta de la broca',
  drills: 'Brocas del cajón',
  web: 'Núcleo del macho, medido',
  centre: 'Punto de centrado en la punta del macho',
  interrupted: 'Otro agujero cruza este',
  entry: 'Inclinación de la cara de entrada',
  'entry-flat': 'Antes se refrenta plana',
  crossing: 'Qué cruza el agujero',
  'crossing-width': 'Su ancho',
  'crossing-from': 'Empieza bajo la cara a',
  'crossing-cut': 'Hecho antes o después de roscar',
  'bore-diameter': 'Caja, diámetro',
  'bore-depth': 'Caja, profundidad',
  cored: 'El agujero viene de fundición',
  later: 'Qué se hace a la pieza tras roscar',
  duty: 'Qué soporta la rosca',
  substrate: 'De qué está hecho el macho',
  coated: 'El macho está recubierto',
  'coat-min': 'Recubrimiento, lo menos',
  'coat-max': 'Recubrimiento, lo más',
  measured: 'Par medido aquí',
  'measured-style': 'Con qué macho',
  'measured-chamfer': 'Su entrada',
  'measured-worn': 'Ese macho estaba gastado',
  learned: 'Par aprendido aquí, frente al del manual',
  'learned-band': 'Cuánto se dispersan las lecturas',
  own: 'Cómo llama al material',
  kc: 'Su fuerza específica kc1.1',
  mc: 'Su exponente mc',
  hardness: 'Su dureza',
  units: 'Longitudes en',
  job: 'Trabajo',
  part: 'Pieza',
  operation: 'Operación',
  machine: 'Máquina',
  holes: 'Agujeros que hacer',
};

export const TEXT: Same<typeof english.TEXT> = {
  ownHint:
    'Sus propios números para el material de arriba, que presta lo demás: su viruta, sus velocidades.',
  kcHint: 'Con 1 mm de viruta. Vacío: la del manual.',
  mcHint: 'Vacío: el del manual.',
  hardnessHint: 'Solo se escribe junto al nombre; lo que cuenta es la fuerza.',
  form: 'El agujero que planear',
  submit: 'Planear',
  clear: 'Empezar de nuevo',
  around: 'Cara inclinada, caja, lo que lo cruza, fundición, trabajos posteriores, servicio …',
  more: 'Punta de la broca, brocas del cajón, recubrimiento, par medido, material propio …',
  ownUsed: 'Calculado con sus propios números de {name}.',
  address: 'De la dirección',
  designer: 'Una nota para el proyectista',
  copy: 'Copiarla',
  copied: 'Copiada',
  notCopied: 'No se pudo copiar: marque el texto y cópielo usted',
  mend: 'Por corregir',
  designationLike: 'Como 1.4301, 304L, 42CrMo4+QT, 6061-T6, GG25: se elige sola.',
  usualTool: 'Lo habitual: acero rápido sin recubrir',
  coatedTap: 'Sí, está recubierto',
  chooseMaterial: 'Elija un material',
  chooseTap: 'Elija un macho',
  chooseChamfer: 'Elija una entrada',
  blind: 'Ciego',
  through: 'Pasante',
  shoulder: 'fondo cilíndrico',
  point: 'la punta',
  yes: 'Sí',
  no: 'No',
  worn: 'Estaba gastado',
  crossed: 'Sí, pero nadie sabe de qué ancho',
  slopeHint: 'Grados desde la escuadra con el agujero. Vacío: a escuadra.',
  flat: 'Se hace antes un plano',
  nothingCrosses: 'Nada',
  fromUnknown: 'vacío: todo en la rosca',
  before: 'antes',
  after: 'después',
  counterboreHint: 'Con caja, escriba espesor y profundidades contados desde su fondo.',
  fromFloor: 'Desde el fondo de la caja',
  none: 'vacío: no hay',
  cored: 'El agujero sale de fundición',
  noDuty: 'Nada de esto',
  dutyHint: 'Donde decide una regla o una persona responsable, no un taller.',
  usual: 'vacío: 1½ diámetros',
  noLimit: 'vacío: sin límite',
  noTorque: 'vacío: no se juzga',
  threadLike: 'Como M8x1.25-6H, 1/4-20 UNC-2B, #10-32',
  noBelow: 'vacío: de sobra',
  pointHint: 'Grados. Vacío: 118. Un fondo plano es 180.',
  webHint: 'En el fondo de las ranuras. Vacío: el usual de su tipo.',
  centreHint: 'Cuánto sobresale. Vacío: punta plana.',
  coatingHint: 'Lo que crece una superficie. La rosca se cierra cuatro veces eso.',
  measuredHint: 'La misma rosca y material, en esta máquina: el plan se ajusta a ello.',
  errors: 'Antes de planear este agujero',
  errorTitle: 'Error: ',
  example: 'Ejemplo',
  exampleText:
    'M8x1.25-6H en inoxidable 304, ciego, 16 mm de rosca completa, la broca no más de 22 mm hasta su fondo cilíndrico, husillo síncrono con 30 N·m.',
  examplePart: 'Tapa de bomba PC-16',
  exampleGoes: 'Se va cuando escriba lo suyo.',
  takeExample: 'Probar con el ejemplo',
  loading: 'Un momento …',
  notLoaded: 'El planificador no se cargó',
  notLoadedText:
    'Mire la conexión y cargue otra vez la página. Lo que escribió está en la dirección y vuelve.',
  waitingFor: 'Falta todavía',
  blocked: 'Todavía sin respuesta.',
  answer: 'Respuesta',
  readAs: 'Leído como {reading}.',
  readCallout:
    'Leído como indicación de plano: {callout}. Con ella se rellenaron los demás campos.',
  notRead: 'Sin entender: «{words}».',
  notReadTitle: 'Sin entender en la indicación: «{words}»',
  notReadText:
    'Estas palabras del plano no cambiaron nada en este plan. Averigüe qué piden antes de cortar. Cuando esté aclarado, quítelas del campo de la rosca.',
  card: 'Imprimir la hoja de trabajo',
  trouble: '¿Algo salió mal en este agujero? Busque la causa (en inglés)',
  why: '¿Por qué? (en inglés)',
  watch: 'Atención',
  numbers: 'Los números',
  taps: 'Otros machos, y por qué no',
  allTaps: 'Cada macho juzgado',
  nearDrills: 'Las brocas que sirven, y sus vecinas',
  allDrills: 'Cada broca cercana',
  drills: 'Brocas juzgadas',
  remedies: 'Lo que lo haría posible, de lo más barato a lo más caro',
  helps: 'Lo que ayudaría, de lo más barato a lo más caro',
  assumed: 'Supuestos',
  machine: 'En la máquina',
  safety: 'Más sobre seguridad (en inglés)',
};

export const CROSSINGS: Same<typeof english.CROSSINGS> = {
  bore: 'Otro agujero lo atraviesa',
  slot: 'Una ranura a lo largo',
};

export const LATER: Same<typeof english.LATER> = {
  harden: 'Se templa',
  plate: 'Se le da un baño',
  anodise: 'Se anodiza',
  weld: 'Se suelda',
};

export const DUTIES: Same<typeof english.DUTIES> = {
  lifting: 'Sirve para izar',
  pressure: 'Aguanta presión',
  structure: 'Sostiene una estructura',
  vehicle: 'Es parte de un vehículo',
  medical: 'Es parte de un producto sanitario',
};

export const CHIPS: Same<typeof english.CHIPS> = {
  ahead: 'Sale por delante',
  back: 'Sube por el agujero',
  stays: 'Queda en las ranuras',
  none: 'Ninguna',
};

export const NEEDED: Same<typeof english.NEEDED> = {
  thread: 'la rosca',
  hole: 'si es ciego o pasante',
  thickness: 'el espesor',
  material: 'el material',
  'measured-style': 'qué macho se midió',
  'measured-chamfer': 'su entrada',
  'crossing-width': 'el ancho del cruce',
  'bore-diameter': 'el ancho de la caja',
  'bore-depth': 'la profundidad de la caja',
};

export const ADDRESS_NOTES: Same<typeof english.ADDRESS_NOTES> = {
  'unknown-name':
    'La dirección dice {name}={typed}, que esta página no conoce. No se tuvo en cuenta.',
  'unknown-choice':
    'La dirección pide «{typed}» en «{label}», y no está en la lista. Elija otra vez.',
};

export const MISSING: Same<typeof english.MISSING> = {
  thread: 'Escriba la rosca como la da el plano, como M8x1.25-6H o 1/4-20 UNC-2B.',
  hole: 'Elija si el agujero es ciego o pasante.',
  thickness: 'Escriba el espesor de la pieza, como 12.',
  material: 'Elija el material.',
  'measured-style': 'Elija el macho con que se midió.',
  'measured-chamfer': 'Elija la entrada del macho con que se midió.',
  'crossing-width': 'Escriba el ancho del cruce, como 8.',
  'bore-diameter': 'Escriba el ancho de la caja, como 14.',
  'bore-depth': 'Escriba la profundidad de la caja, como 8.',
  own: 'Escriba cómo llama al material, para que su hoja diga qué números se usaron.',
};

export const FIELD_PROBLEMS: Same<typeof english.FIELD_PROBLEMS> = {
  missing: 'Escriba: {label}.',
  'not-a-length': '«{label}» debe ser una longitud, como {like}.',
  'not-a-torque': '«{label}» debe ser un par, como 30 o 22 lbf·ft.',
  'not-a-speed': '«{label}» debe ser un número de vueltas por minuto, como 3000.',
  'not-an-angle': '«{label}» debe ser un número de grados, como 118 o 140.',
  'not-an-acceleration': '«{label}» debe ser un número de rev/s², como 300.',
  'not-a-factor': '«{label}» debe ser un factor, como 1,2.',
  'not-a-force': '«{label}» debe ser un número de N/mm², como 1800.',
  'not-an-exponent': '«{label}» debe ser un número, como 0.25.',
  'not-a-hardness': '«{label}» debe ser una dureza, como 30 HRC, 180 HB o 190 HV.',
  'no-drills': 'Elija al menos una clase de broca.',
};

export const LENGTHS_LIKE: Same<typeof english.LENGTHS_LIKE> = {
  coating: '8 µm o 0.0003 in',
  mm: '16, 12,5 o 3/4 in',
  in: '.75, 3/4 o 16 mm',
};

export const DRILL_SERIES: Same<typeof english.DRILL_SERIES> = {
  metric: 'En mm',
  fraction: 'Fracción',
  number: 'Número',
  letter: 'Letra',
};

export const TAP_TABLE: Same<typeof english.TAP_TABLE> = {
  tap: 'Macho',
  why: 'Veredicto y por qué',
  verdicts: { best: 'El primero', works: 'Sirve', no: 'No' },
};

export const DRILL_TABLE: Same<typeof english.DRILL_TABLE> = {
  drill: 'Broca',
  size: 'Medida, {unit}',
  thread: 'Rosca, base del taller',
  likely: 'Agujero probable, {unit}',
  verdict: 'Veredicto',
  verdicts: { inside: 'Dentro', risk: 'En riesgo', outside: 'Fuera' },
  chosen: '{verdict}, elegida',
  minor: 'Diámetro menor: {limits}.',
};
