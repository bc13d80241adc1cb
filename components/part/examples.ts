/**
 * The worked example: the lid of a pump housing at Copperfell Works, as it came from the drawing
 * office. It leads nobody to drill: it is marked and goes at the first input.
 */

import { initialValues } from '../state/address';
import { PART_FIELDS, type PartInputs } from './inputs';
import { TEXT } from '../words/en/part';

export const EXAMPLE: PartInputs = {
  ...initialValues(PART_FIELDS),
  holes: [
    '6× M10×1.5-6H ↧15 / Ø8.5 ↧16.5',
    '8× M6-6H ↧12',
    '4X 1/4-20 UNC-2B THRU',
    '2× M6-6H THRU ⌵ Ø6.6 × 90°',
    'M8-6H ↧16 / Ø6.8 ↧22',
    '2X 1/2-13 UNC-2B THRU, 7/16 DRILL THRU',
  ].join('\n'),
  material: 'al-wrought',
  thickness: '16',
  torque: '30',
  part: TEXT.examplePart,
  machine: 'VMC-B',
  job: '4502',
  operation: '20',
};
