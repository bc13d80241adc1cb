/** Words of the page that says how far to trust the handbook. English. */

export const ABOUT = {
  title: 'About, and how far to trust it',
  description:
    'What this handbook is, which of its numbers are certain and which are bands, where trade and mechanics disagree, what it does not know, and what has changed.',
  lead: 'A handbook for the people who cut internal threads. It works out the geometry and the forces of making a hole, shows what it assumed, and says where it is unsure.',
  sureHeading: 'Which numbers are sure, and which are bands',
  checks: 'The printed values, beside the ones worked out here.',
  sureText:
    'Limits, percentages and depths are geometry: they follow from the standard or from the profile, to the last digit that is shown. Forces are a model. So are the strength of a tap and the room that chips take. Each is shown with its band:',
  what: 'What',
  how: 'How sure',
  rows: {
    limits: [
      'Limits of a class',
      'as the standard’s table or formula gives them; “computed” is said where no table has them',
    ],
    memory: [
      'Limits marked “from memory”',
      'recalled, not read again: check them in the standard before you order a gauge',
    ],
    depths: [
      'Depths and reach',
      'exact for the chamfer that is named; promised with the longest of its class',
    ],
    torque: ['Torque of a sharp cutting tap', 'within {torque} times up or down'],
    formed: [
      'Torque of a form tap',
      'wider: {formLow} to {formHigh} times what is expected, for friction decides most of it',
    ],
    worn: [
      'A worn tap',
      '{worn} times the sharp one, as a middle; {wornLow} to {wornHigh} times when it is usually changed',
    ],
    breaks: [
      'What breaks a tap',
      'from {breaksLow} to {breaksHigh} times what is expected, by its core, its steel and the shape of its flutes',
    ],
    room: [
      'Room for packed chips',
      'an estimate: {short} to {long} times the solid metal, by how they break',
    ],
    strip: [
      'Depth for the screw to break first',
      'static, worst sizes, strengths from memory; asked for with {least} to {most} times in hand',
    ],
    speed: [
      'Speed',
      'the published range for a plain high-speed tap; the planner starts inside it',
    ],
  },
  disagreeHeading: 'Where trade and mechanics disagree',
  disagree: [
    [
      'Does a longer chamfer lower the torque?',
      'Shops say yes, the theory of thin chips says no, and both are within a few per cent. The band holds both.',
      '/lessons/chamfer-classes/',
      'The lesson on chamfers',
    ],
    [
      'How many turns may a NOT GO make?',
      'American and ISO rules differ. Both are shown; ask which one the drawing means.',
      '/calculators/gauging/',
      'Read the gauges',
    ],
    [
      'Is seventy-five per cent always right?',
      'It is a habit. The class on the drawing decides, and its window is another for every thread.',
      '/rules-of-thumb/',
      'Rules of thumb, tested',
    ],
    [
      'When do limits hold on a plated thread?',
      'Inch practice says after coating, metric before. The drawing overrules both.',
      '/calculators/plating/',
      'Before and after plating',
    ],
  ],
  unknownHeading: 'What it does not know',
  unknown: [
    'Your tap: its core, its edge, its coating, and how many holes it has done. Measure the core and read the torque of a fresh one; the planner takes both.',
    'Your machine and holder: whether it keeps step, how far it runs on, how straight it runs.',
    'Fatigue, shaking, creep, heat and corrosion of the joint. It compares strengths of metals under one steady pull and rates no load.',
    'Threads of several starts, trapezoidal, Whitworth and others: they are recognised and refused.',
    'The words your control uses. Its manual comes first.',
    'The largest minor diameter of the inch J profile, and the tolerances of some pipe threads with confidence: where they are used, they are marked.',
  ],
  browsersHeading: 'Browsers',
  browsers:
    'Made for the browsers of floor PCs, back to Chromium 109 and Firefox 115. Without script the pages still hold their tables, texts, figures and worked examples; forms and answers need it. In the oldest of them only looks are missing: headings break less evenly. A browser older still may show a page without its answers; the tables and texts are there. Nothing is asked of another site, ever, and nothing that you type leaves the device.',
  keptHeading: 'What is kept on the device',
  kept: 'The unit you chose, job cards, the tap drawer, readings of torque and what you have reviewed stay in this browser alone. Each page that keeps something can save it as a file and take it away.',
  networkHeading: 'Without a network',
  network:
    'From a secure address, or from this very PC, the first visit keeps the planner, the calculators, the lessons and the search on the device, and the thread pages after them; the foot of each working page says how far that has come. A newer copy waits until you take it, or until all its windows are closed. A copy in a folder needs none of this: it is all there.',
  versionHeading: 'Version, and what has changed',
  version: '{name} {version}. Open source under the MIT licence;',
  licences: 'the licences of what it is built with',
  changed: 'Answers may differ from those of an earlier version.',
} as const;
