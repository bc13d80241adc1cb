/** Printed stripping areas, and the sizes they are worked out from. */
import { externalMajorMin, externalPitchMin, readThread, threadLimits } from '../../../core';
import { externalShearArea } from '../../../core/engagement/needed';
import { internalShearArea, tensileArea } from '../../../core/engagement/strip';
import { INCH, round, type PublishedTable } from './table';

export function sizes(text: string) {
  const thread = readThread(text);
  if (!thread.ok) throw new Error(text);
  const limits = threadLimits(thread.value);
  if (!limits.ok) throw new Error(text);
  const factor = limits.value.unit === 'in' ? INCH : 1;
  return {
    diameter: thread.value.diameter,
    pitch: thread.value.pitch,
    screwMajorMin: externalMajorMin(thread.value),
    screwPitchMin: externalPitchMin(thread.value),
    holePitchMax: limits.value.pitch.max * factor,
    holeMinorMax: limits.value.minor.max! * factor,
  };
}

export const perInch = (areaPerMm: number) => areaPerMm / INCH;

/** Half the last printed digit, and 0.3 %: the sheet reckons with sizes of three places (.438 for 7/16). */
export const printedTo = (value: number) => (value >= 1 ? 0.005 : 0.0005) + 0.003 * value;

/** [thread, tensile area in², internal stripping area in² per inch] */
// prettier-ignore
export const SHEET: [string, number, number][] = [
  ['8-32', 0.014, 0.334], ['8-36', 0.0147, 0.331], ['10-24', 0.0175, 0.401], ['10-32', 0.02, 0.389],
  ['12-24', 0.0242, 0.458], ['12-28', 0.0258, 0.45], ['1/4-20', 0.0318, 0.539], ['1/4-28', 0.0364, 0.521],
  ['5/16-24', 0.0581, 0.663], ['3/8-16', 0.0775, 0.828], ['3/8-24', 0.0878, 0.8], ['7/16-14', 0.106, 0.981],
  ['1/2-13', 0.142, 1.12], ['1/2-20', 0.16, 1.08], ['9/16-12', 0.182, 1.27],
  ['9/16-18', 0.203, 1.23], ['5/8-11', 0.226, 1.42], ['5/8-18', 0.256, 1.37], ['3/4-10', 0.335, 1.72],
  ['3/4-16', 0.373, 1.66], ['7/8-9', 0.462, 2.03], ['7/8-14', 0.51, 1.96], ['1-8', 0.606, 2.33],
  ['1-12', 0.663, 2.27],
];

/** [thread, screw's area, hole's area], in² at one diameter of engagement, 2A/2B */
// prettier-ignore
export const STRESS_TABLE: [string, number, number][] = [
  ['10-24', 0.05, 0.076], ['10-32', 0.052, 0.074], ['1/4-20', 0.092, 0.135], ['1/4-28', 0.093, 0.13],
  ['5/16-18', 0.147, 0.213], ['3/8-16', 0.216, 0.31], ['3/8-24', 0.217, 0.299], ['7/16-14', 0.296, 0.428],
  ['1/2-13', 0.389, 0.562], ['1/2-20', 0.4, 0.541], ['9/16-12', 0.503, 0.717], ['5/8-11', 0.624, 0.891],
  ['5/8-18', 0.624, 0.853], ['3/4-10', 0.91, 1.29], ['3/4-16', 0.924, 1.24], ['7/8-9', 1.24, 1.77],
  ['7/8-14', 1.26, 1.71], ['1-8', 1.66, 2.33],
];

export const STRENGTH_TABLES: PublishedTable[] = [
  {
    id: 'tensile-area',
    title: 'Tensile stress area of the screw',
    source: 'handbook-stress-areas',
    read: 'One page, “Tensile Stress, Thread Root & Thread Stripping Areas”, of a maker of fasteners, who is not named here.',
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
    read: 'A public table of ANSI thread stress and shear areas; whose page it was is not on record.',
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
