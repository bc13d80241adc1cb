/** Words of the exercises. English. */

import type { ExerciseKind } from '../../../core/practice/types';

export const KIND_WORDS: Record<ExerciseKind, { name: string; hint: string }> = {
  reach: {
    name: 'Does it reach?',
    hint: 'Full thread, then the longest chamfer of the class, then the clearance to stop in. Count all of it in pitches.',
  },
  drill: {
    name: 'Drill and class',
    hint: 'Look up the limits of the minor diameter. A drill cuts a little larger than itself: that hole has to lie inside, too.',
  },
  choose: {
    name: 'Choose and defend',
    hint: 'First: where must the chips go, and are they long or short? Then: which chamfer does the hole leave room for?',
  },
  error: {
    name: 'The wrong line',
    hint: 'Work through the sheet from the top. Thread, drill in its class, tip, shoulder, feed equal to the pitch, speed.',
  },
  order: { name: 'In order', hint: 'Ask of each step what it needs to have been done before.' },
  gauges: {
    name: 'Read the gauges',
    hint: 'GO proves that nothing is too small, NOT GO that the pitch diameter is not too large, the plain plugs the drilled hole.',
  },
  diagnose: {
    name: 'Find the cause',
    hint: 'Which of these causes would leave exactly that trace, and which would not?',
  },
  drawing: {
    name: 'The impossible hole',
    hint: 'Take the depth of thread off the depth of hole, and divide by the pitch. The shortest chamfer and a stop need about three.',
  },
};

export const PRACTICE = {
  title: 'Practice',
  lead: 'Exercises from the same core as the planner. Each comes with a hint and its full working; mm or inch, point or comma.',
  kind: 'What to practise',
  all: 'Everything, mixed',
  level: 'How hard',
  levels: { 1: 'Plain', 2: 'Fair', 3: 'Hard' },
  seed: 'Number of the row',
  seedHint: 'The same number gives the same exercises: to the whole class, or again tomorrow.',
  seedBad: 'Enter a whole number, like 7.',
  hint: 'A hint',
  next: 'Next exercise',
  fresh: 'Another row',
  score: '{right} of {done} right in this row.',
  harder: 'Three right in a row: the next ones are harder.',
  easier: 'Two wrong in a row: the next ones are plainer.',
  sheet: 'The row as a sheet to print',
  sheetKey: 'The same with answers',
  place: 'Exercise {at} of this row',
  failed: 'The exercises could not be loaded. Reload the page when the network is back.',
  noScript:
    'Answering here needs script, which is off in this browser. The sheet below works without.',
} as const;

export const SHEET = {
  title: 'Worksheet',
  key: 'Answers',
  row: 'Row {seed}, {level}',
  name: 'Name',
  date: 'Date',
  answer: 'Answer',
  working: 'Working',
  withKey: 'Show the answers',
  withoutKey: 'Hide the answers',
  print: 'Print it',
  back: 'Practise on the screen',
  caution:
    'For learning only. At a machine its manual, the drawing and the rules of your shop come first.',
} as const;
