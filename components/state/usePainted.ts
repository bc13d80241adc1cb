/** What is reckoned with: it follows what was typed by one picture, so that a key is seen before it is answered. */

import { useEffect, useState } from 'preact/hooks';

/** `value` as it stood when the page was last painted. It must keep its identity while it does not change. */
export function usePainted<T>(value: T): T {
  const [painted, setPainted] = useState(() => value);
  // An effect runs once the browser has drawn what was rendered with the new value.
  useEffect(() => setPainted(() => value), [value]);
  return painted;
}
