/** `npm run readability`: how hard the lessons are to read, by two formulas that schools use. */
import { lessonsReadability } from './prose.ts';

const one = (value: number, width = 8): string => value.toFixed(1).padStart(width);
console.log(
  `${'lesson'.padEnd(30)}${'words'.padStart(7)}${'a sentence'.padStart(12)}${'FK'.padStart(8)}${'ARI'.padStart(8)}  school years`,
);
for (const { lesson, words, wordsInSentence, grade, index } of lessonsReadability()) {
  console.log(
    `${lesson.padEnd(30)}${String(words).padStart(7)}${one(wordsInSentence, 12)}${one(grade)}${one(index)}`,
  );
}
