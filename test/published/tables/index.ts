/** Every published table that the core is held to, row by row. */

import { pipeNotes, tapLimit, type TapLimitSystem } from '../../../core';
import { externalShearArea } from '../../../core/engagement/needed';
import { internalShearArea, tensileArea } from '../../../core/engagement/strip';
import { likelyOversize } from '../../../core/drill/oversize';
import { percentThread } from '../../../core/drill/percent';
import { STOCKED_DRILLS } from '../../../core/drill/sizes';
import { limitsOf, read } from '../../core/thread/read-or-throw';
import { readCsv } from '../csv';
import metricText from '../data/metric-6H.csv?raw';
import unifiedText from '../data/unified-2B-3B.csv?raw';
import { perInch, printedTo, SHEET, sizes, STRESS_TABLE } from './areas';
import { OVERSIZE, PRINTED } from './drills';
import { B1_20_1, G_MINOR, G_TOLERANCE } from './pipe';
import type { PublishedTable, Row } from './table';
import { CATALOGUE, D_LIMITS, DEVIATIONS, INSERTS, LARGE, METRIC, PLAIN } from './taps';
import { ABOVE_90 } from './threads';
import { M10, M20, M6, makers, MAKERS, ours } from './torque';

const INCH = 25.4;
const round = (value: number, places: number): number => Number(value.toFixed(places));

/** The four limits of a thread, where the source prints them. */
function limitRows(name: string, cells: (string | undefined)[], places: number): Row[] {
  const { minor, pitch } = limitsOf(name);
  const here = [minor.min, minor.max ?? NaN, pitch.min, pitch.max];
  const what = ['minor min', 'minor max', 'pitch min', 'pitch max'];
  return cells.flatMap((cell, at) =>
    cell
      ? [
          {
            of: name,
            what: what[at]!,
            printed: Number(cell),
            here: round(here[at]!, places),
            within: 0,
          },
        ]
      : [],
  );
}

function tapRows(
  thread: string,
  system: TapLimitSystem,
  number: number,
  min: number,
  max: number,
): Row[] {
  const limit = tapLimit(read(thread), system, number);
  if (!limit.ok) throw new Error(`${thread} ${system}${number}`);
  const { pitch } = limit.value;
  const of = `${thread} ${system}${number}`;
  return [
    { of, what: 'min', printed: min, here: pitch.min, within: 0 },
    { of, what: 'max', printed: max, here: pitch.max, within: 0 },
  ];
}

function deviationRows(
  thread: string,
  basic: number,
  system: TapLimitSystem,
  number: number,
  lower: number,
  upper: number,
): Row[] {
  const limit = tapLimit(read(thread), system, number);
  if (!limit.ok) throw new Error(`${thread} ${system}${number}`);
  const over = (size: number): number => Math.round((size - basic) * 1000);
  const of = `${thread} ${system}${number}`;
  const { min, max } = limit.value.pitch;
  return [
    { of, what: 'lower', printed: lower, here: over(min), within: 0 },
    { of, what: 'upper', printed: upper, here: over(max), within: 0 },
  ];
}

const drill = (name: string): number => STOCKED_DRILLS.find((each) => each.name === name)!.diameter;

function pitchTolerance(thread: string): number {
  const { pitch } = limitsOf(thread);
  return round(pitch.max - pitch.min, 3);
}

const EXACT = 'to the last printed digit';

const metric = readCsv(metricText).filter(({ status }) => status === 'ok');
const unified = readCsv(unifiedText);

