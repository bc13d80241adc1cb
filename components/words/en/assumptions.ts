/** What was taken for granted, in words short enough for a card. English. */

import type { AssumptionCode } from '../../../core/plan/codes';

export const ASSUMPTIONS: Record<AssumptionCode, string> = {
  'full-thread-default': 'Full thread {depth:length}, the usual: none was given',
  'drive-default': 'Synchronous spindle',
  'drill-point-default': 'Drill point {angle:degrees}',
  'stop-clearance': 'Stop clearance {pitches:pitches}',
  'tap-sharp-flat-nosed': 'Sharp tap with a flat nose, length set on the nose',
  'tap-hss': 'High-speed-steel tap, bright',
  'web-typical': 'Core of the tap typical for its style[, {web:length}]',
  'drill-oversize': 'Drill cuts about {amount:length} over size',
  'drills-all-series': 'Metric, fraction, number and letter drills in stock',
  'spindle-torque-not-given': 'Spindle torque not given, so not judged',
  'clear-below-unlimited': 'Nothing stands in the way below the hole',
  'chips-may-fall': 'Chips may fall out below',
  'blind-limit-none': 'The hole may be as deep as the thread needs',
  'class-assumed': 'Tolerance class the usual one: none was given',
  'screw-grade': 'Screw of {tensile:strength} tensile strength',
  'torque-band': 'Torque right to within {factor:number} times, up or down',
  'worn-factor': 'A worn tap takes {factor:number} times the torque of a sharp one',
  'scaled-to-shop':
    'Torque scaled by {factor:number} to what you measured, right to within {band:number} times',
  'minor-limit-borrowed': 'Upper limit of the minor diameter borrowed from the plain profile',
  'pipe-hole-straight':
    'Hole drilled straight, not taper-reamed[; before a taper reamer it would be {reamed:limit}]',
  'entry-square': 'Face square to the hole',
  'crossing-none': 'Nothing crosses it',
  'crossing-whole': 'All {width:length} of the crossing lies in the thread',
  'counterbore-none': 'No counterbore',
  'counterbore-datum':
    'Depths, limit and thickness count from the counterbore’s floor, {depth:length} below the face',
  'flat-datum': 'Depths count from the flat, {sink:length} below the face at the axis',
  'drilled-solid': 'Drilled from solid',
  'later-none': 'Nothing done to the thread afterwards',
  'duty-none': 'No lifting, pressure, structural, vehicle or medical duty',
  'tap-length-stock': 'Stock tap {overall:length} long that reaches {reach:length}',
  'tap-length-unknown': 'Length of the tap not known here: see that it reaches',
  'fluid-oil': 'Good tapping oil; dry is harder',
  'offset-on-point': 'External centre {centre:length} long, tool length set on its tip',
};
