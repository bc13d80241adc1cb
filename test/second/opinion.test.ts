/** The core against a reckoning that shares nothing with it; `npm run second-opinion` prints the whole. */
import { expect, test } from 'vitest';
import {
  depthOpinion,
  metricBasicsOpinion,
  metricTolerancesOpinion,
  unifiedOpinion,
} from './compare';

test('Unified limits, ASME B1.1 on sixty-place numbers: one printed cell stands against its formula', () => {
  const { compared, apart } = unifiedOpinion();
  expect(compared).toBeGreaterThan(20_000);
  expect(apart).toEqual(['#6-32 UNC-3B pitch max: 0.1204, again 0.1205']);
});

test('metric basic sizes, ISO 724, from √3 to sixty places', () => {
  const { compared, apart } = metricBasicsOpinion();
  expect(compared).toBeGreaterThan(500);
  expect(apart).toEqual([]);
});

test('metric tolerances lie within a smoothed step of the formulas of ISO 965-1', () => {
  const { compared, apart, nearest } = metricTolerancesOpinion();
  expect(compared).toBeGreaterThan(1000);
  expect(apart).toEqual([]);
  expect(nearest / compared).toBeGreaterThan(0.7);
});

test('the chain of depths, by lowering a tap into the hole', () => {
  const { compared, apart } = depthOpinion();
  expect(compared).toBeGreaterThan(10_000);
  expect(apart).toEqual([]);
});
