/** Words around a lesson's own text, and of the list of lessons. English. */

export const LESSON_PAGE = {
  afterwards: 'Afterwards you can',
  sources: 'Sources',
  onward: 'Lessons before and after',
};

export const LESSONS_PAGE = {
  title: 'Lessons',
  description:
    'A short course in cutting internal threads: each lesson starts from a question of the shop floor and ends with something you can do.',
  lead: 'Each one starts with a question from the shop, asks you to guess, and lets you try. They build on one another, and each also stands alone.',
  practice: 'Practice',
  practiceText: 'exercises with hints and full workings',
  review: 'Review',
  reviewText: 'their questions, asked again in time',
  teach: 'Teach',
  teachText: 'the same lessons for a class',
};
