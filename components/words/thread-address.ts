/**
 * Where a thread's page is: `/threads/m8x1.25/`, `/threads/1-4-20-unc/`, `/threads/10-32-unf/`, `/threads/g1-4/`.
 *
 * The rule: the designation without its class and hand, in small letters; `#` is dropped; slashes and spaces become
 * dashes. What is left are letters, digits, dots and dashes, which no server and no chat program mangles.
 */

import type { Thread } from '../../core/thread/thread';

/** The designation without class and hand: `M8x1.25`, `1/4-20 UNC`, `G1/4`. */
export function threadName(thread: Pick<Thread, 'designation' | 'class'>): string {
  const name = thread.designation.replace(/-LH$/, '');
  const tail = thread.class === '' ? '' : `-${thread.class}`;
  return tail !== '' && name.endsWith(tail) ? name.slice(0, -tail.length) : name;
}

/** Last part of the page's address. */
export function threadSlug(thread: Pick<Thread, 'designation' | 'class'>): string {
  return threadName(thread)
    .toLowerCase()
    .replace('#', '')
    .replaceAll(/[\s/]+/g, '-');
}

/** Address of the page. Only for threads that have one. */
export function threadHref(thread: Pick<Thread, 'designation' | 'class'>): string {
  return `/threads/${threadSlug(thread)}/`;
}
