/** Printed tap drills: percent of thread and likely oversize. */

import { likelyOversize } from '../../../core/drill/oversize';
import { percentThread } from '../../../core/drill/percent';
import { STOCKED_DRILLS } from '../../../core/drill/sizes';
import { read } from '../../core/thread/read-or-throw';
import { INCH, round, type PublishedTable } from './table';

/** [thread, drill, percent of thread on the US shop base] */
export const PRINTED: [string, string, number][] = [
  ['#0-80', '3/64', 81],
  ['#1-64', '#53', 67],
  ['#1-72', '#53', 75],
  ['#2-56', '#50', 69],
  ['#4-40', '#43', 71],
  ['#6-32', '#36', 78],
  ['#8-32', '#29', 69],
  ['#10-24', '#25', 75],
  ['#10-32', '#21', 76],
  ['#12-24', '#16', 72],
  ['1/4-20', '#7', 75],
  ['1/4-28', '#3', 80],
  ['5/16-18', 'F', 77],
  ['3/8-16', '5/16', 77],
  ['7/16-14', 'U', 75],
  ['1/2-13', '27/64', 78],
  ['1/2-20', '29/64', 72],
  ['9/16-12', '31/64', 72],
  ['5/8-11', '17/32', 79],
  ['3/4-10', '21/32', 72],
  ['3/4-16', '11/16', 77],
  ['7/8-9', '49/64', 76],
  ['7/8-14', '13/16', 67],
  ['1-8', '7/8', 77],
];

/** [drill, inches it probably cuts over] */
export const OVERSIZE: [drill: string, over: number][] = [
  ['#43', 0.0023],
  ['#29', 0.0029],
  ['#25', 0.003],
  ['#7', 0.0038],
  ['5/16', 0.0044],
  ['27/64', 0.0047],
  ['17/32', 0.0048],
  ['21/32', 0.005],
  ['7/8', 0.0059],
];

const drill = (name: string): number => STOCKED_DRILLS.find((each) => each.name === name)!.diameter;

export const DRILL_TABLES: PublishedTable[] = [
  {
    id: 'percent',
    title: 'Handbook tap drills: percent of thread, US shop base',
    source: 'handbook-drills',
    read: 'The lists of cq_warehouse (Apache 2.0) and of printed drill charts; percentages as printed with them.',
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
    source: 'drill-oversize',
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
