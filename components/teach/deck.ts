/** The screens of the page: which one shows, what on it is still held back. */

export const SCREEN = '.screen';
const HELD = 'details.held, .recall details.fold, details.answer-fold';

export function screensIn(root: ParentNode): HTMLElement[] {
  return [...root.querySelectorAll<HTMLElement>(SCREEN)];
}

/** Place of the screen that an address's hash names, from 0; null where it names none. */
export function placeIn(hash: string, count: number): number | null {
  const number = Number(/^#screen-(\d+)$/.exec(hash)?.[1]);
  return number >= 1 && number <= count ? number - 1 : null;
}

/** The next answer on this screen that nobody has asked for yet. */
export function heldBack(screen: HTMLElement | undefined): HTMLDetailsElement | undefined {
  return [...(screen?.querySelectorAll<HTMLDetailsElement>(HELD) ?? [])].find(({ open }) => !open);
}

/** Shows one screen and hides the others; a focus left on a hidden one comes along. */
export function showOnly(screens: readonly HTMLElement[], at: number): void {
  const strayed = screens.some(
    (each, place) => place !== at && each.contains(document.activeElement),
  );
  screens.forEach((each, place) => {
    each.hidden = place !== at;
  });
  if (strayed) screens[at]?.focus({ preventScroll: true });
}

export type Step = 'next' | 'back' | 'first' | 'last';

const KEYS: Readonly<Record<string, Step>> = {
  ArrowRight: 'next',
  PageDown: 'next',
  ' ': 'next',
  ArrowLeft: 'back',
  PageUp: 'back',
  Home: 'first',
  End: 'last',
};

/** Controls that use some keys themselves; there the deck leaves those keys alone. */
const TYPED = 'input:not([type=radio]):not([type=checkbox]), textarea, [contenteditable]';
const PRESSED = 'button, summary, a, label';

/**
 * What a key asks of the deck, or null. A clicker sends Page Up and Page Down, which nothing on a
 * screen needs for itself.
 */
export function stepOf(event: KeyboardEvent): Step | null {
  const { key, target } = event;
  if (event.altKey || event.ctrlKey || event.metaKey || event.defaultPrevented) return null;
  const step = KEYS[key];
  if (!step) return null;
  if (key.startsWith('Page')) return step;
  const on = (selector: string) => target instanceof Element && target.closest(selector) !== null;
  if (on(TYPED) || on('select')) return null;
  if (key === ' ' && (on(PRESSED) || on('input'))) return null;
  if (key.startsWith('Arrow') && on('input')) return null;
  return key === ' ' && event.shiftKey ? 'back' : step;
}
