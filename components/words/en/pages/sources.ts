/** Words of the page of sources. English. */

export const SOURCES_PAGE = {
  title: 'Sources',
  description:
    'Every standard, handbook, paper and rule of practice behind the numbers, how far to trust each, and where it is used.',
  /** `{checks}` is a link. */
  lead: 'Every number on this site comes from one of these. Each says how it reached us and how far to trust it. Where two of them disagree, the pages show both. {checks} puts the printed values beside the ones worked out here.',
  checks: 'Checks',
  kinds: 'Kinds of source',
  usedIn: 'Used in: {parts}.',
  lessons: 'Lessons:',
  cautions: 'Cautions',
};
