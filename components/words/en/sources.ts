/** How a source is named beside a number, and what its kind means to a reader. English. */

import type { SourceKind } from '../../../core/sources';

export const SOURCE_KINDS: Record<SourceKind, { heading: string; mark: string; meaning: string }> =
  {
    standard: {
      heading: 'Standards',
      mark: 'standard',
      meaning: 'A published standard: the drawing and the gauge are held to it.',
    },
    handbook: {
      heading: 'Handbooks',
      mark: 'handbook',
      meaning: 'A printed table that shops have worked by for years.',
    },
    paper: {
      heading: 'Papers',
      mark: 'paper',
      meaning: 'A measured or reasoned result in a journal.',
    },
    'makers-table': {
      heading: 'Makers’ tables',
      mark: 'a maker’s table',
      meaning: 'One maker’s figures for its own goods: right in kind, not everywhere in size.',
    },
    'open-data': {
      heading: 'Open data',
      mark: 'open data',
      meaning: 'A table anyone may copy, checked against others where we could.',
    },
    regulation: {
      heading: 'Regulations and safety guides',
      mark: 'regulation',
      meaning: 'The rule or guide a caution rests on. The rules where you work come first.',
    },
    'common-practice': {
      heading: 'Common practice',
      mark: 'common practice',
      meaning: 'What setters do, with no publication behind it. Good shops differ.',
    },
    memory: {
      heading: 'From memory',
      mark: 'from memory',
      meaning: 'Recalled and not read again. Check it before you rely on it.',
    },
    estimate: {
      heading: 'Estimates of ours',
      mark: 'our estimate',
      meaning:
        'A figure chosen by judgement, with no test and no document behind it. Watch the first holes.',
    },
    derived: {
      heading: 'Worked out here',
      mark: 'derived here',
      meaning: 'Follows from geometry or a formula given beside it: you can check it yourself.',
    },
  };
