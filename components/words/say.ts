/** Puts values into a sentence. */
export function say(sentence: string, values: Record<string, string>): string {
  return sentence.replace(/\{(\w+)\}/g, (whole, name: string) => values[name] ?? whole);
}
