/** The link to this screen, to read off, to copy, or as a square code for the phones of the class. */

import { useEffect, useState } from 'preact/hooks';
import type { QrCode } from '../job/QrCode';
import { fromFolder } from '../state/place';
import { TEACH } from '../words/en/teach';

export function Share({ link, onClose }: { link: string; onClose: () => void }) {
  const [said, setSaid] = useState('');
  const [Code, setCode] = useState<{ View: typeof QrCode } | null>(null);
  useEffect(() => {
    // A phone could not follow it.
    if (fromFolder()) return;
    // Without the code the link is still there to copy.
    void import('../job/QrCode')
      .then(({ QrCode: View }) => setCode({ View }))
      .catch(() => undefined);
  }, []);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      setSaid(TEACH.copied);
    } catch {
      setSaid(TEACH.notCopied);
    }
  };
  return (
    <div class="deck-share">
      {Code && <Code.View text={link} label={TEACH.shareCode} />}
      <div>
        <p>{TEACH.shareText}</p>
        <p>
          <a class="deck-link" href={link}>
            {link}
          </a>
        </p>
        <div class="deck-row">
          <button type="button" class="button plain" onClick={() => void copy()}>
            {TEACH.copy}
          </button>
          <button type="button" class="link-button" onClick={onClose}>
            {TEACH.close}
          </button>
          <span role="status">{said}</span>
        </div>
      </div>
    </div>
  );
}
