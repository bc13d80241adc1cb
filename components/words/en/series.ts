/** Names of the tables of threads. English. */

export const SERIES_TEXT = {
  'metric-coarse': {
    title: 'Metric coarse',
    description: 'ISO metric coarse threads from M1 to M68, class 6H unless marked.',
  },
  'metric-fine': {
    title: 'Metric fine',
    description: 'ISO metric fine threads from M1 to M100, class 6H unless marked.',
  },
  unc: { title: 'UNC', description: 'Unified coarse threads from #1 to 4 inch, class 2B.' },
  unf: { title: 'UNF', description: 'Unified fine threads from #0 to 1-1/2 inch, class 2B.' },
  unef: { title: 'UNEF', description: 'Unified extra-fine threads, class 2B.' },
  un: {
    title: '8-, 12- and 16-UN',
    description:
      'Unified constant-pitch threads to 2 inch where no older series has the pair, class 2B.',
  },
  g: { title: 'G pipe', description: 'Parallel pipe threads G, not sealing on the thread.' },
  'rp-rc': {
    title: 'Rp and Rc pipe',
    description: 'Parallel and taper pipe threads that seal on the thread, 55°.',
  },
  npt: { title: 'NPT pipe', description: 'American taper pipe threads, 60°.' },
} as const;
