/** The recall questions of every lesson, in the order of the course. */

import { getCollection } from 'astro:content';

export interface LessonPrompts {
  slug: string;
  title: string;
  prompts: { id: string; ask: string; answer: string }[];
}

export async function promptsByLesson(): Promise<LessonPrompts[]> {
  const lessons = (await getCollection('lessons')).sort((a, b) => a.data.order - b.data.order);
  return lessons
    .map(({ id, data }) => ({ slug: id, title: data.title, prompts: data.recall }))
    .filter(({ prompts }) => prompts.length > 0);
}
