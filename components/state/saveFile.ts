/** Files out of and into the page: what a browser keeps may be cleared, a file stays. */

/** Hands the reader a text file to save. */
export function saveFile(name: string, text: string, type: string): void {
  const address = URL.createObjectURL(new Blob([text], { type }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  document.body.append(link);
  link.click();
  link.remove();
  // Some browsers read the blob only after the click has returned.
  window.setTimeout(() => URL.revokeObjectURL(address), 10_000);
}
