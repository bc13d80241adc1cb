/** The course for whoever teaches it: sessions, rubric, and public standards it leads towards. English. */

export const COURSE = {
  title: 'Teach',
  description:
    'The lessons as screens for a class, with notes for the instructor, a plan of four sessions, a rubric and public standards.',
  intro:
    'Every lesson as screens for a class: one idea each, answers held back, the figures live. Your own notes stay on your own screen.',
  how: 'How the screens work',
  howTo: [
    'Next: right arrow, Page Down, space, a clicker or the button. Where an answer is held back, the first press shows it and the second goes on.',
    'Back: left arrow, Page Up or the button. Home and End go to the first and the last screen.',
    'Move a figure, and the address holds it. “Link for the class” gives that address as a link and a square code, without your notes.',
    'Open the page a second time on your own device and turn the notes on there; the class screen stays without them.',
    'Printed, the page is a handout: all screens, room to write, no answers. With the notes on, they follow on a sheet of their own.',
    'Without script all screens stand one below the other, and the notes are folded at the end.',
  ],
  lessons: 'The lessons',
  minutes: '{minutes} min',
  plan: 'A plan of four sessions',
  planText:
    'Four times fifty minutes. Each session takes its part of the lessons named; what is left over is for reading alone, and comes back in the review.',
  session: 'Session {number}: {title}',
  aim: 'Afterwards',
  with: 'Lessons',
  bring: 'Bring',
  rubric: 'Rubric',
  rubricText:
    'Nought to three a row. Passed: at least two in every row with a star. As evidence, a log of five holes signed by the trainer: through, blind, by hand, on a machine, and one with an insert.',
  row: 'What is judged',
  star: '★',
  standards: 'Where it leads: public standards',
  standardsText:
    'Summarised in our own words, from memory, to help you find your way. The standard itself decides; look up its current edition. Nothing here is endorsed by any of these bodies, and no lesson is a qualification.',
  memory: 'From memory.',
  safety:
    'Demonstrations on a machine follow its manual, the safety data sheets and the rules of your place.',
  safetyLink: 'Safety',
  review: 'Recall between the sessions: the review, and its paper cards',
  paper: 'Worksheets on paper',
} as const;

export interface Session {
  title: string;
  aim: string;
  lessons: readonly string[];
  parts: readonly { minutes: number; what: string }[];
  bring: string;
}

export const SESSIONS: readonly Session[] = [
  {
    title: 'Where the chip goes',
    aim: 'Name any tap in the drawer, and say where its chips end up in a given hole.',
    lessons: ['naming-a-tap', 'chips-and-materials', 'chamfer-classes', 'through-holes'],
    parts: [
      { minutes: 10, what: 'Vote: which way do the chips go? No reasons yet' },
      { minutes: 15, what: 'Tap wax or clear plastic with three styles, and look' },
      { minutes: 10, what: 'Turn the cutting face on the screen' },
      { minutes: 10, what: 'Sort twelve sketched holes: ahead, back, or neither' },
      { minutes: 5, what: 'Recall, each on a card' },
    ],
    bring: 'Three taps of one size, wax or clear plastic, chips in jars, twelve sketches of holes.',
  },
  {
    title: 'How deep and how large',
    aim: 'Add up the depth of a blind hole, choose a drill inside the class, and refuse a drawing with numbers.',
    lessons: ['blind-holes', 'tap-drill-and-percent', 'class-and-tap-limits', 'how-deep-is-enough'],
    parts: [
      { minutes: 5, what: 'Recall from session 1' },
      { minutes: 15, what: 'The chain of depths at a real hole, with a pin' },
      { minutes: 10, what: 'Three drawings: which of them cannot be made?' },
      { minutes: 15, what: 'Two drills of one size, measured: the window of the class' },
      { minutes: 5, what: 'Write the note to the designer' },
    ],
    bring:
      'A hole drilled too shallow, pins, two drills ground differently, three drawings of which one cannot be made.',
  },
  {
    title: 'Feel and load',
    aim: 'Judge how hard a tap works, sharp and worn, and tell torque from power.',
    lessons: ['torque', 'why-taps-break', 'hand-tapping', 'form-taps'],
    parts: [
      { minutes: 5, what: 'Recall from sessions 1 and 2' },
      { minutes: 20, what: 'Torque wrench on a tap: sharp and worn, small hole and large' },
      { minutes: 10, what: 'Rank ten threads by the danger to their tap, then reckon it' },
      { minutes: 10, what: 'Broken taps in bags: cause and first check, in pairs' },
      { minutes: 5, what: 'What would you change, and how would you know that it worked?' },
    ],
    bring:
      'A torque wrench with a peak pointer, a sharp and a worn tap, broken taps in bags, guards.',
  },
  {
    title: 'Machine, gauge, failure',
    aim: 'Read a set-up sheet for its error, gauge a batch, and give a verdict in writing.',
    lessons: ['speed-feed-and-cycle', 'gauging', 'special-threads'],
    parts: [
      { minutes: 5, what: 'Recall from all sessions' },
      { minutes: 15, what: 'A set-up sheet with one error; dry run above the part' },
      { minutes: 15, what: 'Gauge six parts, two of them bad; write before you speak' },
      { minutes: 10, what: 'A whole hole, from callout to card, each alone' },
      { minutes: 5, what: 'The rubric, by yourself and by the trainer' },
    ],
    bring: 'Six gauged parts, GO and NOT GO, plain plugs, a set-up sheet with one error in it.',
  },
];

