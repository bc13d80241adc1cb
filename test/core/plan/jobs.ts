/** The worked jobs of Copperfell Works (an invented shop), as they are asked. */

import type { HoleRequest } from '../../../core';

export const VMC_A = { drive: 'synchronous', torque: 60 } as const;
export const VMC_B = { drive: 'synchronous', torque: 30 } as const;

export const JOBS = {
  /** M6×1-6H, blind, 12 full, 6061, on VMC-B */
  J1: {
    thread: 'M6x1-6H',
    fullThread: 12,
    hole: { kind: 'blind' },
    material: 'al-wrought',
    spindle: VMC_B,
  },
  /** M5×0.8 through 3 mm of 304, on VMC-B */
  J2: {
    thread: 'M5x0.8',
    hole: { kind: 'through', thickness: 3 },
    material: 'stainless-austenitic',
    spindle: VMC_B,
  },
  /** M12×1.75, blind, 24 full, grey iron, on VMC-A */
  J3: {
    thread: 'M12x1.75',
    fullThread: 24,
    hole: { kind: 'blind' },
    material: 'iron-grey',
    spindle: VMC_A,
  },
  /** 9/16-18-2B, blind, .80 in full, 4140 at 30 HRC */
  J4: {
    thread: '9/16-18-2B',
    fullThread: 20.32,
    hole: { kind: 'blind' },
    material: 'steel-alloy-30hrc',
    spindle: VMC_B,
  },
  /** M30×3.5 through 45 in 1045, on VMC-B */
  J5: {
    thread: 'M30x3.5',
    hole: { kind: 'through', thickness: 45 },
    material: 'steel-medium',
    spindle: VMC_B,
  },
  /** M10×1.5, blind, 15 full, hole bottom at 16.5, 6061 */
  J6: {
    thread: 'M10x1.5',
    fullThread: 15,
    hole: { kind: 'blind', limit: { at: 'shoulder', depth: 16.5 } },
    material: 'al-wrought',
    spindle: VMC_A,
  },
  /** M12×1.75-LH through 20 in 1045, on VMC-A */
  J7: {
    thread: 'M12x1.75-LH',
    hole: { kind: 'through', thickness: 20 },
    material: 'steel-medium',
    spindle: VMC_A,
  },
} satisfies Record<string, HoleRequest>;
