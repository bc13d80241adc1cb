/** Words of the page that finds a thread. English. */

export const FIND = {
  heading: 'Threads',
  description:
    'Every standard thread with its limits, tap drills judged against the class, tap limits and gauges: find one by typing, or print a table.',
  lead: 'Limits, drills, taps and gauges of every standard thread, a page each. Type one, or choose from the lists.',
  label: 'Thread',
  hint: 'As the drawing has it: M8, 1/4-20, #10-32, G1/4.',
  open: 'Open {name}',
  matches: 'Pages that begin so',
  special: 'It has no page: it is not in the standard lists. Its limits can still be worked out:',
  calculate: 'thread limits of {name}',
  relative: 'The hole of a wire insert and the J thread stand on the page of their size.',
  hands:
    'A left-hand thread has the limits, drills and room of the right-hand one; its tap and its gauges are left hand.',
  table: 'Table to print and download',
} as const;
