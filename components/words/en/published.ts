/** Words of the page that shows the published checks. English. */

export const PUBLISHED_WORDS = {
  title: 'Checks against printed values',
  description:
    'Every table that others have printed and the handbook is held to: value printed there, value here, difference, tolerance.',
  lead: 'The handbook works its numbers out. These tables hold it to what others have printed: each time the tests run, every row below is worked out again and may not be off by more than its tolerance. This page is made from the very rows that the tests use.',
  counts: '{rows} values of {tables} tables.',
  not: 'What this does not show: the priced standards themselves were not read, and a printed table can be wrong. Where one is, the row is left out here and a test says why. Rules, verdicts and depths have tests of their own, with the worked jobs of shops in place of a printed value.',
  overview: 'The tables',
  table: 'Table',
  source: 'Source',
  values: 'Values',
  worst: 'Largest difference',
  allowed: 'Tolerance',
  of: 'Of',
  printed: 'Printed, {unit}',
  here: 'Here, {unit}',
  difference: 'Difference',
  none: '0',
  read: 'Read in:',
  rows: 'All {count} values',
} as const;
