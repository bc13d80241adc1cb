/** What the pages and the worker say to each other. */

/** How much is on the device, out of how much. */
export interface Progress {
  kind: 'progress';
  /** Everything but the thread pages. */
  handbook: [kept: number, of: number];
  threads: [kept: number, of: number];
  /** The network gave out before all was here. */
  stopped: boolean;
}

/** From a page: bring what is missing; or: take over from the older copy. */
export type Order = { kind: 'complete' } | { kind: 'take-over' };

export const WORKER_ADDRESS = '/worker.js';

/** One file of the site: its address, and the digest that the worker holds it to. */
export type Listed = [address: string, integrity: string];
