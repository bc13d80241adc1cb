/** Every default the plan took, so that the reader can see it and change it. */

import { likelyOversize } from '../drill/oversize';
import type { SourceId } from '../sources';
import { WORN } from '../tap/styles';
import type { ShopScale } from './candidates';
import type { AssumptionCode } from './codes';
import type { Job } from './job';
import { partAssumptions } from './part-assumptions';
import type { StripCheck } from './strength';
import type { Assumption } from './types';

function assume(
  code: AssumptionCode,
  numbers: Record<string, number> = {},
  source: SourceId = 'common-practice',
): Assumption {
  return { code, numbers, source };
}

function holeAssumptions(job: Job): Assumption[] {
  const { request, thread } = job;
  const { hole } = request;
  const found: Assumption[] = [];
  if (!thread.classGiven && thread.system !== 'pipe') found.push(assume('class-assumed'));
  if (request.fullThread === undefined) {
    found.push(assume('full-thread-default', { depth: job.fullThread }));
  }
  if (hole.kind === 'blind') {
    if (!hole.limit) found.push(assume('blind-limit-none'));
    found.push(assume('stop-clearance', { pitches: job.clearance }));
  } else {
    if (hole.clearBelow === undefined) found.push(assume('clear-below-unlimited'));
    if (hole.chipsMayFall === undefined) found.push(assume('chips-may-fall'));
  }
  if (request.drillPoint === undefined) found.push(assume('drill-point-default', { angle: 118 }));
  if (job.taper) {
    const { reamed } = job.taper;
    found.push(assume('pipe-hole-straight', reamed === undefined ? {} : { reamed }));
  }
  if (job.drill) {
    const amount = job.drill.likely - job.drill.diameter;
    const steel = likelyOversize(job.drill.diameter);
    found.push(assume('drill-oversize', { amount, steel }, 'drill-oversize'));
  }
  if (request.stockedDrills === undefined) found.push(assume('drills-all-series'));
  if (job.windowUncertain) found.push(assume('minor-limit-borrowed', {}, 'from-memory'));
  return found;
}

function tapAssumptions(job: Job, scale: ShopScale, web: number | undefined): Assumption[] {
  const { request } = job;
  const found = request.tool ? [] : [assume('tap-hss')];
  if (request.externalCentre === undefined) found.push(assume('tap-sharp-flat-nosed'));
  else found.push(assume('offset-on-point', { centre: request.externalCentre }));
  if (request.tapWeb === undefined && web !== undefined) found.push(assume('web-typical', { web }));
  if (request.measured || request.learned) {
    found.push(assume('scaled-to-shop', { factor: scale.factor, band: scale.band }, 'derived'));
  } else found.push(assume('torque-band', { factor: scale.band }, 'tap-chip-model'));
  found.push(assume('worn-factor', { factor: WORN }), assume('fluid-oil'));
  return found;
}

function machineAssumptions(job: Job): Assumption[] {
  const found: Assumption[] = [];
  if (!job.request.spindle) found.push(assume('drive-default'));
  if (job.spindle.torque === undefined && job.spindle.drive !== 'hand') {
    found.push(assume('spindle-torque-not-given'));
  }
  return found;
}

/** The defaults a plan took. Lengths mm. Sources: on each. */
export function assumptionsFor(
  job: Job,
  scale: ShopScale,
  strip: StripCheck | null,
  web: number | undefined,
): Assumption[] {
  const found = [
    ...holeAssumptions(job),
    ...machineAssumptions(job),
    ...tapAssumptions(job, scale, web),
    ...partAssumptions(job),
  ];
  if (strip) found.push(assume('screw-grade', { tensile: strip.tensile }, 'screw-grades'));
  return found;
}
