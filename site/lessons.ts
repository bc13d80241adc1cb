/** Which lessons exist, so that a page links to those and to no other. */

import { getCollection } from 'astro:content';

export async function lessonSlugs(): Promise<string[]> {
  const lessons = await getCollection('lessons');
  return lessons.map(({ id }) => id);
}
