/** Words of the comparison of chamfer classes. English. */

import type { ChamferClass } from '../../../../core/chamfer/chamfer';

const NAMES: Record<ChamferClass, string> = {
  taper: 'Taper',
  plug: 'Plug',
  'semi-bottoming': 'Semi-bottoming',
  bottoming: 'Bottoming',
};

export const CLASS_BARS = {
  names: NAMES,
  row: '{name}, {threads} threads',
  titles: {
    torque: 'The classes hardly differ in torque',
    tooth: 'The shorter the chamfer, the harder each tooth works',
  },
  subtitle: {
    torque: 'Torque of a sharp tap by class of chamfer: {conditions}',
    tooth: 'Load on the first tooth to bite, middle of the class: {conditions}',
  },
  descriptions: {
    torque:
      'One level bar for each class, long chamfers on top; the bars nearly cover one another.',
    tooth:
      'One level bar for each class, long chamfers on top; each shorter chamfer has a longer bar.',
  },
  rowsAre: 'Chamfer',
  axis: {
    torque: { label: 'Torque', unit: 'N·m' },
    tooth: { label: 'Load on the heaviest tooth', unit: 'N' },
  },
  bands:
    'what a prediction of torque may miss by, 1.4 times either way; the mark is the expected value.',
} as const;
