/** Words of the form of the spindle calculator. English. */

import type { CalculatorWords } from '../../../../calculators/calculator';
import type { Name } from '../../../../calculators/spindle/inputs';

export const WORDS: CalculatorWords<Name> = {
  labels: {
    points: 'Torque of the spindle over speed',
    thread: 'Thread, as on the drawing',
    tap: 'The tap',
    material: 'Material',
    depth: 'Full thread',
    rpm: 'Speed you mean to run',
    torque: 'Torque of the sharp tap, measured',
  },
  form: 'The job and the spindle',
  submit: 'Has it the torque?',
  example:
    'M12x1.75 in 1045 with a spiral-point tap, on a spindle that gives 60 N·m up to 1200 rev/min and falls to 9 N·m at 8000.',
  missing: {
    points: {
      ask: 'Enter speed and torque from the machine’s manual, like 50 60; 1200 60; 8000 9.',
      need: 'the spindle’s torque at a few speeds',
    },
    thread: {
      ask: 'Enter the thread as the drawing gives it, like M12x1.75-6H or 1/2-13 UNC-2B.',
      need: 'the thread',
    },
    tap: { ask: 'Choose the tap.', need: 'the tap' },
    material: { ask: 'Choose the material.', need: 'the material' },
  },
  problems: {
    'not-points':
      '“{typed}” is no pair of speed and torque. Type each as rev/min, then N·m, with a semicolon between pairs: 50 60; 1200 60; 8000 9.',
    'spindle-no-points':
      'Enter speed and torque from the machine’s manual, like 50 60; 1200 60; 8000 9.',
    'spindle-too-many-points': 'Twelve pairs at most. Keep those where the curve bends.',
    'spindle-point-out-of-range':
      'Speed and torque must both be more than 0: {typed} is not. Speed comes first.',
    'spindle-speed-twice':
      '{typed} rev/min stands there twice. Keep one of them; for a gear change type a speed just above it.',
    'spindle-power-absurd':
      '{typed} would be over 500 kW. Is a decimal point missing, or are speed and torque the wrong way round?',
    'not-a-speed': '“{label}” must be a spindle speed, like 480.',
    'speed-outside': '“{label}” must be between {min} and {max} rev/min.',
  },
  refusals: {
    'too-hard': {
      title: 'Too hard to tap',
      text: 'Steel of 45 HRC and over breaks HSS taps at any torque, so none is worked out. Thread it before hardening, or mill the thread.',
    },
    'tap-not-planned': {
      title: 'This material is not formed',
      text: 'It cracks instead of flowing, so there is no torque to work out. Choose a tap that cuts.',
    },
  },
};

export const HINTS = {
  points:
    'From the torque curve in the machine’s manual: rev/min, then N·m; the next pair after a semicolon. Three pairs at the bends are enough.',
  more: 'Full thread, speed, measured torque',
  depth: 'Empty: one and a half diameters.',
  rpm: 'Empty: from the material’s range.',
  torque: 'Empty: worked out.',
} as const;
