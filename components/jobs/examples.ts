/** A kept job of Copperfell Works, for the page to show before anything is kept, and without script. */

import type { Job } from './shape';
import { EXAMPLE_PART } from '../words/en/drawerLines';

export const EXAMPLE_JOB: Job = {
  id: 'example',
  revision: 1,
  job: '4471',
  part: EXAMPLE_PART,
  operation: '30',
  machine: 'VMC-B',
  holes: [
    {
      inputs: {
        thread: 'M8x1.25-6H',
        hole: 'blind',
        depth: '16',
        limit: '22',
        material: 'stainless-austenitic',
        torque: '30',
        holes: '6',
      },
    },
    {
      inputs: {
        thread: 'M5x0.8-6H',
        hole: 'through',
        thickness: '10',
        material: 'stainless-austenitic',
        torque: '30',
        holes: '4',
      },
    },
  ],
};
