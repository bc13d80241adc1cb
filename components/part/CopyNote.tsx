/** Plain text to carry off: shown in full, copied at a press. */

import { useState } from 'preact/hooks';
import { TEXT } from '../words/en/part';

export interface CopyNoteProps {
  heading: string;
  lines: readonly string[];
  /** Before the ids of this part of the page. */
  id: string;
}

export function CopyNote({ heading, lines, id }: CopyNoteProps) {
  const text = lines.join('\n');
  const [result, setResult] = useState({ text: '', said: '' });
  if (lines.length === 0) return null;
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(text);
      setResult({ text, said: TEXT.copied });
    } catch {
      // Some browsers allow copying over a secure connection only.
      setResult({ text, said: TEXT.notCopied });
    }
  };
  return (
    <section class="no-print" aria-labelledby={`${id}note-heading`}>
      <h2 id={`${id}note-heading`}>{heading}</h2>
      <p class="designer-note part-note">{text}</p>
      <p class="actions">
        <button type="button" class="button plain needs-script" onClick={copy}>
          {TEXT.copy}
        </button>
        <span role="status">{result.text === text ? result.said : ''}</span>
      </p>
    </section>
  );
}
