/** Torque along the stroke, bars of doubt, classes compared: drawn from the core's own studies. */
import { describe, expect, it } from 'vitest';
import { BarsView } from '../../components/chart/BarsView';
import { classBars } from '../../components/chart/classBars';
import { doubtBars } from '../../components/chart/doubtBars';
import { StrokeChart } from '../../components/chart/StrokeChart';
import { strokeChart } from '../../components/chart/strokeModel';
import { CHAMFER_CLASSES } from '../../core/chamfer/chamfer';
import { strokeBand } from '../../core/plan/stroke-band';
import { tapLoads } from '../../core/plan/tap-load';
import { studyTap, type StudyOptions } from '../../core/plan/tap-study';
import type { HoleRequest } from '../../core/plan/types';
import { expectPicture } from './snapshot';

const SOURCE = { text: 'worked out here', href: '/sources/#tap-chip-model' };

/** Gland bore of a pump housing, and the flange it meets. */
const BLIND: HoleRequest = {
  thread: 'M8x1.25-6H',
  fullThread: 16,
  hole: { kind: 'blind' },
  material: 'stainless-austenitic',
};
const THROUGH: HoleRequest = {
  thread: 'M12x1.75-6H',
  hole: { kind: 'through', thickness: 20 },
  material: 'steel-medium',
};
const THIN: HoleRequest = { ...THROUGH, thread: 'M5x0.8', hole: { kind: 'through', thickness: 3 } };

function study(request: HoleRequest, options: Partial<StudyOptions> = {}) {
  const chamfer = request.hole.kind === 'blind' ? 'semi-bottoming' : 'plug';
  const found = studyTap(request, { style: 'spiral-flute', chamfer, ...options });
  if (!found.ok) throw new Error(found.problems[0]?.code);
  return found.value;
}

function model(
  request: HoleRequest,
  options: Partial<StudyOptions> = {},
  unit: 'mm' | 'in' = 'mm',
) {
  const found = study(request, options);
  const band = strokeBand(found);
  if (!band.ok) throw new Error(band.problems[0]?.code);
  const blind = request.hole.kind === 'blind';
  const conditions = `${request.thread}, ${options.style ?? 'spiral-flute'} tap`;
  return { band: band.value, conditions, process: found.stroke.process, blind, unit };
}

describe('torque along the stroke', () => {
  it('a blind hole', () =>
    expectPicture('chart-stroke-blind', <StrokeChart model={model(BLIND)} source={SOURCE} />));

  it('a through hole, in inches', () =>
    expectPicture(
      'chart-stroke-through-inch',
      <StrokeChart model={model(THROUGH, { style: 'spiral-point' }, 'in')} source={SOURCE} />,
    ));

  it('thin work', () =>
    expectPicture(
      'chart-stroke-thin',
      <StrokeChart model={model(THIN, { style: 'spiral-point' })} source={SOURCE} />,
    ));

  it('a bore across the hole', () => {
    const crossHoles = [{ depth: 10, diameter: 8, bothSides: true }];
    return expectPicture(
      'chart-stroke-crossed',
      <StrokeChart model={model(THROUGH, { style: 'spiral-point', crossHoles })} source={SOURCE} />,
    );
  });

  it('a form tap', () =>
    expectPicture(
      'chart-stroke-form',
      <StrokeChart
        model={model({ ...BLIND, material: 'al-wrought' }, { style: 'form' })}
        source={SOURCE}
      />,
    ));

  it('its numbers are the core’s: the peak, the ends, the bends', () => {
    const found = model(THROUGH, { style: 'spiral-point' });
    const chart = strokeChart(found);
    const [series] = chart.panels[0]!.series;
    expect(Math.max(...series!.data.map(({ mid }) => mid!))).toBe(found.band.peak.torque);
    expect(chart.panels[0]!.here?.y).toBe(found.band.peak.torque);
    const [buried, nose, out] = found.band.bends.map(({ travel }) => travel);
    expect(chart.zones?.map(({ from, to }) => [from, to])).toEqual([
      [0, buried],
      [buried, nose],
      [nose, out],
    ]);
    const inches = strokeChart({ ...found, unit: 'in' });
    expect(inches.panels[0]!.here!.x * 25.4).toBeCloseTo(chart.panels[0]!.here!.x, 9);
  });
});

describe('what moves the answer most', () => {
  const found = study(BLIND);

  it('the torque', () =>
    expectPicture(
      'chart-doubt-torque',
      <BarsView bars={doubtBars(found, 'torque', 'M8x1.25-6H in 304', 'mm')} source={SOURCE} />,
    ));

  it('the share of the tap’s strength, in inches', () =>
    expectPicture(
      'chart-doubt-share-inch',
      <BarsView bars={doubtBars(found, 'share', 'M8x1.25-6H in 304', 'in')} source={SOURCE} />,
    ));

  it('its bars are the core’s swings, in their order', () => {
    const bars = doubtBars(found, 'share', '', 'mm');
    expect(bars.rows.map(({ low, high }) => [low, high])).toEqual(
      found.doubt.shareSwings.map(({ low, high }) => [low * 100, high * 100]),
    );
    expect(bars.reference?.at).toBeCloseTo(100 * found.worn.share, 9);
  });
});

describe('the chamfer classes compared', () => {
  const loads = CHAMFER_CLASSES.map((name) => {
    const found = tapLoads(BLIND, name);
    if (!found.ok) throw new Error(found.problems[0]?.code);
    return found.value.find(({ style }) => style === 'spiral-flute')!;
  });

  it('torque', () =>
    expectPicture(
      'chart-classes-torque',
      <BarsView bars={classBars(loads, 'torque', 'M8x1.25-6H in 304', 'mm', 2)} source={SOURCE} />,
    ));

  it('tooth load', () =>
    expectPicture(
      'chart-classes-tooth',
      <BarsView bars={classBars(loads, 'tooth', 'M8x1.25-6H in 304', 'mm', 2)} source={SOURCE} />,
    ));
});
