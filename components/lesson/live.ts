import { useEffect, useState } from 'preact/hooks';

/**
 * False in the HTML that is served, true once the script runs: what needs the script is
 * shown only then, so that without it no control is dead.
 */
export function useLive(): boolean {
  const [live, setLive] = useState(false);
  useEffect(() => setLive(true), []);
  return live;
}
