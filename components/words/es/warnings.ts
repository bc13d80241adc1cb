/** Avisos junto a una respuesta: título y qué hacer. La lección es la del inglés. */

import { WARNINGS as ENGLISH } from '../en/warnings';
import type * as english from '../en/warnings';

export type { WarningWords } from '../en/warnings';

type Code = keyof typeof english.WARNINGS;

const WORDS: Record<Code, { title: string; text: string }> = {
  'tap-share-high': {
    title: 'Duro para el macho',
    text: 'Afilado, llega al {sharp:percent} del par que lo rompe; gastado, al {worn:percent}. Use un macho nuevo y buen aceite, cuente los agujeros y cámbielo pronto.',
  },
  'tap-will-break': {
    title: 'Un macho gastado se romperá',
    text: 'Afilado, llega al {sharp:percent} del par que lo rompe; gastado, al {worn:percent}. Lea qué más se puede hacer antes de empezar.',
  },
  'spindle-over': {
    title: 'Demasiado para el husillo',
    text: 'Un macho gastado pide {worn:torque}[; el husillo da {spindle:torque}]. El límite es el par, no la potencia, y girar más despacio o más deprisa no lo baja.',
  },
  'chips-ahead-no-room': {
    title: 'Aquí no va un macho de punta helicoidal',
    text: 'Empuja la viruta hacia delante, y apretada contra el fondo pide unos {needed:roughly} de agujero libre debajo; este agujero deja {have:length}. Sin ese sitio el macho se atasca y se rompe.',
  },
  'chips-must-not-fall': {
    title: 'Ninguna viruta por debajo',
    text: 'Haga subir la viruta o conforme la rosca. Tape o proteja el otro lado de todos modos, y mire antes de entregar la pieza.',
  },
  'thin-work': {
    title: 'Pieza delgada',
    text: 'El metal tiene {thickness:length} de espesor, {pitches:pitches}. Apóyelo por detrás y sujételo plano para que no se levante ni gire, y pregunte si tan pocos hilos bastan.',
  },
  'deep-thread': {
    title: 'Rosca honda',
    text: 'La rosca tiene {diameters:number} diámetros de profundidad. La viruta viaja más y el fluido entra peor, así que la velocidad se baja. Más allá de lo que necesita el tornillo, la profundidad solo añade riesgo.',
  },
  'work-hardens': {
    title: 'Se endurece al trabajarlo',
    text: 'Broca afilada, avance firme, sin detenerse, y nunca por debajo de {slowest:speed}. Aceite de roscar rico, o emulsión al 10 % o más. Una broca roma deja una pared dura que luego paga el macho.',
  },
  'springs-back': {
    title: 'Recupera',
    text: 'El metal se cierra sobre el macho tras el corte. Taladre hacia lo mayor que permita la clase, use un macho afilado con mucho destalonado, y calibre la rosca ya fría.',
  },
  dust: {
    title: 'Polvo',
    text: 'Este material deja polvo, no viruta. Aspírelo o mójelo; no lo respire ni lo sople. Guarde este macho para este material.',
  },
  'swarf-fire': {
    title: 'La viruta puede arder',
    text: 'Herramienta afilada, mucho fluido adecuado y viruta retirada a menudo. Sobre un fuego: extintor de clase D, nunca agua. Siga la ficha de datos de seguridad.',
  },
  'water-fire': {
    title: 'Nada de agua cerca del polvo',
    text: 'El polvo de magnesio saca hidrógeno del agua y sigue ardiendo en ella. Ningún fluido mezclado con agua, ni restos de emulsión en el depósito o la manguera: aceite mineral fluido, o en seco. No lo aspire con un aparato que no esté hecho para ello, guarde la viruta seca en un cubo de acero cerrado y tenga a mano polvo de clase D o arena seca. Siga la ficha de datos de seguridad y las normas de incendio de su taller.',
  },
  'carbide-wants': {
    title: 'El metal duro se rompe antes que doblarse',
    text: 'Un macho de metal duro pide un portaherramientas rígido que gire centrado dentro de 0,01 mm, un agujero alineado con él y no retroceder en el corte. Un trozo que salta corta: puertas cerradas.',
  },
  'carbide-unsuited': {
    title: 'El metal duro no es para esto',
    text: 'Los machos de metal duro son para husillo síncrono y metales de viruta que se rompe. En lo demás se descascarillan: aquí no se gana velocidad. Tome un macho recubierto de acero pulvimetalúrgico.',
  },
  'left-hand': {
    title: 'Rosca a izquierdas',
    text: 'Macho a izquierdas, calibre a izquierdas, y un ciclo a izquierdas con el husillo al revés. La palabra cambia de un control a otro: mire su manual. Un macho a derechas girado al revés no corta nada.',
  },
  interrupted: {
    title: 'Lo cruza otro agujero',
    text: 'El corte para y arranca. Use un macho que mantenga varios dientes en el metal todo alrededor, baje la velocidad y quite la rebaba del agujero cruzado. No se dijo su ancho, dónde empieza ni cuándo se hace: dígalo, y el plan lo tiene en cuenta.',
  },
  plated: {
    title: 'Roscar más grande para el recubrimiento',
    text: 'El recubrimiento cierra el diámetro de flancos cuatro veces su espesor: aquí {pitchMin:limit} a {pitchMax:limit}. Rosque tanto más grande o tape el agujero, y calibre antes y después.',
  },
  'drill-at-risk': {
    title: 'La broca puede abrir de más',
    text: 'Las brocas abren un poco de más. Esta deja probablemente {likely:limit}[; la clase permite hasta {max:limit}]. Mida el primer agujero con un tapón liso, o tome la broca siguiente hacia abajo.',
  },
  'below-clearance': {
    title: 'Poco sitio debajo',
    text: 'El macho debe pasar {needed:length} más allá de la cara de abajo para acabar la rosca[, y hay {have:length}]. Calce la pieza o pase a una entrada más corta.',
  },
  'weak-when-stripped': {
    title: 'La rosca puede arrancarse antes de que rompa el tornillo',
    text: 'Para que ceda antes el tornillo, pida {wanted:length} de rosca completa; este agujero tiene {have:length}, {ratio:number} veces el largo en que los dos son igual de fuertes. Compara resistencias de metales y no asigna ninguna carga: pregunte al proyectista.',
  },
  'harden-after': {
    title: 'Demasiado duro para roscar',
    text: 'Rosque antes de templar y cuente con el crecimiento, o frese la rosca con una fresa de metal duro.',
  },
  'taper-pipe': {
    title: 'Rosca de tubo cónica',
    text: 'Se calibra por cuánto entra el calibre, no por dos límites. La broca y la profundidad salen de su propia norma, y esta página no aprueba una unión que aguante presión.',
  },
  'heavy-by-hand': {
    title: 'Pesado a mano',
    text: 'Ya afilado el macho pide {sharp:torque}. Hace falta un giramachos largo y un ayudante que lo mantenga derecho; por encima de {most:torque} déjelo a una máquina.',
  },
  'minor-limit-unknown': {
    title: 'Mayor diámetro menor desconocido',
    text: 'Para este perfil el límite mayor del diámetro menor no se conoce con confianza. Tómelo del plano o de la norma antes de elegir broca.',
  },
  'duty-not-judged': {
    title: 'Lo que carga esta rosca no se juzga aquí',
    text: '[{lifting:only}Sirve para izar: debe aprobarla una persona competente en equipos de izado.][{pressure:only}Aguanta presión: deben aprobarla el código de presión y quien inspecciona según él.][{structure:only}Sostiene una estructura: debe aprobarla el ingeniero estructural responsable.][{vehicle:only}Es parte de un vehículo: debe aprobarla quien responde de su homologación.][{medical:only}Es parte de un producto sanitario: debe aprobarla quien responde del producto.] Aquí solo hay geometría. No la ponga en uso, no la repare ni la cargue porque lo diga esta página.',
  },
  'entry-face': {
    title: 'La cara está inclinada',
    text: 'Se aparta {angle:number}° de la escuadra. [{bare:only}Sobre ella la broca se va y puede romperse, y {loss:length} de la rosca tendrían metal por un solo lado. Haga antes un plano de {diameter:length}, a escuadra con el agujero.][{flat:only}Haga antes el refrentado de {diameter:length}, con una fresa que corte hasta el centro.][ Las profundidades cuentan desde el borde entero más bajo del plano, {sink:length} por debajo de la cara en el eje.] La fresa corta por un solo lado: sujete contra ese empuje, avance suave según el manual de la máquina y manténgase apartado.',
  },
  crossing: {
    title: 'El macho cruza un hueco',
    text: '[{bore:only}Ya está hecho un agujero de {width:length} de ancho, {gap:pitches}. Use una entrada más larga que eso, donde la haya.][{slot:only}Ya está hecha una ranura de {width:length} de ancho que quita un arco a cada vuelta.] Los dientes salen del metal y golpean al volver a él: canales rectos o punta helicoidal, muchos canales, más despacio y solo con husillo síncrono.[ La ranura es más ancha que un labio, unos {land:length}, que puede caer en ella: use una hélice que la salve, o rosque antes.][ Quita {lost:length} de la rosca completa y deja {left:length}.] La viruta sale por el hueco: manténgase apartado, quite la rebaba con una herramienta y nunca con el dedo, y vuelva a calibrar.',
  },
  'crossing-after': {
    title: 'Se cruza después de roscar',
    text: 'Ese es el orden bueno. Donde se abre la rosca quite la rebaba con una herramienta, nunca con el dedo, lave la viruta de los dos y vuelva a calibrar.[{bore:only} El agujero tiene {width:length} de ancho.][{slot:only} La ranura quita un arco a cada vuelta, y ningún largo de rosca lo repone.][ Quita {lost:length} de la rosca completa y deja {left:length}.][{gone:only} No queda rosca.]',
  },
  'tap-reach': {
    title: 'Mucho camino para el macho',
    text: '[Un macho corriente de este tamaño entra {have:length} antes de que estorben el mango o el portamachos; aquí debe entrar {needed:length}.][ Uno de mango rebajado alcanza {reduced:length}.][Ningún macho corriente llega: debe entrar {needed:length}, y lo más es {most:length}.] Mida el macho en su portamachos antes de empezar.',
  },
  'counterbore-tight': {
    title: 'Caja estrecha para el macho',
    text: 'La caja tiene {diameter:length} de ancho y el mango {shank:length} de grueso; para que entre el mango pide {wants:length}. El mango y el portamachos se quedan encima, así que el macho debe ser bastante largo por delante de ellos. Mire que nada roce y que la viruta tenga salida.',
  },
  'cored-hole': {
    title: 'Agujero de fundición',
    text: 'No se promete ninguna broca: la broca sigue el agujero fundido, su conicidad y su piel dura. Ábralo antes[ a {diameter:length}] con una broca de tres o cuatro filos o mandrinando, y pruébelo con un tapón liso. En hierro, busque con una lima los puntos templados: donde resbale, no rosque.',
  },
  'later-hardening': {
    title: 'Se templa después de roscar',
    text: 'El calor mueve la rosca y la cascarilla la llena. Acuerde la demasía con quien temple, tape o proteja el agujero, y después limpie y calibre todos. Lo que haya que cortar en duro se fresa con metal duro o se rectifica. Por encima de 45 HRC no meta nunca un macho: salta en pedazos.',
  },
  'later-coating': {
    title: 'Se recubre después de roscar',
    text: '[{plate:only}El baño crece todo su espesor. ][{anodise:only}El anodizado crece más o menos la mitad de su capa: cuente esa mitad. ]Lo que crece una superficie cuenta cuatro veces en el diámetro de flancos[: aquí {pitchMin:limit} a {pitchMax:limit}].[{unsized:only} Escríbalo como recubrimiento y se juzga el macho.][ El macho ISO {failsIso:whole} corriente no sirve: recubierta, el calibre PASA no entra.][ ISO {takesIso:whole} deja sitio.][ El macho H{failsH:whole} corriente no sirve: recubierta, el calibre PASA no entra.][ H{takesH:whole} deja sitio.][ El macho D{failsD:whole} corriente no sirve: recubierta, el calibre PASA no entra.][ D{takesD:whole} deja sitio.][ El macho ISO {holdsIso:whole} corriente le deja sitio.][ El macho H{holdsH:whole} corriente le deja sitio.][ El macho D{holdsD:whole} corriente le deja sitio.][{noRoom:only} La capa varía más de lo que permite la clase.] Si no, tape el agujero. Calibre antes y después.',
  },
  'later-welding': {
    title: 'Se suelda después de roscar',
    text: 'El calor deforma el agujero y las proyecciones lo llenan. Suelde antes si el orden puede cambiar; si no, aleje la rosca de la soldadura, tápela y calíbrela en frío. Limpie antes el aceite y el fluido: un agujero aceitoso o cerrado puede arder o reventar. Soldar es para gente cualificada, con las reglas del lugar.',
  },
  'limits-computed': {
    title: 'Límites calculados',
    text: 'Este tamaño no está en la tabla de su norma. Los límites salen de las fórmulas de la norma: compruébelos antes de pedir un calibre.',
  },
  'mill-feed-setting': {
    title: '¿Qué avance cuenta el control?',
    text: 'Unos controles toman F en el centro de la fresa, otros en el filo. Con el equivocado, esta fresa va {factor:number} veces demasiado rápida o lenta: búsquelo en el manual y pruebe antes por encima de la pieza.',
  },
};

export const WARNINGS = Object.fromEntries(
  Object.entries(ENGLISH).map(([code, words]) => [code, { ...words, ...WORDS[code as Code] }]),
) as typeof english.WARNINGS;

/** Cuando incluso un macho gastado queda por debajo de lo que da el husillo. */
export const NEAR_SPINDLE: typeof english.NEAR_SPINDLE = {
  title: 'Cerca del límite del husillo',
  text: 'Un macho gastado pide {worn:torque} de los {spindle:torque} que da el husillo. Va con un macho nuevo y buen aceite; cambie el macho pronto y vigile la carga.',
};
