/** Numbers of the lesson on form taps, from the core's own hole, torque and strength of a formed thread. */

import { formTapHole, percentLost } from '../../../core/drill/form-hole';
import { FORM_SLOPE, FORM_WINDOW, formPercent } from '../../../core/drill/percent';
import { tapMajor } from '../../../core/tap/major';
import type { HoleRequest } from '../../../core/plan/types';
import {
  bothLengths,
  bothLimits,
  decimals,
  drillName,
  limitLength,
  percent,
  threadPercent,
  torqueBand,
} from '../../words';
import { PICK_HOLE } from '../../words/en/formTaps';
import { fill } from '../../words/template';
import type { Pick } from '../PickOne';
import { planned, tapOf } from '../planned';
import { FORM_JOBS, OFF, TRY_HOLES } from './jobs';

/** The hole before the form tap of a job. */
export function formOf(request: HoleRequest) {
  const { thread } = planned(request);
  const system = thread.system === 'unified' ? 'inch' : 'metric';
  return formTapHole({ major: tapMajor(thread), pitch: thread.pitch }, { system });
}

/** The same hole by a tap that cuts and by one that forms. */
export function beside(request: HoleRequest) {
  const plan = planned(request);
  return {
    plan,
    cut: tapOf(plan, 'spiral-flute', 'semi-bottoming'),
    form: tapOf(plan, 'form', 'semi-bottoming'),
  };
}

const { thread } = planned(FORM_JOBS.cover);
const major = tapMajor(thread);
const form = formOf(FORM_JOBS.cover);
const cover = beside(FORM_JOBS.cover);
const bracket = beside(FORM_JOBS.bracket);
const bracketHole = formOf(FORM_JOBS.bracket);

export function verdictOf(share: number): 'thin' | 'inside' | 'full' {
  if (share < FORM_WINDOW.min) return 'thin';
  return share > FORM_WINDOW.max ? 'full' : 'inside';
}

export const holePicks: readonly Pick[] = TRY_HOLES.map((hole) => {
  const share = formPercent(major, thread.pitch, hole);
  const values = { hole, percent: share, step: OFF, lost: percentLost(form, OFF) };
  const said = PICK_HOLE.said[verdictOf(share)];
  return {
    value: String(hole),
    label: limitLength(hole, 'mm'),
    said: { mm: fill(said, values, 'mm'), in: fill(said, values, 'in') },
  };
});

const drillOf = (drill: (typeof cover)['form']['drill']) => (drill ? drillName(drill) : '');

export const formFacts = {
  window: { min: `${FORM_WINDOW.min} %`, max: `${FORM_WINDOW.max} %` },
  usual: threadPercent(FORM_WINDOW.usual),
  slope: decimals(FORM_SLOPE, 4),
  off: bothLimits(OFF),
  lost: threadPercent(percentLost(form, OFF)),
  cover: {
    full: bothLengths(FORM_JOBS.cover.fullThread ?? 0),
    hole: bothLimits(form.usual),
    from: limitLength(form.window.min, 'mm'),
    to: bothLimits(form.window.max),
    drill: drillOf(cover.form.drill),
    cutDrill: drillOf(cover.cut.drill),
    larger: bothLimits(form.usual - (cover.cut.drill?.diameter ?? 0)),
    cutTorque: torqueBand(cover.cut.torque.low, cover.cut.torque.high),
    formTorque: torqueBand(cover.form.torque.low, cover.form.torque.high),
    times: decimals(cover.form.torque.expected / cover.cut.torque.expected, 1),
    cutShare: percent(cover.cut.tapShare.worn),
    formShare: percent(cover.form.tapShare.worn),
    depth: bothLengths(cover.form.depth.shoulder),
    cutDepth: bothLengths(cover.cut.depth.shoulder),
  },
  bracket: {
    full: bothLengths(FORM_JOBS.bracket.fullThread ?? 0, 'in'),
    hole: bothLimits(bracketHole.usual, 'in'),
    /** In the planner, and the nearest of an inch drawer. */
    drill: drillOf(bracket.form.drill),
    inchDrill: bracketHole.drill ? drillName(bracketHole.drill) : '',
    cutDrill: drillOf(bracket.cut.drill),
    less: bracket.plan.thread.diameter - bracket.plan.thread.pitch,
    usual: bracketHole.usual,
    min: bracketHole.window.min,
    max: bracketHole.window.max,
  },
  tight: bothLimits(TRY_HOLES[0]),
  tightShare: threadPercent(formPercent(major, thread.pitch, TRY_HOLES[0])),
} as const;
