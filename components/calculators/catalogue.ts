/** The calculators there are: one question each, in the order of the work. */

import type { SourceId } from '../../core/sources';
import type { CautionId } from '../words/cautions';
import { CALCULATORS } from '../words/en/calculators/catalogue';

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
    ...CALCULATORS['chip-direction'],
    sources: ['common-practice'],
    cautions: ['chips-by-hand', 'compressed-air', 'flying-chips'],
    units: false,
  },
  {
    slug: 'chamfer',
    ...CALCULATORS['chamfer'],
    sources: [
      'asme-b94-9',
      'tm-9-254',
      'iso-8830',
      'tap-chip-model',
      'kienzle',
      'makers-style-factors',
    ],
    cautions: ['sharp-tools', 'flying-chips'],
    units: true,
  },
  {
    slug: 'blind-hole-depth',
    ...CALCULATORS['blind-hole-depth'],
    sources: ['derived', 'iso-8830', 'asme-b94-9', 'common-practice'],
    cautions: ['compressed-air', 'chips-by-hand', 'flying-chips'],
    units: true,
  },
  {
    slug: 'chip-room',
    ...CALCULATORS['chip-room'],
    sources: ['packed-chips', 'chip-bulking', 'iso-68-1', 'derived'],
    cautions: ['compressed-air', 'chips-by-hand', 'flying-chips'],
    units: true,
  },
  {
    slug: 'torque',
    ...CALCULATORS['torque'],
    sources: [
      'tap-chip-model',
      'kienzle',
      'makers-style-factors',
      'tapping-by-cutting',
      'from-memory',
      'common-practice',
    ],
    cautions: ['part-spins', 'entanglement', 'reaching-in', 'flying-chips'],
    units: true,
  },
  {
    slug: 'tap-strength',
    ...CALCULATORS['tap-strength'],
    sources: ['from-memory', 'common-practice', 'derived'],
    cautions: ['flying-chips', 'hand-tapping', 'sharp-tools'],
    units: true,
  },
  {
    slug: 'spindle',
    ...CALCULATORS['spindle'],
    sources: ['tap-chip-model', 'speed-charts', 'common-practice', 'derived'],
    cautions: ['part-spins', 'reaching-in', 'flying-chips'],
    units: true,
  },
  {
    slug: 'thread-limits',
    ...CALCULATORS['thread-limits'],
    sources: ['iso-965-1', 'iso-724', 'asme-b1-1', 'iso-228-1', 'iso-7-1', 'from-memory'],
    cautions: ['chips-by-hand', 'flying-chips'],
    units: true,
  },
  {
    slug: 'tap-drill',
    ...CALCULATORS['tap-drill'],
    sources: ['iso-2306', 'handbook-drills', 'stocked-drills', 'iso-965-1', 'asme-b1-1'],
    cautions: ['entanglement', 'part-spins', 'chips-by-hand', 'flying-chips'],
    units: true,
  },
  {
    slug: 'form-tap-hole',
    ...CALCULATORS['form-tap-hole'],
    sources: ['from-memory', 'stocked-drills', 'derived', 'common-practice'],
    cautions: ['entanglement', 'part-spins', 'flying-chips'],
    units: true,
  },
  {
    slug: 'gauging',
    ...CALCULATORS['gauging'],
    sources: ['asme-b1-2', 'iso-1502', 'common-practice'],
    cautions: ['chips-by-hand', 'reaching-in', 'flying-chips'],
    units: true,
  },
  {
    slug: 'plating',
    ...CALCULATORS['plating'],
    sources: ['derived', 'from-memory', 'handbook-tap-limits', 'tap-limit-lists', 'iso-2857'],
    cautions: ['chips-by-hand', 'flying-chips'],
    units: true,
  },
  {
    slug: 'engagement',
    ...CALCULATORS['engagement'],
    sources: ['fed-std-h28', 'handbook-stress-areas', 'screw-grades', 'shear-strength'],
    cautions: ['chips-by-hand', 'flying-chips'],
    units: true,
  },
  {
    slug: 'speed-and-cycle',
    ...CALCULATORS['speed-and-cycle'],
    sources: ['speed-charts', 'derived', 'common-practice', 'nist-rs274'],
    cautions: ['entanglement', 'part-spins', 'reaching-in', 'flying-chips'],
    units: true,
  },
  {
    slug: 'cost-per-hole',
    ...CALCULATORS['cost-per-hole'],
    sources: ['common-practice'],
    cautions: ['reaching-in', 'flying-chips'],
    units: false,
  },
  {
    slug: 'hand-tapping',
    ...CALCULATORS['hand-tapping'],
    sources: ['common-practice', 'from-memory', 'asme-b94-9', 'iso-8830', 'derived'],
    cautions: [
      'hand-tapping',
      'entanglement',
      'part-spins',
      'key-left-in',
      'flying-chips',
      'chips-by-hand',
    ],
    units: true,
  },
  {
    slug: 'tap-removal',
    ...CALCULATORS['tap-removal'],
    sources: ['common-practice'],
    cautions: [
      'reaching-in',
      'flying-chips',
      'broken-tap-struck',
      'broken-tap-cut',
      'broken-tap-spark',
      'welding',
      'broken-tap-dissolved',
    ],
    units: false,
  },
];

export function catalogued(slug: string): CatalogueEntry {
  const entry = CATALOGUE.find((each) => each.slug === slug);
  if (!entry) throw new Error(`No calculator is called ${slug}.`);
  return entry;
}
