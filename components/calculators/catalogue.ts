/** The calculators there are: one question each, in the order of the work. */

import type { SourceId } from '../../core/sources';
import type { CautionId } from '../words/cautions';

export interface CatalogueEntry {
  slug: string;
  /** Names the page and its line in lists. */
  title: string;
  /** What a person at the machine would ask. */
  question: string;
  /** One sentence for search results. */
  description: string;
  sources: readonly SourceId[];
  /** Where this work can hurt somebody. */
  cautions: readonly CautionId[];
  /** True where lengths are shown, in either unit. */
  units: boolean;
}

export const CATALOGUE: readonly CatalogueEntry[] = [
  {
    slug: 'chip-direction',
    title: 'Chip direction',
    question: 'Where do this tap’s chips go, and is that right for this hole?',
    description:
      'From what you see of a tap, its hand and the hole: where the chips go, whether that is right, and which tap would be.',
    sources: ['common-practice'],
    cautions: ['chips-by-hand', 'compressed-air', 'flying-chips'],
    units: false,
  },
  {
    slug: 'chamfer',
    title: 'Chamfer',
    question: 'How long is this tap’s chamfer, what is it called, and what does it do?',
    description:
      'Count the threads of a tap’s chamfer: its US class, ISO or DIN form and UK word, its length, the load on each tooth, and torque against chamfer length.',
    sources: [
      'asme-b94-9',
      'tm-9-254',
      'iso-8830',
      'tap-chip-model',
      'kienzle',
      'makers-style-factors',
    ],
    cautions: ['sharp-tools'],
    units: true,
  },
  {
    slug: 'blind-hole-depth',
    title: 'Blind-hole depth',
    question: 'How deep to drill, how much full thread, or which chamfer fits?',
    description:
      'Any one of drilled depth, full thread and chamfer from the other two, for the longest chamfer of the class and for the middle.',
    sources: ['derived', 'iso-8830', 'asme-b94-9', 'common-practice'],
    cautions: ['compressed-air', 'chips-by-hand'],
    units: true,
  },
  {
    slug: 'chip-room',
    title: 'Chip room',
    question: 'Will chips that are pushed ahead fit under the tap?',
    description:
      'How much room the chips of a spiral-point tap want at the bottom of a blind hole, from short chips to long, and how much deeper that is to drill.',
    sources: ['chip-bulking', 'iso-68-1', 'derived'],
    cautions: ['compressed-air', 'chips-by-hand'],
    units: true,
  },
  {
    slug: 'torque',
    title: 'Torque',
    question: 'How hard does this tap work, and will it or the spindle stand it?',
    description:
      'Torque of a tap with its band, sharp and worn, as a share of what breaks the tap and of what the spindle gives.',
    sources: [
      'tap-chip-model',
      'kienzle',
      'makers-style-factors',
      'henderer-1977',
      'from-memory',
      'common-practice',
    ],
    cautions: ['part-spins', 'entanglement', 'reaching-in', 'flying-chips'],
    units: true,
  },
  {
    slug: 'tap-strength',
    title: 'Tap strength',
    question: 'What breaks this tap, and where should a clutch let go?',
    description:
      'The torque that twists a tap off, from its style or its measured core, with its band; what a job takes of it, sharp and worn; clutch setting, wrench length, danger of the thread.',
    sources: ['from-memory', 'common-practice', 'derived'],
    cautions: ['flying-chips', 'hand-tapping', 'sharp-tools'],
    units: true,
  },
  {
    slug: 'spindle',
    title: 'Spindle',
    question: 'Has this spindle the torque for this tap, and at which speeds?',
    description:
      'A tap’s torque against the torque curve of a spindle, from a few points of its manual: the share used, the speeds with enough, and why power is not the limit.',
    sources: ['tap-chip-model', 'speed-charts', 'common-practice', 'derived'],
    cautions: ['part-spins', 'reaching-in'],
    units: true,
  },
  {
    slug: 'thread-limits',
    title: 'Thread limits',
    question: 'Within which limits must this thread come out?',
    description:
      'Minor and pitch diameter limits of any metric, unified or pipe thread in every class, with left hand, wire inserts, J threads and long engagements.',
    sources: ['iso-965-1', 'iso-724', 'asme-b1-1', 'iso-228-1', 'iso-7-1', 'from-memory'],
    cautions: ['chips-by-hand'],
    units: true,
  },
  {
    slug: 'tap-drill',
    title: 'Tap drill',
    question: 'Which drill for this thread, and is it inside the class?',
    description:
      'The tap drill for any thread, judged against the class on the drawing with its likely oversize; trap drills named; percent of thread on both bases.',
    sources: ['iso-2306', 'handbook-drills', 'iso-2306-din-338', 'iso-965-1', 'asme-b1-1'],
    cautions: ['entanglement', 'part-spins', 'chips-by-hand'],
    units: true,
  },
  {
    slug: 'form-tap-hole',
    title: 'Form-tap hole',
    question: 'Which hole before a form tap, and how closely must it be held?',
    description:
      'The hole before a form tap, the drills near it, how much thread a few hundredths cost, and what a hole you measured would give.',
    sources: ['from-memory', 'handbook-drills', 'derived', 'common-practice'],
    cautions: ['entanglement', 'part-spins'],
    units: true,
  },
  {
    slug: 'gauging',
    title: 'Gauging',
    question: 'What do the gauges say about this hole?',
    description:
      'GO, NOT GO and plain plugs read together: does the hole pass under ASME B1.2 and under ISO 1502, what is wrong, and what to do next.',
    sources: ['asme-b1-2', 'iso-1502', 'common-practice'],
    cautions: ['chips-by-hand', 'reaching-in'],
    units: true,
  },
  {
    slug: 'plating',
    title: 'Plating',
    question: 'What must be tapped so that the thread passes once it is coated?',
    description:
      'Limits before plating from limits after it: pitch diameter moves four times the thickness. Which tap limit suits and which drill.',
    sources: ['derived', 'from-memory', 'handbook-tap-limits', 'tap-limit-lists', 'iso-2857'],
    cautions: ['chips-by-hand'],
    units: true,
  },
  {
    slug: 'engagement',
    title: 'Engagement',
    question: 'How deep is enough for this screw in this metal?',
    description:
      'Full thread needed for the screw to break before the thread strips, with margin, for common screws and metals. Static stripping only; not a rating.',
    sources: ['fed-std-h28', 'handbook-stress-areas', 'screw-grades', 'shear-strength'],
    cautions: ['chips-by-hand'],
    units: true,
  },
  {
    slug: 'speed-and-cycle',
    title: 'Speed and cycle',
    question: 'How fast, what feed exactly, and is a rounded feed near enough?',
    description:
      'Tapping speed as a range, the exact feed, what rounding it does to the thread, speeds that need no rounding, what the spindle reaches, cycle time and a commented skeleton.',
    sources: ['speed-charts', 'derived', 'common-practice', 'nist-rs274'],
    cautions: ['entanglement', 'part-spins', 'reaching-in'],
    units: true,
  },
  {
    slug: 'cost-per-hole',
    title: 'Cost per hole',
    question: 'What does a tapped hole cost, and how much of it is the risk of a broken tap?',
    description:
      'Machine time, tools, gauging, set-up and the risk of a broken tap, a hole and for the job, with the equation, and beside another plan.',
    sources: ['common-practice'],
    cautions: ['reaching-in'],
    units: false,
  },
  {
    slug: 'hand-tapping',
    title: 'Hand tapping',
    question: 'How do I tap this hole by hand, with which taps and how long a wrench?',
    description:
      'Order of the taps in a set, the longest wrench the tap stands, when to turn back and when to clear, blind holes by hand: a card for the bench.',
    sources: ['common-practice', 'from-memory', 'asme-b94-9', 'iso-8830', 'derived'],
    cautions: ['hand-tapping', 'key-left-in', 'chips-by-hand'],
    units: true,
  },
  {
    slug: 'tap-removal',
    title: 'Broken tap removal',
    question: 'A tap broke off in the hole: how does it come out?',
    description:
      'Ways to get a broken tap out by size, kind, material, access and what the part is worth: times, risks, cautions, and what never to do.',
    sources: ['common-practice'],
    cautions: ['reaching-in', 'flying-chips', 'broken-tap-struck', 'broken-tap-dissolved'],
    units: false,
  },
];

export function catalogued(slug: string): CatalogueEntry {
  const entry = CATALOGUE.find((each) => each.slug === slug);
  if (!entry) throw new Error(`No calculator is called ${slug}.`);
  return entry;
}
