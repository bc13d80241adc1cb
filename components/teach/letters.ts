/** The letter of an option that a class calls out: A for the first. */
export function letter(at: number): string {
  return String.fromCharCode(65 + at);
}