export interface RubricRow {
  what: string;
  starred: boolean;
  /** For 0, 1, 2 and 3. */
  levels: readonly [string, string, string, string];
}

export const RUBRIC: readonly RubricRow[] = [
  {
    what: 'Safety',
    starred: true,
    levels: ['Acts unsafely', 'Safe when reminded', 'Safe unasked', 'Looks after others too'],
  },
  {
    what: 'Reading the callout',
    starred: true,
    levels: ['Another thread', 'With help', 'All of it, depth and class', 'Finds what is unclear'],
  },
  {
    what: 'Choice of tap',
    starred: true,
    levels: [
      'Chips the wrong way',
      'Right style, no reason',
      'Style, chamfer and metal, with reasons',
      'Says what else would do, and until when',
    ],
  },
  {
    what: 'Hole and depth',
    starred: true,
    levels: [
      'Takes the wall chart',
      'Right drill',
      'Chain of depths right, drill inside the class',
      'Allows for oversize and plating',
    ],
  },
  {
    what: 'Load and machine',
    starred: false,
    levels: ['Nothing', 'Quotes a rule', 'Reckons it, units right', 'Decides, or asks in time'],
  },
  {
    what: 'Program and set-up',
    starred: false,
    levels: ['Does not run', 'Runs with help', 'Right, and explained', 'Has a plan for a stop'],
  },
  {
    what: 'Gauging',
    starred: true,
    levels: [
      'Forces the gauge',
      'GO only',
      'GO, NOT GO, minor and depth',
      'Settles a dispute by the standard',
    ],
  },
  {
    what: 'Finding the cause',
    starred: false,
    levels: ['Guesses', 'One cause', 'Several, ranked, with a check', 'Keeps it from coming back'],
  },
  {
    what: 'Telling others',
    starred: false,
    levels: ['Nothing', 'By word of mouth', 'Numbers in writing', 'Choices, with what they cost'],
  },
];

/** Names recalled from memory; editions and numbers change. */
export const STANDARDS: readonly { where: string; what: string; covers: string }[] = [
  {
    where: 'United States',
    what: 'O*NET occupation 51-4041, Machinists',
    covers:
      'A public list of what machinists do: read drawings, set up and run machines, measure what comes out, find out why it went wrong. The course serves the parts on holes, threads, tools and checking.',
  },
  {
    where: 'United States',
    what: 'Registered apprenticeship, work processes for a machinist',
    covers:
      'Hours at the bench, at the drill and in the tool crib, with drilling and tapping named. The log of five holes fits in there.',
  },
  {
    where: 'United Kingdom',
    what: 'Apprenticeship standard for a machining technician',
    covers:
      'Knowledge, skills and behaviours: planning from a drawing, setting, running, inspecting, putting problems right. Sessions 2 and 4 are nearest to it.',
  },
  {
    where: 'Canada',
    what: 'Red Seal occupational standard, Machinist',
    covers:
      'Tasks of the trade in blocks: safety, drawings and planning, checking, hole making, threading, inserts. All four sessions touch it.',
  },
  {
    where: 'Australia',
    what: 'Units of the metal and engineering training package',
    covers:
      'Hand tools, machining and measuring, each a unit. Hand tapping and gauging belong here.',
  },
];
