/** The languages that some pages are in, each named in its own words: whoever looks for one reads that. */

export interface Language {
  /** As `lang` wants it. */
  tag: string;
  /** Where its pages stand; '' is the top of the site. */
  home: string;
  planner: string;
}

export const LANGUAGES: readonly Language[] = [
  { tag: 'en', home: '', planner: 'The planner in English' },
  { tag: 'es', home: '/es', planner: 'El planificador en español' },
];