const THREADS: PublishedTable[] = [
  {
    id: 'metric-6h',
    title: 'Metric 6H limits, M1 to M64',
    source: 'iso-965-1',
    read: 'ISO 965-2 values in an open CAD data set. Seven of its rows contradict the standard’s own rules and are left out; the tests name each.',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: metric.flatMap((row) =>
      limitRows(
        `${row['designation']}-6H`,
        [row['D1min_6H'], row['D1max_6H'], row['D2min_6H'], row['D2max_6H']],
        3,
      ),
    ),
  },
  {
    id: 'above-90',
    title: 'Metric pitch-diameter tolerances above 90 mm',
    source: 'iso-965-1',
    read: 'Machinery’s Handbook, 31st edition, page 2025.',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: ABOVE_90.map(([of, printed]) => ({
      of,
      what: '',
      printed,
      here: pitchTolerance(of),
      within: 0,
    })),
  },
  {
    id: 'unified',
    title: 'Unified 1B, 2B and 3B limits',
    source: 'asme-b1-1',
    read: 'Rows of the ASME B1.1 tables in Machinery’s Handbook, 31st edition, open copies and catalogues; rows from memory are marked in the file of the tests.',
    unit: 'in',
    places: 4,
    tolerance: EXACT,
    rows: unified.flatMap((row) => {
      const series = row['series']!.replace(/^\d+-/, '');
      const name = `${row['designation']} ${series}-${row['class']}`;
      return limitRows(name, [row['D1min'], row['D1max'], row['D2min'], row['D2max']], 4);
    }),
  },
  {
    id: 'g-minor',
    title: 'G pipe threads: minor diameter',
    source: 'iso-228-1',
    read: 'A cutting-tool maker’s wall chart.',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: G_MINOR.flatMap(([size, min, max]) => {
      const { minor } = limitsOf(`G${size}`);
      return [
        { of: `G${size}`, what: 'min', printed: min, here: minor.min, within: 0 },
        { of: `G${size}`, what: 'max', printed: max, here: minor.max ?? NaN, within: 0 },
      ];
    }),
  },
  {
    id: 'g-tolerance',
    title: 'G pipe threads: tolerance of the pitch diameter',
    source: 'iso-228-1',
    read: 'An open CAD data set.',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: G_TOLERANCE.map(([size, printed]) => ({
      of: `G${size}`,
      what: '',
      printed,
      here: pitchTolerance(`G${size}`),
      within: 0,
    })),
  },
  {
    id: 'npt',
    title: 'NPT: pitch diameters and lengths',
    source: 'asme-b1-20-1',
    read: 'Table 2 of the standard, from memory.',
    unit: 'in',
    places: 5,
    tolerance: 'half of the fourth digit after the point',
    rows: B1_20_1.flatMap(([size, small, mouth, engagement, effective]) => {
      const { sizes: pipe, gauge } = pipeNotes(read(`${size} NPT`))!;
      const row = (what: string, printed: number, mm: number): Row => ({
        of: `${size} NPT`,
        what,
        printed,
        here: round(mm / INCH, 5),
        within: 0.00005,
      });
      return [
        row('pitch at the small end', small, pipe!.pitchSmallEnd),
        row('pitch at the mouth', mouth, pipe!.pitchMouth),
        row('hand-tight length', engagement, gauge!.length),
        row('effective length', effective, pipe!.effective),
      ];
    }),
  },
];

const TAPS: PublishedTable[] = [
  {
    id: 'h-limits',
    title: 'Tap limits, H numbers',
    source: 'handbook-tap-limits',
    read: 'Machinery’s Handbook, 31st edition, tables 20 and 21.',
    unit: 'in',
    places: 4,
    tolerance: EXACT,
    rows: [
      ...PLAIN.flatMap(([thread, number, min, max]) => tapRows(thread, 'H', number, min, max)),
      ...LARGE.flatMap(([thread, min, max]) => tapRows(thread, 'H', 4, min, max)),
    ],
  },
  {
    id: 'insert-limits',
    title: 'Tap limits for wire inserts',
    source: 'handbook-tap-limits',
    read: 'Machinery’s Handbook, 31st edition, tables 25 and 26a. Three metric rows are printed .0001 beside the table’s own rule; the tests name them.',
    unit: 'in',
    places: 4,
    tolerance: EXACT,
    rows: [
      ...INSERTS.flatMap(([thread, two, twoMin, twoMax, three, threeMin, threeMax]) => [
        ...tapRows(`STI ${thread}`, 'H', two, twoMin, twoMax),
        ...tapRows(`STI ${thread}`, 'H', three, threeMin, threeMax),
      ]),
      ...METRIC.flatMap(([thread, number, min, max]) =>
        tapRows(`EG ${thread}`, 'H', number, min, max),
      ),
    ],
  },
  {
    id: 'd-limits',
    title: 'Tap limits, D numbers: deviation from the basic pitch diameter',
    source: 'tap-limit-lists',
    read: 'A tool catalogue.',
    unit: 'µm',
    places: 0,
    tolerance: EXACT,
    rows: D_LIMITS.flatMap(([thread, basic, number, lower, upper]) =>
      deviationRows(thread, basic, 'D', number, lower, upper),
    ),
  },
  {
    id: 'iso-2857-sizes',
    title: 'Class 2 taps for 6H: pitch diameter',
    source: 'iso-2857',
    read: 'A tool catalogue.',
    unit: 'mm',
    places: 3,
    tolerance: EXACT,
    rows: CATALOGUE.flatMap(([thread, min, max]) => tapRows(thread, 'ISO', 2, min, max)),
  },
  {
    id: 'iso-2857-deviations',
    title: 'Class 2 taps for 6H: deviation from the basic pitch diameter',
    source: 'iso-2857',
    read: 'A second catalogue.',
    unit: 'µm',
    places: 0,
    tolerance: EXACT,
    rows: DEVIATIONS.flatMap(([thread, basic, lower, upper]) =>
      deviationRows(thread, basic, 'ISO', 2, lower, upper),
    ),
  },
];

