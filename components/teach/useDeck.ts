/** Where the deck stands, kept in the address: the screen in its hash, the figure in its query. */

import { useCallback, useEffect, useRef, useState } from 'preact/hooks';
import { openInUnit, useUnit } from '../state/units';
import { heldBack, placeIn, screensIn, showOnly, stepOf, type Step } from './deck';
import { figureState, queryOf, restoreFigure, type Restoring } from './figureAddress';

/** In the query beside the figure's controls; neither is one. */
export const OWN_NAMES = ['units', 'notes'] as const;

export interface Deck {
  /** Place of the screen that shows, from 0; null until the page has been taken over. */
  at: number | null;
  /** True while the screen holds an answer back. */
  holding: boolean;
  /** True once the figure of this screen has been moved. */
  moved: boolean;
  go: (step: Step) => void;
  goTo: (place: number) => void;
  /** The query that brings this screen's figure back. */
  query: () => string;
}

function pageState(): [string, string][] {
  const own: readonly string[] = OWN_NAMES;
  return [...new URLSearchParams(location.search)].filter(([name]) => !own.includes(name));
}

export function useDeck(count: number): Deck {
  const [at, setAt] = useState<number | null>(null);
  const [holding, setHolding] = useState(false);
  const [moved, setMoved] = useState(false);
  const unit = useUnit();
  /** Guesses handed in on this screen: their field is gone by then. */
  const guesses = useRef(new Map<string, string>());
  const restoring = useRef<Restoring | null>(null);
  const screens = useRef<HTMLElement[]>([]);

  const look = useCallback((place: number) => {
    setHolding(heldBack(screens.current[place]) !== undefined);
  }, []);

  const goTo = useCallback(
    (place: number) => {
      const next = Math.min(count - 1, Math.max(0, place));
      guesses.current = new Map();
      restoring.current?.stop();
      setMoved(false);
      setAt(next);
      showOnly(screens.current, next);
      window.scrollTo(0, 0);
      look(next);
    },
    [count, look],
  );

  useEffect(() => {
    screens.current = screensIn(document);
    const query = new URLSearchParams(location.search);
    const state = pageState();
    const arrive = () => goTo(placeIn(location.hash, count) ?? 0);
    openInUnit(query.get('units') ?? '', query.has('units'));
    arrive();
    const screen = screens.current[placeIn(location.hash, count) ?? 0];
    if (screen && state.length > 0) {
      restoring.current = restoreFigure(screen, state);
      setMoved(true);
    }
    window.addEventListener('hashchange', arrive);
    return () => {
      restoring.current?.stop();
      window.removeEventListener('hashchange', arrive);
    };
  }, [count, goTo]);

  const query = useCallback((): string => {
    const screen = at === null ? undefined : screens.current[at];
    const state = new Map(guesses.current);
    if (screen) for (const [name, value] of figureState(screen)) state.set(name, value);
    // What the figure has still to be brought to counts as there already.
    for (const [name, value] of restoring.current?.wanted ?? []) state.set(name, value);
    if (unit !== 'mm') state.set('units', unit);
    return queryOf(state);
  }, [at, unit]);

  const write = useCallback(() => {
    if (at === null) return;
    const own = new URLSearchParams(moved ? query() : unit === 'mm' ? '' : `units=${unit}`);
    if (new URLSearchParams(location.search).has('notes')) own.set('notes', 'on');
    history.replaceState(null, '', `${location.pathname}${queryOf(own)}#screen-${at + 1}`);
  }, [at, moved, query, unit]);

  useEffect(write, [write]);

  useEffect(() => {
    const screen = at === null ? undefined : screens.current[at];
    if (!screen || at === null) return undefined;
    const touched = () => {
      setMoved(true);
      // After the figure has taken it in.
      window.setTimeout(write);
    };
    const guessed = (event: Event) => {
      const form = event.target instanceof HTMLFormElement ? event.target : null;
      if (form) for (const [name, value] of figureState(form)) guesses.current.set(name, value);
      touched();
    };
    const pressed = (event: Event) => {
      const on = event.target instanceof Element ? event.target : null;
      if (on?.closest('.explorer button')) touched();
    };
    const toggled = () => look(at);
    screen.addEventListener('input', touched);
    screen.addEventListener('click', pressed);
    screen.addEventListener('submit', guessed, true);
    // A details' toggle does not bubble.
    screen.addEventListener('toggle', toggled, true);
    return () => {
      screen.removeEventListener('input', touched);
      screen.removeEventListener('click', pressed);
      screen.removeEventListener('submit', guessed, true);
      screen.removeEventListener('toggle', toggled, true);
    };
  }, [at, look, write]);

  const go = useCallback(
    (step: Step) => {
      if (at === null) return;
      const held = step === 'next' ? heldBack(screens.current[at]) : undefined;
      if (held) {
        held.open = true;
        held.scrollIntoView({ block: 'nearest' });
        look(at);
        return;
      }
      goTo({ next: at + 1, back: at - 1, first: 0, last: count - 1 }[step]);
    },
    [at, count, goTo, look],
  );

  useEffect(() => {
    const press = (event: KeyboardEvent) => {
      const step = stepOf(event);
      if (!step) return;
      event.preventDefault();
      go(step);
    };
    document.addEventListener('keydown', press);
    return () => document.removeEventListener('keydown', press);
  }, [go]);

  return { at, holding, moved, go, goTo, query };
}
