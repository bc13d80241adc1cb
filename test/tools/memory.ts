/** A store like the browser's, for tests; `room` is how many characters it takes. */
import type { Store } from '../../components/state/shelf';

export function memory(room = Infinity): Store & { held: Map<string, string> } {
  const held = new Map<string, string>();
  return {
    held,
    getItem: (key) => held.get(key) ?? null,
    removeItem: (key) => void held.delete(key),
    setItem: (key, text) => {
      const others = [...held].reduce((sum, [k, t]) => (k === key ? sum : sum + t.length), 0);
      if (others + text.length > room) throw new Error('QuotaExceededError');
      held.set(key, text);
    },
  };
}
