/** What each kind of page must say about itself. A wrong or missing field stops the build. */
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';
import { defineCollection } from 'astro:content';
import { EXERCISE_KINDS } from '../core/practice/types';
import { SOURCES, type SourceId } from '../core/sources';

const sourceIds = Object.keys(SOURCES) as [SourceId, ...SourceId[]];

const source = z.enum(sourceIds, {
  error: (issue) =>
    `"${String(issue.input)}" is not a source. Use a key of SOURCES in core/sources.ts, or add the work there.`,
});

/** `<n>-<slug>.mdx`: the number only sorts the files for an author; the address is the slug. */
function withoutNumber({ entry }: { entry: string }): string {
  return entry.replace(/^\d+-/, '').replace(/\.mdx?$/, '');
}

const lessons = defineCollection({
  loader: glob({ base: './site/content/lessons', pattern: '*.mdx', generateId: withoutNumber }),
  schema: z.strictObject({
    title: z.string().min(1),
    /** The question from the shop that the lesson answers. */
    question: z.string().endsWith('?', 'Write it as a question, with its question mark.'),
    /** What a reader can do afterwards: verbs, one line each. */
    outcomes: z.array(z.string().min(1)).min(1),
    /** Slugs of the lessons to read first; each must come earlier in `order`. */
    needs: z.array(z.string()).default([]),
    /** Place in the course, from 1. */
    order: z.int().positive(),
    sources: z.array(source).min(1),
    /**
     * Questions to answer from memory: at the end of the lesson as `<Recall prompts={frontmatter.recall} />`,
     * and again in the review. What a device remembers hangs on the `id`: reword a question as you like,
     * but give a new one a new id.
     */
    recall: z
      .array(
        z.strictObject({
          id: z.string().regex(/^[a-z0-9-]+$/, 'Small letters, digits and hyphens.'),
          ask: z.string().min(1),
          answer: z.string().min(1),
        }),
      )
      .default([]),
    /** Time an instructor should plan for. Never shown to a learner: an estimate only discourages. */
    minutes: z.int().positive(),
  }),
});

const glossary = defineCollection({
  loader: glob({ base: './site/content/glossary', pattern: '*.md' }),
  schema: z.strictObject({
    /** The word as it is used on this site. */
    term: z.string().min(1),
    /** What the same thing is called elsewhere. */
    us: z.array(z.string()).default([]),
    uk: z.array(z.string()).default([]),
    iso: z.array(z.string()).default([]),
    /** Terms that sound alike and mean something else. */
    notToConfuse: z.array(z.string()).default([]),
    sources: z.array(source).default([]),
  }),
});

/** What an instructor needs beside a lesson's own note; the file is named as the lesson is. */
const teaching = defineCollection({
  loader: glob({ base: './site/content/teaching', pattern: '*.yaml' }),
  schema: z.strictObject({
    /** How the lesson's minutes are spent, in order. */
    timing: z
      .array(z.strictObject({ minutes: z.int().positive(), what: z.string().min(1) }))
      .min(2),
    /** What to leave out first. */
    shorten: z.string().min(1),
    bring: z.array(z.string().min(1)).min(1),
    /** What to show at the bench; `care` where it can hurt someone. */
    show: z
      .array(
        z.strictObject({
          what: z.string().min(1),
          watch: z.string().min(1),
          care: z.string().min(1).optional(),
        }),
      )
      .min(1),
    goesWrong: z.array(z.string().min(1)).min(1),
    /** What a class will say, and what to ask or show in return. */
    wrongAnswers: z
      .array(z.strictObject({ said: z.string().min(1), reply: z.string().min(1) }))
      .min(2),
    /** Kinds of exercise for the worksheet. */
    sheet: z.array(z.enum(EXERCISE_KINDS)).default([]),
  }),
});

const changes = defineCollection({
  loader: glob({ base: './site/content/changes', pattern: '*.md' }),
  schema: z.strictObject({
    title: z.string().min(1),
    date: z.coerce.date(),
    /** True when an answer somebody may have written down is different now. */
    changesAnswers: z.boolean().default(false),
  }),
});

export const collections = { lessons, teaching, glossary, changes };
