/** Numbers in the text of the lesson on the tap drill, from the core's own studies. */

import { holeForPercent, PERCENT_BASE, percentThread } from '../../../core/drill/percent';
import {
  diameterLessPitch,
  diameterLessShareOfPitch,
  holeAtShare,
  shareOfDiameter,
} from '../../../core/drill/rules';
import { likelyOversize } from '../../../core/drill/oversize';
import { metalSaved, screwAreaLost } from './strength';
import { drillName, limitLength, threadPercent } from '../../words';
import { decimals, percent, type Unit } from '../../words/format';
import { DRILL_JOBS } from './jobs';
import { holeCase, study } from './read';
import { QUOTED } from './ways';

/** In running text a number must not part from its unit at the end of a line. */
const tied = (text: string) => text.replace(/(\d) (mm|in|%)/g, '$1\u00a0$2');

/** A limit of size in both units. */
export function bothLimits(mm: number, first: Unit = 'mm'): string {
  const second = first === 'mm' ? 'in' : 'mm';
  return tied(`${limitLength(mm, first)} (${limitLength(mm, second)})`);
}

/** Percent of thread the reader is asked for, and the one that people call plenty. */
const ASKED = 70;
const PLENTY = 60;

const plate = holeCase(DRILL_JOBS.plate.thread);
const plateStudy = study(DRILL_JOBS.plate.thread, DRILL_JOBS.plate.material);
const rule = diameterLessPitch(plate.major, plate.pitch);
const rulePercent = percentThread(plate.major, plate.pitch, rule);
const share = diameterLessShareOfPitch(plate.major, plate.pitch, QUOTED);
const sixty = holeForPercent(plate.major, plate.pitch, PLENTY, 'shop');
const over = likelyOversize(rule);
const bonnet = study(DRILL_JOBS.bonnet.thread, DRILL_JOBS.bonnet.material);
const bonnetListed = bonnet.drills.find(({ listed }) => listed)!;
const flange = study(DRILL_JOBS.flange.thread, DRILL_JOBS.flange.material);
const flangeTrap = flange.drills.find(({ trap }) => trap !== null)!;
const cover = holeCase(DRILL_JOBS.cover.thread);
const coverHole = holeForPercent(cover.major, cover.pitch, ASKED, 'shop');
const shown = (value: number) => tied(threadPercent(value));

export const drillFacts = {
  plate: {
    rule: bothLimits(rule),
    ruleMm: tied(limitLength(rule, 'mm')),
    shop: shown(rulePercent.shop),
    iso: shown(rulePercent.iso),
    ratio: tied(percent(shareOfDiameter(plate.major, rule))),
    min: bothLimits(plate.min),
    max: bothLimits(plate.max),
    least: shown(plateStudy.window.percent.shop.min),
    most: shown(plateStudy.window.percent.shop.max),
    share: bothLimits(share),
    shareShop: shown(percentThread(plate.major, plate.pitch, share).shop),
    sixty: bothLimits(sixty),
    over: bothLimits(over),
    drill: plateStudy.drill ? tied(drillName(plateStudy.drill)) : '',
    likely: bothLimits(plateStudy.drill?.likely ?? 0),
    strength: tied(percent(screwAreaLost(plate, rule, sixty))),
    metal: tied(percent(metalSaved(plate, rule, sixty))),
  },
  bonnet: {
    listed: tied(drillName(bonnetListed)),
    listedSize: bothLimits(bonnetListed.diameter, 'in'),
    max: bothLimits(bonnet.window.hole.max, 'in'),
    drill: bonnet.drill ? tied(drillName(bonnet.drill)) : '',
    likely: bothLimits(bonnet.drill?.likely ?? 0, 'in'),
    percent: shown(bonnetListed.percent.shop),
  },
  flange: {
    trap: tied(drillName(flangeTrap)),
    trapSize: bothLimits(flangeTrap.diameter, 'in'),
    max: bothLimits(flange.window.hole.max, 'in'),
    percent: shown(flangeTrap.percent.shop),
    drill: flange.drill ? tied(drillName(flange.drill)) : '',
  },
  cover: {
    percent: String(ASKED),
    hole: coverHole,
    holeText: bothLimits(coverHole),
    iso: holeForPercent(cover.major, cover.pitch, ASKED, 'iso'),
    share: diameterLessShareOfPitch(cover.major, cover.pitch, ASKED),
    pitch: diameterLessPitch(cover.major, cover.pitch),
    ratio: holeAtShare(cover.major, ASKED),
    height: decimals(PERCENT_BASE.shop, 3),
  },
} as const;
