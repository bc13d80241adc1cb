/**
 * English in a text of another language, told by the small words that no sentence does without. Words that
 * other languages have too (a, no, me, has, he) are left out.
 */
const SMALL =
  /(?<!\p{L})(the|of|and|with|from|this|that|which|is|are|was|not|for|what|when|where|it|its|your|you|to|by|or|on|at|be|more|than|through|below|thread|threads|drill|tap|taps|hole|holes|depth|shoulder|point|pitch|chamfer|torque|speed|feed|length|part|works|chosen|blind|needed)(?!\p{L})/giu;

/** Lines that hold an English word, each with the words. */
export function englishIn(text: string): string[] {
  return text.split('\n').flatMap((line) => {
    const words = line.match(SMALL);
    return words ? [`${words.join(', ')}: ${line.trim().slice(0, 120)}`] : [];
  });
}
