/**
 * A figure's state ⇄ the address, read from its controls as they stand: whatever figure a lesson shows, a
 * class can be sent it as it stands now. A figure that asks for a guess first is given the guess again.
 */

type Control = HTMLInputElement | HTMLSelectElement;

const GUESS = /-guess$/;

function keyOf(control: Control): string {
  const byName = control instanceof HTMLInputElement && control.type === 'radio';
  return byName ? control.name : control.id || control.name;
}

function controlsIn(screen: ParentNode): Control[] {
  return [...screen.querySelectorAll<Control>('input, select')].filter(
    (control) => keyOf(control) !== '' && control.type !== 'file',
  );
}

/** Each control of the screen with its value; of tiles, the one that is chosen. */
export function figureState(screen: ParentNode): Map<string, string> {
  const state = new Map<string, string>();
  for (const control of controlsIn(screen)) {
    const off =
      control instanceof HTMLInputElement &&
      /radio|checkbox/.test(control.type) &&
      !control.checked;
    if (!off && control.value !== '') state.set(keyOf(control), control.value);
  }
  return state;
}

/** The query for a figure's state, `?…` or empty. Slashes and commas stay bare: shorter on paper. */
export function queryOf(state: Iterable<readonly [string, string]>): string {
  const query = new URLSearchParams([...state].map(([name, value]) => [name, value]));
  const text = query.toString().replace(/%2F/g, '/').replace(/%2C/g, ',').replace(/%3A/g, ':');
  return text === '' ? '' : `?${text}`;
}

function put(control: Control, value: string): void {
  if (control instanceof HTMLInputElement && /radio|checkbox/.test(control.type)) {
    control.click();
    return;
  }
  control.value = value;
  control.dispatchEvent(new Event('input', { bubbles: true }));
  control.dispatchEvent(new Event('change', { bubbles: true }));
}

/** Sets what can be set now. A guess is handed in at once: the other controls come after it. */
function putOne(screen: ParentNode, wanted: Map<string, string>): boolean {
  for (const control of controlsIn(screen)) {
    const [key, value] = [keyOf(control), wanted.get(keyOf(control))];
    const other = control.type === 'radio' && control.value !== value;
    if (value === undefined || other) continue;
    wanted.delete(key);
    put(control, value);
    if (GUESS.test(key)) control.form?.requestSubmit();
    return true;
  }
  return false;
}

export interface Restoring {
  /** What is still to be set. */
  wanted: ReadonlyMap<string, string>;
  stop: () => void;
}

/**
 * Brings a screen's figure to a state, as soon as its script runs, control by control, since one may bring
 * another. Ends when all is set, or when told to stop.
 */
export function restoreFigure(
  screen: HTMLElement,
  state: Iterable<readonly [string, string]>,
): Restoring {
  const wanted = new Map(state);
  const seen = new MutationObserver(() => go());
  let pending = false;
  const stop = () => {
    seen.disconnect();
    wanted.clear();
  };
  const go = () => {
    if (pending || wanted.size === 0) return;
    if (screen.querySelector('astro-island[ssr]')) return;
    pending = true;
    // One control a turn, so that the figure has drawn itself anew before the next.
    window.setTimeout(() => {
      pending = false;
      if (putOne(screen, wanted)) go();
      if (wanted.size === 0) stop();
    });
  };
  seen.observe(screen, { attributes: true, childList: true, subtree: true });
  go();
  return { wanted, stop };
}
