/**
 * Stripping areas against printed tables, and against a numerical integration of the sheared surface.
 * - Internal area in square inches per inch of engagement, class 2B with a 2A screw: one page of a maker of fasteners (
 *   "Tensile Stress, Thread Root & Thread Stripping Areas").
 * - Both areas at one diameter of engagement, 2A/2B: a public table of ANSI thread stress and shear areas; whose page it
 *   was is not on record.
 * - Required engagement for equal strengths: Machinery's Handbook 24th ed., formula 1.
 */
import { describe, expect, it } from 'vitest';
import { externalShearArea } from '../../core/engagement/needed';
import { internalShearArea, tensileArea } from '../../core/engagement/strip';
import { perInch, printedTo, SHEET, sizes, STRESS_TABLE } from './tables/areas';

const INCH = 25.4;

describe('a fastener maker’s page of stripping areas, class 2B', () => {
  it.each(SHEET)('%s: tensile %d in², internal %d in²/in', (text, tensile, internal) => {
    const own = sizes(text);
    const area = tensileArea(own.diameter, own.pitch, 'inch') / INCH ** 2;
    expect(Math.abs(area - tensile)).toBeLessThanOrEqual(tensile < 0.1 ? 0.00011 : 0.0006);
    expect(Math.abs(perInch(internalShearArea(own)) - internal)).toBeLessThanOrEqual(
      printedTo(internal),
    );
  });
});

it('7/16-20 is misprinted on the sheet: .908 lies below the run of its neighbours, ours does not', () => {
  const area = (text: string) => perInch(internalShearArea(sizes(text)));
  expect(area('7/16-20')).toBeCloseTo(0.947, 3);
  // Area goes with diameter: 3/8-24 gives 2.13 in² per inch of diameter, 1/2-20 2.16, the misprint 2.08.
  expect(area('7/16-20') / 0.4375).toBeGreaterThan(0.8 / 0.375);
  expect(0.908 / 0.4375).toBeLessThan(0.8 / 0.375);
});

describe('table of thread stress and shear areas', () => {
  it.each(STRESS_TABLE)('%s: screw %d, hole %d in²', (text, screw, hole) => {
    const own = sizes(text);
    const overDiameter = (areaPerMm: number) => (areaPerMm * own.diameter) / INCH ** 2;
    // Half the last printed digit, and 0.2 % (hole) or 0.8 % (screw): the table rests on an older edition's
    // limits, with minor diameters to three places.
    const printed = (value: number, share: number) => (value >= 1 ? 0.005 : 0.0005) + share * value;
    expect(Math.abs(overDiameter(internalShearArea(own)) - hole)).toBeLessThanOrEqual(
      printed(hole, 0.002),
    );
    expect(Math.abs(overDiameter(externalShearArea(own)) - screw)).toBeLessThanOrEqual(
      printed(screw, 0.008),
    );
  });
});

describe('metric, FED-STD-H28', () => {
  it('M10×1.5: 21.5 mm² for each mm of engagement', () => {
    expect(internalShearArea(sizes('M10'))).toBeCloseTo(21.5, 1);
  });
  it('a finer pitch gives no more area: M5×0.5 less than M5×0.8', () => {
    expect(internalShearArea(sizes('M5x0.5'))).toBeLessThan(internalShearArea(sizes('M5x0.8')));
  });
});

describe("Machinery's Handbook 24th ed., formula 1: parts of equal strength", () => {
  it.each(['1/4-20', '1/2-13', '3/4-10'])('%s', (text) => {
    const own = sizes(text);
    const n = INCH / own.pitch;
    const minor = own.holeMinorMax / INCH;
    const pitchMin = own.screwPitchMin / INCH;
    const area = tensileArea(own.diameter, own.pitch, 'inch') / INCH ** 2;
    const engagement = (2 * area) / (Math.PI * minor * (0.5 + 0.57735 * n * (pitchMin - minor)));
    // The handbook asks for twice the tensile area in shear.
    const asked = (2 * tensileArea(own.diameter, own.pitch, 'inch')) / externalShearArea(own);
    expect(asked / INCH).toBeCloseTo(engagement, 5);
  });
});

/**
 * Metal of a 60° helical ridge on a cylinder, summed over small patches for one turn of thread.
 * `isMetal(axial)` says whether a point that far along the pitch lies in the ridge.
 */
function sheared(diameter: number, pitch: number, isMetal: (axial: number) => boolean): number {
  const around = 360;
  const along = 4000;
  let count = 0;
  for (let turn = 0; turn < around; turn += 1) {
    for (let step = 0; step < along; step += 1) {
      const helix = (turn / around) * pitch;
      const axial = ((((step + 0.5) / along) * pitch - helix) % pitch) + pitch;
      if (isMetal(axial % pitch)) count += 1;
    }
  }
  const patch = ((Math.PI * diameter) / around) * (pitch / along);
  return (count * patch) / pitch;
}

/** Ridge half a pitch wide at its pitch diameter, flanks 30° off the radius, growing outwards or inwards. */
function ridge(pitch: number, pitchDiameter: number, diameter: number, grows: 1 | -1) {
  const reach = (diameter - pitchDiameter) / 2;
  const half = pitch / 4 + grows * reach * Math.tan(Math.PI / 6);
  return (axial: number) => Math.abs(axial - pitch / 2) < half;
}

describe('formula against the integrated surface', () => {
  it.each(['M10', 'M3', '1/4-20', '1/2-13', 'M24x2'])('%s', (text) => {
    const own = sizes(text);
    const { pitch } = own;
    const inHole = sheared(
      own.screwMajorMin,
      pitch,
      ridge(pitch, own.holePitchMax, own.screwMajorMin, 1),
    );
    const onScrew = sheared(
      own.holeMinorMax,
      pitch,
      ridge(pitch, own.screwPitchMin, own.holeMinorMax, -1),
    );
    expect(inHole / internalShearArea(own)).toBeCloseTo(1, 3);
    expect(onScrew / externalShearArea(own)).toBeCloseTo(1, 3);
  });
});
