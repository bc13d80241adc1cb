/** The tap drawer kept on this device, where it holds a tap or a drill. */

import { openJobs } from '../jobs/store';
import { browserStore } from '../state/shelf';
import type { Drawer } from '../jobs/shape';

export function shopDrawer(): Drawer | undefined {
  const { drawer } = openJobs(browserStore()).contents;
  return drawer.taps.length + drawer.drills.length > 0 ? drawer : undefined;
}
