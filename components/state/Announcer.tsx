/** Says an answer to a screen reader, politely, once the typing has stopped. */

import { useEffect, useState } from 'preact/hooks';

/** Long enough not to talk over each keystroke. */
const PAUSE = 1000;

export function Announcer({ text }: { text: string }) {
  const [said, setSaid] = useState('');
  useEffect(() => {
    const timer = window.setTimeout(() => setSaid(text), text === '' ? 0 : PAUSE);
    return () => window.clearTimeout(timer);
  }, [text]);
  return (
    <p class="unseen" role="status">
      {said}
    </p>
  );
}
