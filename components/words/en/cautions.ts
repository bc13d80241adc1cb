/**
 * The usual cautions of tapping, one for each place where somebody can be hurt. English.
 * Each defers to whoever knows the machine, the fluid or the law better.
 */

import type { SourceId } from '../../../core/sources';

export interface CautionWords {
  title: string;
  text: string;
  sources: readonly SourceId[];
}

export const CAUTIONS = {
  // At the spindle.
  entanglement: {
    title: 'Keep clear of what turns',
    text: 'No gloves, rings, ties or loose sleeves near a turning drill or tap, and long hair tied up. A glove does not tear: it takes the hand in with it. If the work calls for gloves all the same, your employer must have judged that risk first.',
    sources: ['osha-3170', 'hsg129'],
  },
  'part-spins': {
    title: 'Clamp the part',
    text: 'The torque that cuts the thread tries to turn the part. Clamp it, or set it against a stop that cannot give. A hand cannot hold what a tap swings.',
    sources: ['hsg129'],
  },
  'key-left-in': {
    title: 'Key out before power on',
    text: 'Take the chuck key and the hand wrench out before the spindle can start, and never use a spindle under power to hold a tap that you turn by hand: isolate it first.',
    sources: ['osha-1910-147', 'hsg129'],
  },
  'reaching-in': {
    title: 'Stop and lock out before you reach in',
    text: 'A stopped cycle is not a safe machine. Stop, isolate and lock out before your hands go near a tap that is stuck in the hole, and leave interlocks alone. An emergency stop does not keep spindle and feed in step: free the tap as the machine’s manual says, not by jogging.',
    sources: ['osha-1910-147', 'osha-1910-212'],
  },

  // Chips and air.
  'flying-chips': {
    title: 'Guard your eyes',
    text: 'Safety glasses with side shields wherever a tool turns or is struck, on whoever works and whoever watches; a face shield where a tap may shatter. When a broken tap is being worked out, nobody stands in line with it.',
    sources: ['osha-1910-133', 'hsg129'],
  },
  'chips-by-hand': {
    title: 'No fingers in the hole',
    text: 'Chips are razors, and the edge of a fresh thread is another. Spindle stopped, then a brush or a hook. Never feel inside a tapped hole for burrs or for a lost chip.',
    sources: ['osha-3170', 'hsg129'],
  },
  'compressed-air': {
    title: 'Do not blow out a blind hole',
    text: 'Air fires chips and fluid straight back out at the face. Flush the hole, wick it or draw it off with a vacuum. Where air is used to clean at all, US rules ask for under 30 psi at a blocked nozzle, a guard against chips, and eye protection. Never on a person or on clothes.',
    sources: ['osha-1910-242'],
  },

  'wound-in': {
    title: 'Nothing soft where the tap comes through',
    text: 'A tap catches a rag, a string or a soft stopper and winds it in, and the hand that holds it too. Close a gallery or cross bore with a plug that sits out of the tap’s reach, form the thread, or tap from the other side. Count what goes in, and count it out again.',
    sources: ['osha-3170', 'common-practice'],
  },

  // What is in the air and on the skin.
  fluid: {
    title: 'Fluid on skin, mist in the lungs',
    text: 'Cutting fluid can start dermatitis and asthma. Keep its concentration right and its mist drawn off, wash, and report a rash or a tight chest early. A barrier cream does not make up for any of that. Its safety data sheet says what it is.',
    sources: ['osha-fluids', 'osha-1910-1200'],
  },
  sheets: {
    title: 'Oils, pastes, solvents: read the sheet',
    text: 'Keep the safety data sheet where the stuff is used, and the label on what you pour it into. Some work forbids sulphur or chlorine in the fluid: ask before you reach for the tin.',
    sources: ['osha-1910-1200'],
  },
  dust: {
    title: 'Dust from iron, brass, beryllium copper and filled plastics',
    text: 'Draw it off at the hole; do not blow it about or take it home on your clothes. Leaded brass and beryllium copper have rules of their own: find out what the bar is before you cut it dry. Glass and carbon fibre itch, harm the lungs, and carbon dust shorts electrics.',
    sources: ['osha-1910-1200', 'hsg129'],
  },
  'swarf-fire': {
    title: 'Titanium and magnesium burn',
    text: 'Sharp tools, no rubbing, plenty of the right fluid, and swarf cleared often. On a fire use a class D extinguisher, or what the safety data sheet names. Water makes it far worse. Magnesium takes no water-mixed fluid at all: its fines make hydrogen of it. Know where the extinguisher is before the first hole.',
    sources: ['nfpa-484', 'osha-1910-1200'],
  },

  // By hand.
  'hand-tapping': {
    title: 'Tapping by hand',
    text: 'A wrench of the tap’s own size, both hands pulling alike, and a stance in which your knuckles do not land on the part when the tap lets go. A longer wrench only breaks taps.',
    sources: ['tm-9-243'],
  },
  'sharp-tools': {
    title: 'Taps cut before they turn',
    text: 'Carry and store taps in sleeves. Look for wear with a lamp and a loupe: no finger and no rag along an edge. Break the edges of a part before you pass it on.',
    sources: ['tm-9-243', 'common-practice'],
  },

  // Broken taps.
  'broken-tap-cut': {
    title: 'Grinding or milling a broken tap',
    text: 'Hard pieces leave at speed. Doors closed, face shield on, dust drawn off. In a rigid machine, not in a hand drill.',
    sources: ['osha-1910-133', 'hsg129'],
  },
  'broken-tap-struck': {
    title: 'Never strike hard on hard',
    text: 'A hardened hammer or punch on a hardened tap throws splinters. If it must be jarred loose, use a soft punch, eye and ear protection.',
    sources: ['tm-9-243', 'osha-1910-133'],
  },
  'broken-tap-spark': {
    title: 'Spark erosion',
    text: 'The oil in the tank can catch fire. The work stays fully under, the level switch works, and nobody leaves it running alone. Follow the machine’s manual.',
    sources: ['common-practice'],
  },
  welding: {
    title: 'Welding at a stub or a hole',
    text: 'Fume, fire, burning light and stray current. Only by somebody qualified and allowed to weld there, under the shop’s rules for hot work: metal free of oil, solvent and coating, fume drawn off, screens, helmet, an extinguisher at hand, and the place watched afterwards. The earth clamp sits on the part close by, and the part is out of the machine, so that no current runs through its bearings. Never on magnesium or near its swarf, nor on anything closed or that held fuel.',
    sources: ['osha-1910-252', 'osha-1910-1200'],
  },
  'broken-tap-dissolved': {
    title: 'Dissolving a broken tap',
    text: 'Acids burn and fume, and a hot alum bath scalds and gives off hydrogen. Only by trained people, with the data sheet, extraction and a labelled container; never with a steel part, which goes the way of the tap.',
    sources: ['osha-1910-1200'],
  },
} as const satisfies Record<string, CautionWords>;

