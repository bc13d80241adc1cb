import { useEffect, useRef } from 'preact/hooks';

/**
 * A ref for what takes the place of a form that has just gone: the focus moves there when `here`
 * turns true, so that a keyboard does not fall back to the top and a screen reader goes on reading.
 */
export function useArrival<T extends HTMLElement>(here: boolean) {
  const place = useRef<T>(null);
  const was = useRef(here);
  useEffect(() => {
    if (here && !was.current) place.current?.focus();
    was.current = here;
  }, [here]);
  return place;
}
