/** Brings an answer that was asked for before the reader's eyes. */

/** Below this share of the screen's height, an answer counts as not yet in view. */
const LOW = 0.6;

/**
 * On a narrow screen the answer stands under the form: the reader is taken there, focus and all.
 * Beside a long form it may have been scrolled past: it is shown, and the focus stays in the form.
 */
export function comeTo(box: HTMLElement | null): void {
  if (!box) return;
  if (box.getBoundingClientRect().top > window.innerHeight * LOW) {
    box.focus({ preventScroll: true });
    box.scrollIntoView();
  } else if ((box.querySelector('.answer') ?? box).getBoundingClientRect().top < 0) {
    box.scrollIntoView();
  }
}
