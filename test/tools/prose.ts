/** The running text of a lesson, as somebody reads it aloud: no head, no components, no tables, no markup. */
import { globSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { automatedReadability } from 'automated-readability';
import { fleschKincaid } from 'flesch-kincaid';
import { syllable } from 'syllable';
import { ROOT } from './modules.ts';

export interface Readability {
  lesson: string;
  words: number;
  wordsInSentence: number;
  /** School years, United States: Flesch–Kincaid, and the automated readability index. */
  grade: number;
  index: number;
}

/** A component with all that is in its braces stands for nothing; a value in the text for one short word. */
function withoutComponents(text: string): string {
  return text
    .replace(/<([A-Z]\w*)[\s\S]*?\/>/g, '\n\n')
    .replace(/<\/?[A-Za-z][^>]*>/g, ' ')
    .replace(/\{[^{}]*\}/g, 'ten');
}

export function proseOf(mdx: string): string {
  const body = mdx
    .replace(/^---\n[\s\S]*?\n---\n/, '')
    .replace(/^import [\s\S]*?;$/gm, '')
    // For the teacher's eyes, not the apprentice's.
    .replace(/<Instructor>[\s\S]*?<\/Instructor>/g, '');
  return withoutComponents(body)
    .split(/\n{2,}/)
    .map((block) => block.replace(/^(#+|[-*]|\d+\.)\s+/gm, '').replace(/[*_`]/g, ''))
    .map((block) => block.replace(/\s+/g, ' ').trim())
    .filter((block) => /[a-z]/.test(block))
    .map((block) => (/[.!?:]$/.test(block) ? block : `${block}.`))
    .join('\n');
}

export function readabilityOf(lesson: string, text: string): Readability {
  const sentences = text.split(/[.!?:](?:\s|$)/).filter((each) => /[a-z]/i.test(each)).length;
  const words = text.match(/[A-Za-z’'-]*[A-Za-z][A-Za-z’'-]*/g) ?? [];
  const characters = words.join('').length;
  const syllables = words.reduce((sum, word) => sum + Math.max(1, syllable(word)), 0);
  const counts = { sentence: sentences, word: words.length };
  return {
    lesson,
    words: words.length,
    wordsInSentence: words.length / sentences,
    grade: fleschKincaid({ ...counts, syllable: syllables }),
    index: automatedReadability({ ...counts, character: characters }),
  };
}

/** Every lesson's, in the order of the course. */
export function lessonsReadability(): Readability[] {
  return globSync('site/content/lessons/*.mdx', { cwd: ROOT })
    .toSorted()
    .map((file) =>
      readabilityOf(basename(file, '.mdx'), proseOf(readFileSync(join(ROOT, file), 'utf8'))),
    );
}
