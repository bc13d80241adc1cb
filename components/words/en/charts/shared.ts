/** Words that every chart shares. English. */

export const CHART = {
  up: '{label}, {unit} ↑',
  right: '{label}, {unit} →',
  notZero: ' (not from zero)',
  table: 'The numbers of this chart',
  csv: 'Download them (CSV)',
  source: 'Source: ',
  bands: 'The bands: ',
  low: '{series}, low, {unit}',
  mid: '{series}, {unit}',
  high: '{series}, high, {unit}',
  measure: '{label}, {unit}',
} as const;

export const DEPTH_CHART = {
  x: 'Hole depth to the shoulder',
  y: 'Full thread',
  threads: '{threads} threads',
  threadsLong: '{threads} threads ({name})',
  asked: 'asked for {depth}',
  limit: 'no deeper {depth}',
  here: 'this plan',
  hereHole: 'hole {shoulder}',
  hereThread: 'thread {fullThread}',
  bands: 'each from the longest chamfer of its class (lower edge) to the shortest (upper edge).',
} as const;

export const TORQUE_CHART = {
  x: 'Chamfer length',
  threads: 'threads',
  torque: 'Torque',
  load: 'Load on the heaviest tooth',
  here: 'your tap',
  thin: 'chamfer as long as the work is thick',
  bands:
    'from the lower to the higher of two claims, chip thinning and published factors. What a prediction of torque may miss by, about 40 % either way, comes on top.',
} as const;
