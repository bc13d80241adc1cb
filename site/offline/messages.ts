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

/** A newer copy answers for a window that was opened on the one before. */
export interface Replaced {
  kind: 'replaced';
}

/** From the worker. */
export type Said = Progress | Replaced;

/** From a page: bring what is missing; or: take over from the older copy. */
export type Order = { kind: 'complete' } | { kind: 'take-over' };

/**
 * Where a page says that a newer copy is to take over, to the older one if it runs. An order would start it
 * if it does not, and the newer one would have to wait for it.
 */
export const LEAVING = 'handbook-leaving';

export const WORKER_ADDRESS = '/worker.js';

/** One file of the site: its address, and the digest that the worker holds it to. */
export type Listed = [address: string, integrity: string];
