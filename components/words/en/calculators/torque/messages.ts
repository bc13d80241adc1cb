/** Words of the form of the torque calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/torque/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    thread: 'Thread, as on the drawing',
    tap: 'The tap',
    hole: 'The hole',
    depth: 'Full thread, or thickness',
    material: 'Material',
    spindle: 'Torque of the spindle',
    chamfer: 'Chamfer',
    web: 'Core of the tap, measured',
    nose: 'Diameter of its nose',
    fluid: 'Fluid',
    cross: 'Bore that crosses the hole',
    crossAt: 'Its middle below the face',
    crossSides: 'It goes through',
    measured: 'What you read',
    edge: 'The tap was then',
    own: 'What you call the material',
    kc: 'Specific force kc1.1',
    mc: 'Its exponent mc',
    hardness: 'Hardness',
  },
  form: 'The tap and its work',
  submit: 'How hard?',
  example:
    '9/16-18 UNF, .80 in of full thread in 4140 of 30 HRC, spiral-flute tap, a spindle that gives 30 N·m.',
  missing: {
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M12x1.75-6H or 1/2-13 UNC-2B.',
      need: 'the thread',
    },
    tap: { ask: 'Choose the tap.', need: 'the tap' },
    depth: {
      ask: 'Enter how much full thread is wanted, or how thick the part is, like 18.',
      need: 'the full thread',
    },
    material: { ask: 'Choose the material.', need: 'the material' },
    crossAt: {
      ask: 'Enter how deep the middle of the crossing bore lies, like 10.',
      need: 'how deep the crossing bore lies',
    },
    own: {
      ask: 'Give the material a name, so that its numbers are not taken for the handbook’s.',
      need: 'a name for the material',
    },
  },
  problems: {
    'nose-not-in-hole':
      'The nose must be smaller than the hole before tapping, or the tap does not enter. Measure it across the first teeth.',
    'cross-outside': 'The crossing bore must cut the thread: its middle within the depth you gave.',
    'not-a-reading': '“{label}” must be a torque, like 4.5, or a load in percent, like 15 %.',
    'percent-needs-spindle':
      'A load in percent needs the torque of the spindle at that speed. Enter it above.',
    'meter-out-of-range': 'A load must lie between 0 and 250 %, less what the meter shows idling.',
    'reading-not-believable':
      'That is less than a fifth or more than five times what is planned here. Check the unit, the tap and the hole.',
    'reading-tap-unknown':
      'No torque is planned for this tap, so there is nothing to compare with.',
    'web-out-of-range':
      'A core is thinner than the tap and thicker than a fifth of it. Measure across the bottoms of the flutes.',
    'own-name-too-long': 'Keep the name to 40 letters.',
    'own-hardness-out-of-range':
      'Hardness must be 20–700 HB, 20–60 HRC or 20–750 HV, like 30 HRC or 180 HB.',
    'not-a-hardness': '“{label}” must be a hardness, like 30 HRC, 180 HB or 190 HV.',
    'own-kc-out-of-range': 'Specific force kc1.1 must be between 50 and 8000 N/mm², like 1800.',
    'not-a-force': '“{label}” must be a number of N/mm², like 1800.',
    'own-mc-out-of-range': 'The exponent mc must be between 0 and 0.5, like 0.25.',
    'not-an-exponent': '“{label}” must be a number, like 0.25.',
    'own-mc-alone':
      'The exponent mc says nothing without kc1.1. Enter that too, or leave both empty.',
  },
  refusals: {
    'too-hard': {
      title: 'Too hard to tap',
      text: 'Steel of 45 HRC and over breaks HSS taps at any torque, so none is worked out. Thread it before hardening, or mill the thread.',
    },
    'form-brittle': {
      title: 'This material is not formed',
      text: 'It cracks instead of flowing, so there is no torque to work out. Choose a tap that cuts.',
    },
    'form-taper': {
      title: 'Form taps have no chamfer that long',
      text: 'Choose a shorter chamfer, or leave it to the usual one.',
    },
  },
};

export const HINTS = {
  blind: 'Blind',
  through: 'Through',
  spindle: 'At tapping speed, from the machine’s own curve. N·m or lbf·ft.',
  tap: 'Chamfer, core, nose of the tap',
  chamfer: 'Usual for the hole',
  web: 'Across the bottoms of the flutes. Empty: usual for the style.',
  nose: 'Across the first teeth. Empty: the chamfer begins at the wall of the hole.',
  job: 'Fluid, a bore that crosses',
  fluids: { oil: 'Oil', dry: 'Dry' },
  cross: 'Its diameter. Empty: none.',
  sides: { one: 'one side', both: 'both sides' },
  shop: 'A torque you read on the machine',
  measured:
    'The most in the stroke, with this tap: N·m, or the load meter’s percent less what it shows idling.',
  edges: { sharp: 'sharp', worn: 'worn' },
  own: 'Your own numbers for the material',
  ownText: 'Chips, speed and the rest are taken from the material chosen above.',
  kc: 'At 1 mm of chip. Empty: the handbook’s.',
  mc: 'Empty: the handbook’s.',
  hardness: 'Only written down beside the name; the force is what counts.',
} as const;
