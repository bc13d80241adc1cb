/** Words around the glossary's own. English. */

export const GLOSSARY_PAGE = {
  title: 'Glossary',
  description:
    'Words of tapping: one meaning each, with what the same thing is called in the US, in the UK and in ISO standards.',
  lead: 'One meaning a word. Where the US, the UK and the standards say it differently, all three stand side by side: some of these words mean opposite things on two sides of an ocean.',
  letters: 'By first letter',
  terms: 'Terms',
  caption: '{count} terms. A dash: no other word that we know of',
  here: 'Here',
  meaning: 'Meaning',
  us: 'US',
  uk: 'UK',
  iso: 'ISO',
  not: 'Not: {words}.',
};