const DRILLS: PublishedTable[] = [
  {
    id: 'percent',
    title: 'Handbook tap drills: percent of thread, US shop base',
    source: 'handbook-drills',
    read: 'Handbook lists.',
    unit: '%',
    places: 0,
    tolerance: 'the lists round to whole percent, not always to the nearest',
    rows: PRINTED.map(([thread, name, printed]) => {
      const { diameter, pitch } = read(thread);
      const { shop } = percentThread(diameter, pitch, drill(name));
      return { of: `${thread}, ${name}`, what: '', printed, here: round(shop, 1), within: 0.75 };
    }),
  },
  {
    id: 'oversize',
    title: 'How much a drill probably cuts over its size',
    source: 'handbook-drills',
    read: 'Handbook means, from memory.',
    unit: 'in',
    places: 4,
    tolerance: 'the list scatters so much about the table it comes from',
    rows: OVERSIZE.map(([name, printed]) => ({
      of: name,
      what: '',
      printed,
      here: round(likelyOversize(drill(name)) / INCH, 4),
      within: 0.0003,
    })),
  },
];

const STRENGTH: PublishedTable[] = [
  {
    id: 'tensile-area',
    title: 'Tensile stress area of the screw',
    source: 'handbook-stress-areas',
    read: 'A fastener data sheet.',
    unit: 'in²',
    places: 4,
    tolerance: 'the last printed digit',
    rows: SHEET.map(([of, printed]) => {
      const { diameter, pitch } = sizes(of);
      const here = round(tensileArea(diameter, pitch, 'inch') / INCH ** 2, 4);
      return { of, what: '', printed, here, within: printed < 0.1 ? 0.00011 : 0.0006 };
    }),
  },
  {
    id: 'strip-area',
    title: 'Stripping area of the hole, class 2B with a 2A screw',
    source: 'handbook-stress-areas',
    read: 'The same sheet. It misprints 7/16-20; the tests say why.',
    unit: 'in²/in',
    places: 3,
    tolerance: 'half the last digit and 0.3 %: the sheet reckons with sizes of three places',
    rows: SHEET.map(([of, , printed]) => ({
      of,
      what: '',
      printed,
      here: round(perInch(internalShearArea(sizes(of))), 3),
      within: printedTo(printed),
    })),
  },
  {
    id: 'shear-areas',
    title: 'Shear areas at one diameter of engagement, 2A with 2B',
    source: 'handbook-stress-areas',
    read: 'A published table of thread stress and shear areas.',
    unit: 'in²',
    places: 3,
    tolerance:
      'half the last digit, and 0.2 % (hole) or 0.8 % (screw): it rests on an older edition’s limits',
    rows: STRESS_TABLE.flatMap(([of, screw, hole]) => {
      const own = sizes(of);
      const over = (area: number): number => round((area * own.diameter) / INCH ** 2, 3);
      const half = (printed: number): number => (printed >= 1 ? 0.005 : 0.0005);
      return [
        {
          of,
          what: 'screw',
          printed: screw,
          here: over(externalShearArea(own)),
          within: half(screw) + 0.008 * screw,
        },
        {
          of,
          what: 'hole',
          printed: hole,
          here: over(internalShearArea(own)),
          within: half(hole) + 0.002 * hole,
        },
      ];
    }),
  },
];

const LOADS: PublishedTable[] = [
  {
    id: 'torque',
    title: 'Torque of a sharp straight-flute tap, five threads of chamfer',
    source: 'makers-torque-table',
    read: 'A tool maker’s formula with its own specific forces and factors, from its catalogue page.',
    unit: 'N·m',
    places: 1,
    tolerance: '25 %: between its own two editions the maker differs by 15 %',
    rows: MAKERS.flatMap(([id, name, kc, k]) =>
      (
        [
          ['M6', M6],
          ['M10', M10],
          ['M20', M20],
        ] as const
      ).map(([size, of]) => {
        const printed = makers(of, kc, k);
        return {
          of: `${size}, ${name}`,
          what: '',
          printed: round(printed, 2),
          here: round(ours(of, id), 2),
          within: round(0.25 * printed, 2),
        };
      }),
    ),
  },
];

export const PUBLISHED: readonly PublishedTable[] = [
  ...THREADS,
  ...TAPS,
  ...DRILLS,
  ...STRENGTH,
  ...LOADS,
];

/** How far a row is off, in its own unit. */
export function difference({ printed, here }: Row): number {
  return here - printed;
}
