/** Keeps a number and its unit on one line: the space between them does not break. */
export function whole(text: string): string {
  return text.replace(/(\d) (?=\S)/g, '$1\u00a0');
}
