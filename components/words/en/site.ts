/** Words of the frame around every page, and how a language names itself. */

/** As `lang` wants it, and where its planner and card stand; '' is the top of the site. */
export const LANGUAGE = { tag: 'en', home: '', site: 'Tapped Hole Handbook' };

export const FRAME = {
  skip: 'Skip to the page',
  /** On top of a translated page: who has read it, and what is not in its language. */
  translated: '',
  main: 'Main',
  search: 'Search',
  safety: 'Safety',
  glossary: 'Glossary',
  rules: 'Rules of thumb',
  sources: 'Sources, and how far to trust them',
  about: 'About, and what it does not know',
};

/** Beside the site's name and version, in the footer and on a class's first screen. */
export const EDITION = {
  built: 'built',
  licence: 'MIT licence.',
};

/** Said of the header's lines. */
export const LINES = {
  plan: 'Plan a hole',
  threads: 'Threads',
  calculators: 'Calculators',
  drawing: 'Drawing',
  lessons: 'Lessons',
  brokenTaps: 'Broken taps',
  jobs: 'Jobs',
  safety: 'Safety',
  sources: 'Sources',
};

export const PLANNER_PAGE = {
  title: 'Plan a hole',
  description:
    'Type a thread, a material and a depth: which tap, which drill, how deep, how fast and how hard, drawn to scale, with every assumption.',
  heading: 'Plan a hole',
  noScript:
    'The form needs script, which is off in this browser. Below is a worked example of what it answers. Do not drill to it.',
  example: 'Worked example',
};

export const FRONT_PAGE = {
  description:
    'Plan a tapped hole, learn why it works, print the card: lessons and working calculators for the people who cut internal threads.',
  heading: 'Plan a tapped hole',
  lede: 'Type a thread from the drawing: which tap, which drill, how deep, how fast, how hard, and why.',
  learn: 'Learn why',
  learnText: 'Lessons that let you predict first, then try it on the same numbers.',
  trust: 'How far to trust it',
  trustText: 'Every standard, table and rule of thumb behind the numbers.',
};

export const CARD_PAGE = {
  title: 'Job card',
  description:
    'One tapped hole on one sheet: tap, drill, depths with their datum, speed, feed, torque, gauge, fluid, what to watch, and blanks to fill in.',
  noScript:
    'Script is off in this browser, so this sheet shows the worked example. It is not for use.',
};
