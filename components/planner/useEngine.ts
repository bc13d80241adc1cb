/** Loads what reckons when it is first wanted; a failure is told and tried again on the next want. */

import { useEffect, useState } from 'preact/hooks';

export interface Loaded<E> {
  engine: E | null;
  failed: boolean;
}

/** `load` must be one constant function. */
export function useEngine<E>(load: () => Promise<E>, wanted: boolean): Loaded<E> {
  const [state, setState] = useState<Loaded<E>>({ engine: null, failed: false });
  useEffect(() => {
    if (!wanted) return undefined;
    let here = true;
    load().then(
      (engine) => here && setState({ engine, failed: false }),
      () => here && setState({ engine: null, failed: true }),
    );
    return () => {
      here = false;
    };
  }, [load, wanted]);
  return state;
}