export type CautionId = keyof typeof CAUTIONS;

/** In the order of the work, for the page that gathers them. */
export const CAUTION_GROUPS: readonly { heading: string; cautions: readonly CautionId[] }[] = [
  {
    heading: 'At the spindle',
    cautions: ['entanglement', 'part-spins', 'key-left-in', 'reaching-in'],
  },
  {
    heading: 'Chips and compressed air',
    cautions: ['flying-chips', 'chips-by-hand', 'compressed-air', 'wound-in'],
  },
  { heading: 'Fluid, dust and fire', cautions: ['fluid', 'sheets', 'dust', 'swarf-fire'] },
  { heading: 'By hand', cautions: ['hand-tapping', 'sharp-tools'] },
  {
    heading: 'A broken tap',
    cautions: [
      'broken-tap-cut',
      'broken-tap-struck',
      'broken-tap-spark',
      'welding',
      'broken-tap-dissolved',
    ],
  },
];

/** The fixed caution: what nothing on this site does. */
export const NOT_A_RATING = {
  short:
    'Nothing here rates a load or approves a thread for pressure, lifting, structures, vehicles or medical use.',
  long: 'A thread that holds pressure, lifts or carries people, holds up a structure, or serves in a vehicle or in medicine is governed by its code and by a responsible engineer or other qualified person. So is its repair: an insert or a weld in such a thread needs their approval in writing. This site works out the geometry and the forces of making a hole. It gives no load rating, approves no pressure thread, and accepts no rework.',
  defer:
    'Your machine’s manual, the safety data sheets, the rules where you work and the people licensed to decide come before anything said here.',
} as const;
