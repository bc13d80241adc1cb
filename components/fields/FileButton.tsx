/** A button that opens a file of the reader's and gives its text. */

import { useRef } from 'preact/hooks';

export interface FileButtonProps {
  name: string;
  label: string;
  /** Kinds of file to offer, as the browser's own chooser wants them. */
  accept: string;
  onText: (text: string, fileName: string) => void;
  /** The file could not be read from the disk. */
  onFailure: () => void;
}

export function FileButton({ name, label, accept, onText, onFailure }: FileButtonProps) {
  const input = useRef<HTMLInputElement>(null);
  const read = async () => {
    const file = input.current?.files?.[0];
    if (!file) return;
    try {
      onText(await file.text(), file.name);
    } catch {
      onFailure();
    }
    // The same file may be opened again.
    if (input.current) input.current.value = '';
  };
  return (
    <>
      <button type="button" class="button plain" onClick={() => input.current?.click()}>
        {label}
      </button>
      <input
        ref={input}
        type="file"
        name={name}
        accept={accept}
        aria-label={label}
        tabIndex={-1}
        hidden
        onChange={read}
      />
    </>
  );
}
